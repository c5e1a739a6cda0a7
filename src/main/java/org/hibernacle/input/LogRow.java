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
  /** Reads a place, reporting one that there is not. */
  interface PlaceReader {
    Optional<String> read(PlanSheet sheet, FoundRow row, PlanColumn column);
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
            PlanColumn.REAL_MOVE_DOWN,
            PlanColumn.REAL_MOVE_IN,
            PlanColumn.REAL_STEP_OUT,
            PlanColumn.REAL_RETURN,
            PlanColumn.IF_BLANK,
            PlanColumn.STOOD_IN,
            PlanColumn.OUTCOME,
            PlanColumn.NOTICED,
            PlanColumn.REMARK)
        .anyMatch(column -> !sheet.text(row, column).isBlank());
  }

  LogEntry read(String id) {
    LogEntry entry =
        new LogEntry(
            id,
            dayOfSeason(PlanColumn.REAL_MOVE_DOWN),
            dayOfSeason(PlanColumn.REAL_MOVE_IN),
            dayOfSeason(PlanColumn.REAL_STEP_OUT),
            dayOfSeason(PlanColumn.REAL_RETURN),
            places.read(sheet, row, PlanColumn.STOOD_IN),
            choice(PlanColumn.IF_BLANK, IfBlank.class, Choice.IF_BLANK),
            choice(PlanColumn.OUTCOME, Outcome.class, Choice.OUTCOME),
            day(PlanColumn.NOTICED),
            sheet.text(row, PlanColumn.REMARK));
    checkOrder(entry);
    checkNoticed(entry);
    return entry;
  }

  private Optional<LocalDate> day(PlanColumn column) {
    Optional<LocalDate> day = sheet.day(row, column);
    if (day.isEmpty() && !sheet.text(row, column).isBlank()) {
      error(Code.LOG_DATE, column);
    }
    return day;
  }

  private Optional<LocalDate> dayOfSeason(PlanColumn column) {
    Optional<LocalDate> day = day(column);
    if (day.isPresent() && !season.contains(day.get())) {
      error(Code.LOG_SEASON, column, season.start(), season.endExclusive().minusDays(1));
    }
    return day;
  }

  /** What a word means; the name of a list is that of its column. */
  private <E extends Enum<E>> Optional<E> choice(
      PlanColumn column, Class<E> constants, Choice<E> english) {
    Optional<E> found = sheet.choice(row, column, column.id(), constants, english);
    if (found.isEmpty() && !sheet.text(row, column).isBlank()) {
      error(Code.LOG_CHOICE, column, sheet.offered(column.id(), english));
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
      warning(Code.LOG_NOTICED, PlanColumn.NOTICED);
    }
    boolean moved = entry.movedDown().isPresent() || entry.movedIn().isPresent() || planned(entry);
    if (entry.stoodIn().isPresent() && !moved) {
      warning(
          Code.LOG_STOOD_IN,
          PlanColumn.STOOD_IN,
          sheet.heading(PlanColumn.REAL_MOVE_DOWN),
          sheet.heading(PlanColumn.REAL_MOVE_IN));
    }
  }

  private boolean planned(LogEntry entry) {
    return entry.ifBlank().filter(IfBlank.NOT_MOVED::equals).isEmpty()
        && Stream.of(PlanColumn.PLANNED_MOVE_DOWN, PlanColumn.PLANNED_MOVE_IN)
            .anyMatch(column -> sheet.day(row, column).isPresent());
  }

  private Phrase where(PlanColumn column) {
    return FilledLog.where(sheet, row, column);
  }

  /** An error whose first arguments are the heading and what stands there. */
  private void error(String key, PlanColumn column, Object... more) {
    problems.error(key, where(column), with(column, more));
  }

  private void warning(String key, PlanColumn column, Object... more) {
    problems.warning(key, where(column), with(column, more));
  }

  private Object[] with(PlanColumn column, Object... more) {
    Stream<Object> found = Stream.of(sheet.heading(column), sheet.text(row, column));
    return Stream.concat(found, Stream.of(more)).toArray();
  }
}
