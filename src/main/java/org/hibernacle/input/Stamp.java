package org.hibernacle.input;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * When a row was measured, on the clock of the file.
 *
 * @param day the date in the row
 * @param secondOfDay 0..86400, where 24:00 stays on its day; empty if the row has no time
 */
record Stamp(LocalDate day, OptionalInt secondOfDay) {
  static final int DAY_S = 24 * 3600;

  Stamp at(OptionalInt second) {
    return new Stamp(day, second);
  }
}
