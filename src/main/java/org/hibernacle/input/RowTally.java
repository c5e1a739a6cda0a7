package org.hibernacle.input;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hibernacle.input.CsvLayout.Role;

/** Counts what happened to the rows of one file, and tells it. */
final class RowTally {
  private static final int MARKS_LISTED = 10;

  private final TreeSet<LocalDate> ends = new TreeSet<>();
  private final Map<Role, Long> missing = new EnumMap<>(Role.class);
  private final TreeMap<String, Long> marked = new TreeMap<>();
  private Optional<LocalDate> before = Optional.empty();
  private String firstBackwards = "";
  private String closingLine = "";
  private boolean zone;
  private long used;
  private long otherStations;
  private long otherElements;
  private long severalDays;
  private long headingsAgain;
  private long repeated;
  private long backwards;

  void otherStation() {
    otherStations++;
  }

  /** A row of rain, wind and the like. */
  void otherElement() {
    otherElements++;
  }

  /** A row whose value covers more than one day. */
  void severalDays() {
    severalDays++;
  }

  void headingsAgain() {
    headingsAgain++;
  }

  void missing(Role role) {
    missing.merge(role, 1L, Long::sum);
  }

  /** A value whose mark says that it must not be used. */
  void marked(String mark) {
    if (marked.size() < MARKS_LISTED || marked.containsKey(mark)) {
      marked.merge(mark, 1L, Long::sum);
    } else {
      marked.merge("others", 1L, Long::sum);
    }
  }

  /** Text that ends a table, unless rows follow. */
  void closingLine(String where) {
    closingLine = closingLine.isEmpty() ? where : closingLine;
  }

  void noClosingLine() {
    closingLine = "";
  }

  /** A row in good order of the station, whether or not its values are used. */
  void row(LocalDate day, Origin where) {
    if (before.isPresent() && day.isBefore(before.get()) && backwards++ == 0) {
      firstBackwards = where.toString();
    }
    before = Optional.of(day);
  }

  /** A row whose time has a known zone. */
  void zone() {
    zone = true;
  }

  /** A row whose values are used, or were there before. */
  void used(LocalDate day, boolean again) {
    used++;
    repeated += again ? 1 : 0;
    if (!ends.isEmpty() && day.equals(ends.last())) {
      return;
    }
    ends.add(day);
    if (ends.size() > 2) {
      ends.remove(ends.higher(ends.first()));
    }
  }

  void tell(RecognisedCsv csv, DateCells dates, Optional<ZoneId> asked, Problems problems) {
    String where = csv.name();
    if (csv.text().encoding().guessed()) {
      problems.note(
          "IN-303",
          where,
          "text that is not UTF-8",
          "read as " + csv.text().encoding().shown() + "; --encoding tells another");
    }
    String days =
        used == 0 ? "no row" : rows(used) + " from " + ends.first() + " to " + ends.last();
    problems.note("IN-322", where, csv.describe() + ", dates " + dates.shown(), "read " + days);
    tellZone(csv, asked, problems);
    missing.forEach((role, count) -> tellMissing(csv, role, count, problems));
    marked.forEach(
        (mark, count) ->
            problems.warning(
                "IN-405",
                where,
                values(count) + " marked \"" + mark + "\" by their source",
                "values that passed its checks",
                "not used"));
    if (severalDays > 0) {
      problems.warning(
          "IN-406", where, rows(severalDays) + " of several days", "one day a row", "not used");
    }
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
    if (otherElements > 0) {
      problems.note("IN-407", where, rows(otherElements) + " of other elements", "not used");
    }
    if (headingsAgain > 0) {
      problems.note("IN-408", where, rows(headingsAgain) + " with the headings again", "not used");
    }
    if (!closingLine.isEmpty()) {
      problems.note("IN-408", closingLine, "text below the table", "not used");
    }
  }

  private void tellZone(RecognisedCsv csv, Optional<ZoneId> asked, Problems problems) {
    boolean timed = csv.columns().layout().shape().timed();
    if (zone && timed) {
      problems.note(
          "IN-330",
          csv.name(),
          "times that name a zone, or are those of Greenwich",
          asked
              .map(to -> "shifted to the standard time of " + to)
              .orElse(
                  "their clock is used as it stands, days begin at its midnight; --zone shifts them"));
    } else if (zone) {
      problems.note(
          "IN-330",
          csv.name(),
          "days of Greenwich",
          "used as they stand; a night's lowest may belong to the date beside it");
    }
  }

  private static void tellMissing(RecognisedCsv csv, Role role, long count, Problems problems) {
    boolean named = csv.columns().has(role) && role != Role.PART;
    String where =
        csv.name() + (named ? ", \"" + csv.columns().heading(role).written() + "\"" : "");
    if (role == Role.SNOW) {
      problems.note(
          "IN-336", where, rows(count) + " without a depth of snow", "counted as bare ground");
    } else {
      problems.warning(
          "IN-320",
          where,
          (role == Role.PART ? values(count) : rows(count)) + " without a reading",
          role == Role.PART ? "a number on each day" : "a number in each row",
          "taken as missing");
    }
  }

  private static String rows(long count) {
    return count == 1 ? "1 row" : count + " rows";
  }

  private static String values(long count) {
    return count == 1 ? "1 value" : count + " values";
  }
}
