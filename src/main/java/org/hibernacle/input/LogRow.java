package org.hibernacle.input;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Season;

/** One row of the log, checked cell by cell. */
final class LogRow {
  private static final String MOVE_DOWN = "Real move-down";
  private static final String MOVE_IN = "Real move-in";
  private static final String STEP_OUT = "Real step-out";
  private static final String RETURN = "Real return";
  private static final String IF_BLANK = "A blank day means";
  private static final String STOOD_IN = "Stood in";
  private static final String OUTCOME = "Outcome";
  private static final String NOTICED = "Noticed on";
  private static final String REMARK = "Remark";

  /** Reads a place, reporting one that there is not. */
  interface PlaceReader {
    Optional<String> read(PlanSheet sheet, FoundRow row, String heading);
  }

  private final PlanSheet sheet;
  private final FoundRow row;
  private final Season season;
  private final PlaceReader places;
  private final Problems problems;

  LogRow(PlanSheet sheet, FoundRow row, Season season, PlaceReader places, Problems problems) {
    this.sheet = sheet;
    this.row = row;
    this.season = season;
    this.places = places;
    this.problems = problems;
  }

  /** Whether the keeper wrote anything into it. */
  boolean isFilledIn() {
    return Stream.of(
            MOVE_DOWN, MOVE_IN, STEP_OUT, RETURN, IF_BLANK, STOOD_IN, OUTCOME, NOTICED, REMARK)
        .anyMatch(h -> !sheet.text(row, h).isBlank());
  }

  LogEntry read(String id) {
    LogEntry entry =
        new LogEntry(
            id,
            dayOfSeason(MOVE_DOWN),
            dayOfSeason(MOVE_IN),
            dayOfSeason(STEP_OUT),
            dayOfSeason(RETURN),
            places.read(sheet, row, STOOD_IN),
            choice(IF_BLANK, Choice.IF_BLANK),
            choice(OUTCOME, Choice.OUTCOME),
            day(NOTICED),
            sheet.text(row, REMARK));
    checkOrder(entry);
    checkNoticed(entry);
    return entry;
  }

  private Optional<LocalDate> day(String heading) {
    Optional<LocalDate> day = sheet.day(row, heading);
    if (day.isEmpty() && !sheet.text(row, heading).isBlank()) {
      error(Code.LOG_DATE, heading);
    }
    return day;
  }

  private Optional<LocalDate> dayOfSeason(String heading) {
    Optional<LocalDate> day = day(heading);
    if (day.isPresent() && !season.contains(day.get())) {
      error(Code.LOG_SEASON, heading, season.start(), season.endExclusive().minusDays(1));
    }
    return day;
  }

  private <T> Optional<T> choice(String heading, Choice<T> choice) {
    String text = sheet.text(row, heading);
    Optional<T> found = choice.find(text);
    if (found.isEmpty() && !text.isBlank()) {
      error(Code.LOG_CHOICE, heading, choice.words());
    }
    return found;
  }

  private void checkOrder(LogEntry entry) {
    List<LocalDate> days =
        Stream.of(entry.movedDown(), entry.movedIn(), entry.steppedOut(), entry.returned())
            .flatMap(Optional::stream)
            .toList();
    for (int i = 1; i < days.size(); i++) {
      if (days.get(i).isBefore(days.get(i - 1))) {
        problems.error(Code.LOG_ORDER, sheet.found().where(row), days.get(i), days.get(i - 1));
      }
    }
  }

  private void checkNoticed(LogEntry entry) {
    boolean harmed = entry.outcome().filter(Outcome::harmed).isPresent();
    if (entry.noticed().isPresent() && !harmed) {
      problems.warning(Code.LOG_NOTICED, where(NOTICED), NOTICED, sheet.text(row, NOTICED));
    }
    boolean moved = entry.movedDown().isPresent() || entry.movedIn().isPresent() || planned();
    if (entry.stoodIn().isPresent() && !moved) {
      problems.warning(
          Code.LOG_STOOD_IN,
          where(STOOD_IN),
          STOOD_IN,
          sheet.text(row, STOOD_IN),
          MOVE_DOWN,
          MOVE_IN);
    }
  }

  private boolean planned() {
    boolean asPlanned = !sheet.text(row, IF_BLANK).equals(Choice.IF_BLANK.word(IfBlank.NOT_MOVED));
    return asPlanned
        && Stream.of("Planned move-down", "Planned move-in")
            .anyMatch(h -> sheet.day(row, h).isPresent());
  }

  private Phrase where(String heading) {
    return FilledLog.where(sheet, row, heading);
  }

  private void error(String key, String heading, Object... more) {
    Stream<Object> found = Stream.of(heading, sheet.text(row, heading));
    problems.error(key, where(heading), Stream.concat(found, Stream.of(more)).toArray());
  }
}
