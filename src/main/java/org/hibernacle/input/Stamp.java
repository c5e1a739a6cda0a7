package org.hibernacle.input;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.OptionalInt;

/**
 * When a row was measured, on the clock of the file.
 *
 * @param day the date in the row
 * @param secondOfDay 0..86400, where 24:00 stays on its day; empty if the row has no time
 * @param offsetS by how much that clock is ahead of Greenwich, s; empty if nobody knows
 */
record Stamp(LocalDate day, OptionalInt secondOfDay, OptionalInt offsetS) {
  static final int DAY_S = 24 * 3600;

  static Stamp of(LocalDate day) {
    return new Stamp(day, OptionalInt.empty(), OptionalInt.empty());
  }

  Stamp at(TimeOfDay time) {
    return new Stamp(
        day, OptionalInt.of(time.second()), time.offsetS().isPresent() ? time.offsetS() : offsetS);
  }

  /** The same with the clock of Greenwich where none is known. */
  Stamp orUtc() {
    return offsetS.isPresent() ? this : new Stamp(day, secondOfDay, OptionalInt.of(0));
  }

  /**
   * The same moment on the standard time of a zone, which knows no summer: every day has 24 hours.
   * As it is where the offset or the time is not known.
   */
  Stamp in(ZoneId zone) {
    if (offsetS.isEmpty() || secondOfDay.isEmpty()) {
      return this;
    }
    LocalDateTime clock = day.atStartOfDay().plusSeconds(secondOfDay.getAsInt());
    ZoneOffset from = ZoneOffset.ofTotalSeconds(offsetS.getAsInt());
    ZoneOffset to = zone.getRules().getStandardOffset(clock.toInstant(from));
    LocalDateTime there = clock.plusSeconds(to.getTotalSeconds() - from.getTotalSeconds());
    return new Stamp(
        there.toLocalDate(),
        OptionalInt.of(there.toLocalTime().toSecondOfDay()),
        OptionalInt.of(to.getTotalSeconds()));
  }
}
