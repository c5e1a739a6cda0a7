package org.hibernacle.input;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.Phrase;

/** Counts what happened to the rows of one file, and tells it. */
final class RowTally {
  private static final int MARKS_LISTED = 10;

  private final TreeSet<LocalDate> ends = new TreeSet<>();
  private final Map<Role, Long> missing = new EnumMap<>(Role.class);
  private final TreeMap<String, Long> marked = new TreeMap<>();
  private Optional<LocalDate> before = Optional.empty();
  private Optional<Origin> firstBackwards = Optional.empty();
  private Optional<Phrase> closingLine = Optional.empty();
  private boolean zone;
  private long used;
  private long otherMarks;
  private long otherStations;
  private long otherElements;
  private long severalDays;
  private long headingsAgain;
  private long repeated;

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
      otherMarks++;
    }
  }

  /** Text that ends a table, unless rows follow. */
  void closingLine(Phrase where) {
    closingLine = closingLine.or(() -> Optional.of(where));
  }

  void noClosingLine() {
    closingLine = Optional.empty();
  }

  /** A row in good order of the station, whether or not its values are used. */
  void row(LocalDate day, Origin where) {
    if (before.isPresent() && day.isBefore(before.get()) && firstBackwards.isEmpty()) {
      firstBackwards = Optional.of(where);
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
      problems.note("IN-303", where, csv.text().encoding().shown());
    }
    Phrase days =
        used == 0
            ? Phrase.of("no-row")
            : Phrase.of("rows-from-to", used, ends.first(), ends.last());
    problems.note("IN-322", where, csv.describe(), dates.shown(), days);
    tellZone(csv, asked, problems);
    missing.forEach((role, count) -> tellMissing(csv, role, count, problems));
    marked.forEach(
        (mark, count) -> problems.warning("IN-405", where, count, Phrase.verbatim(mark)));
    if (otherMarks > 0) {
      problems.warning("IN-405", where, otherMarks, Phrase.of("other-marks"));
    }
    if (severalDays > 0) {
      problems.warning("IN-406", where, severalDays);
    }
    firstBackwards.ifPresent(first -> problems.note("IN-323", first.where()));
    tell("IN-325", where, repeated, problems);
    tell("IN-329", where, otherStations, problems);
    tell("IN-407", where, otherElements, problems);
    tell("IN-408.headings", where, headingsAgain, problems);
    closingLine.ifPresent(line -> problems.note("IN-408.below", line));
  }

  private static void tell(String key, String where, long rows, Problems problems) {
    if (rows > 0) {
      problems.note(key, where, rows);
    }
  }

  private void tellZone(RecognisedCsv csv, Optional<ZoneId> asked, Problems problems) {
    boolean timed = csv.columns().layout().shape().timed();
    if (zone && timed && asked.isPresent()) {
      problems.note("IN-330.shifted", csv.name(), asked.get());
    } else if (zone && timed) {
      problems.note("IN-330.times", csv.name());
    } else if (zone) {
      problems.note("IN-330.days", csv.name());
    }
  }

  private static void tellMissing(RecognisedCsv csv, Role role, long count, Problems problems) {
    boolean named = csv.columns().has(role) && role != Role.PART;
    Phrase where =
        named
            ? Phrase.of("where.heading", csv.name(), csv.columns().heading(role).shown())
            : Phrase.verbatim(csv.name());
    if (role == Role.SNOW) {
      problems.note("IN-336", where, count);
    } else {
      problems.warning(role == Role.PART ? "IN-320.values" : "IN-320", where, count);
    }
  }
}
