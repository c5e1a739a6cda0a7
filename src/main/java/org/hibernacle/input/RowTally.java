package org.hibernacle.input;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.hibernacle.input.CsvLayout.Role;

/** Counts what happened to the rows of one file, and tells it. */
final class RowTally {
  private final TreeSet<LocalDate> ends = new TreeSet<>();
  private final Map<Role, Long> missing = new EnumMap<>(Role.class);
  private Optional<LocalDate> before = Optional.empty();
  private String firstBackwards = "";
  private boolean zone;
  private long used;
  private long otherStations;
  private long repeated;
  private long backwards;

  void otherStation() {
    otherStations++;
  }

  void missing(Role role) {
    missing.merge(role, 1L, Long::sum);
  }

  /** A row in good order of the station, whether or not its values are used. */
  void row(LocalDate day, String where) {
    if (before.isPresent() && day.isBefore(before.get()) && backwards++ == 0) {
      firstBackwards = where;
    }
    before = Optional.of(day);
  }

  /** A row whose time names a zone. */
  void zone() {
    zone = true;
  }

  /** A row whose values are used, or were there before. */
  void used(LocalDate day, boolean again) {
    used++;
    repeated += again ? 1 : 0;
    ends.add(day);
    if (ends.size() > 2) {
      ends.remove(ends.higher(ends.first()));
    }
  }

  void tell(RecognisedCsv csv, DateRule dates, Problems problems) {
    String where = csv.text().path().toString();
    if (csv.text().guessedEncoding()) {
      problems.note("IN-303", where, "text that is not UTF-8", "read as Windows-1252");
    }
    String days =
        used == 0 ? "no row" : rows(used) + " from " + ends.first() + " to " + ends.last();
    problems.note("IN-322", where, csv.describe() + ", dates " + dates.shown(), "read " + days);
    if (zone) {
      problems.note(
          "IN-330",
          where,
          "times that name a zone",
          "its clock is used as it stands, days begin at its midnight");
    }
    missing.forEach((role, count) -> tellMissing(csv, role, count, problems));
    if (backwards > 0) {
      problems.note(
          "IN-323",
          firstBackwards,
          "a date before that of the row above",
          "rows were put in order");
    }
    if (repeated > 0) {
      problems.note(
          "IN-325", where, rows(repeated) + " with the values of an earlier row", "counted once");
    }
    if (otherStations > 0) {
      problems.note("IN-329", where, rows(otherStations) + " of other stations", "not used");
    }
  }

  private static void tellMissing(RecognisedCsv csv, Role role, long count, Problems problems) {
    String where = csv.text().path() + ", \"" + csv.columns().heading(role).written() + "\"";
    if (role == Role.SNOW) {
      problems.note(
          "IN-336", where, rows(count) + " without a depth of snow", "counted as bare ground");
    } else {
      problems.warning(
          "IN-320",
          where,
          rows(count) + " without a reading",
          "a number in each row",
          "taken as missing");
    }
  }

  private static String rows(long count) {
    return count == 1 ? "1 row" : count + " rows";
  }
}
