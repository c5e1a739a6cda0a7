package org.hibernacle.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.InAndOut;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.KnownWinter;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.SeasonLog;

/**
 * Reads back what a season plan says of its season: its moves, the winters it was made for, and the
 * log that the keeper filled in.
 */
public final class FilledLog {
  private static final String IN_AND_OUT = "IN_AND_OUT";

  private final String file;
  private final XSSFWorkbook book;
  private final Inventory inventory;
  private final String inAndOutTask;
  private final Problems problems;

  private FilledLog(
      String file, XSSFWorkbook book, Inventory inventory, String inAndOutTask, Problems problems) {
    this.file = file;
    this.book = book;
    this.inventory = inventory;
    this.inAndOutTask = inAndOutTask;
    this.problems = problems;
  }

  /**
   * Reads a season plan, which is never written to.
   *
   * @param inventory of the same workbook
   * @param inAndOutTask English words by which the task list of a plan that does not tell its words
   *     speaks of nights in and out
   * @return empty if there are errors
   */
  public static Optional<SeasonLog> read(
      Path file, Inventory inventory, String inAndOutTask, Problems problems) {
    String name = String.valueOf(file.getFileName());
    return WorkbookFile.read(
        file,
        Phrase.of("a-season-plan"),
        problems,
        in -> read(in, name, inventory, inAndOutTask, problems));
  }

  /**
   * Reads a stream to its end without closing it.
   *
   * @param name of the file, for messages
   * @return empty if there are errors
   * @throws IOException if the stream breaks off
   */
  public static Optional<SeasonLog> read(
      InputStream in, String name, Inventory inventory, String inAndOutTask, Problems problems)
      throws IOException {
    Optional<XSSFWorkbook> opened = WorkbookFile.open(in, name, problems);
    if (opened.isEmpty()) {
      return Optional.empty();
    }
    try (XSSFWorkbook book = opened.get()) {
      return new FilledLog(name, book, inventory, inAndOutTask, problems).read();
    }
  }

  private Optional<SeasonLog> read() {
    int before = problems.errorCount();
    Optional<PlanSheet> log = PlanSheet.find(file, book, PlanTable.LOG, problems);
    Optional<PlanSheet> moves = PlanSheet.find(file, book, PlanTable.MOVES, problems);
    if (log.isEmpty() || moves.isEmpty()) {
      problems.error(Code.NO_LOG, file, log.isEmpty() ? "Log" : "Moving days");
      return Optional.empty();
    }
    Optional<Season> season = season();
    List<PlannedMove> planned = moves(moves.get());
    if (season.isEmpty() || !log.get().require(problems, PlanColumn.ID)) {
      return Optional.empty();
    }
    List<LogEntry> entries = entries(log.get(), season.get());
    return problems.errorCount() > before
        ? Optional.empty()
        : Optional.of(new SeasonLog(season.get(), planned, inAndOut(), winters(), entries));
  }

  /** The season that the plan tells, or else that of the first week of its occupancy. */
  private Optional<Season> season() {
    Optional<LocalDate> first = PlanRecord.of(book).seasonStart().or(this::firstWeek);
    if (first.isEmpty()) {
      problems.error(Code.NO_SEASON, file);
    }
    return first.map(day -> Season.containing(day, inventory.settings().southern()));
  }

  private Optional<LocalDate> firstWeek() {
    return PlanSheet.find(file, book, PlanTable.OCCUPANCY, problems)
        .flatMap(
            sheet ->
                sheet.rows().stream()
                    .flatMap(r -> sheet.day(r, PlanColumn.WEEK).stream())
                    .min(Comparator.naturalOrder()));
  }

  private List<PlannedMove> moves(PlanSheet sheet) {
    List<PlannedMove> moves = new ArrayList<>();
    if (!sheet.require(problems, PlanColumn.ID, PlanColumn.DATE, PlanColumn.FROM, PlanColumn.TO)) {
      return moves;
    }
    for (FoundRow row : sheet.rows()) {
      String id = sheet.text(row, PlanColumn.ID);
      Optional<LocalDate> date = sheet.day(row, PlanColumn.DATE);
      Optional<String> from = place(sheet, row, PlanColumn.FROM);
      Optional<String> to = place(sheet, row, PlanColumn.TO);
      if (date.isEmpty()) {
        notADay(sheet, row, PlanColumn.DATE);
      } else if (from.isPresent() && to.isPresent() && isKnown(id)) {
        moves.add(new PlannedMove(id, date.get(), from.get(), to.get()));
      }
    }
    moves.sort(Comparator.comparing(PlannedMove::date).thenComparing(PlannedMove::id));
    return moves;
  }

  private boolean isKnown(String id) {
    return inventory.plants().stream().anyMatch(p -> p.id().equals(id));
  }

  private List<LogEntry> entries(PlanSheet sheet, Season season) {
    Map<String, LogEntry> byId = new HashMap<>();
    for (FoundRow row : sheet.rows()) {
      String id = sheet.text(row, PlanColumn.ID);
      LogRow entry = new LogRow(sheet, row, season, this::place, problems);
      if (isKnown(id)) {
        if (byId.putIfAbsent(id, entry.read(id)) != null) {
          problems.error(Code.LOG_TWICE, sheet.found().where(row), id);
        }
      } else if (entry.isFilledIn()) {
        problems.warning(Code.LOG_OF_UNKNOWN, sheet.found().where(row), id);
      }
    }
    return inventory.plants().stream()
        .map(Plant::id)
        .map(id -> byId.getOrDefault(id, LogEntry.blank(id)))
        .toList();
  }

  private Optional<String> place(PlanSheet sheet, FoundRow row, PlanColumn column) {
    String name = sheet.place(row, column);
    Optional<String> found =
        inventory.places().stream()
            .flatMap(p -> Stream.of(p.name(), p.name() + Place.WRAPPED))
            .filter(n -> Words.key(n).equals(Words.key(name)))
            .findFirst();
    if (found.isEmpty() && !name.isBlank()) {
      problems.error(
          Code.LOG_PLACE,
          where(sheet, row, column),
          sheet.heading(column),
          name,
          inventory.places().stream().map(Place::name).toList());
    }
    return found;
  }

  private void notADay(PlanSheet sheet, FoundRow row, PlanColumn column) {
    problems.error(
        Code.LOG_DATE, where(sheet, row, column), sheet.heading(column), sheet.text(row, column));
  }

  static Phrase where(PlanSheet sheet, FoundRow row, PlanColumn column) {
    return sheet
        .cell(row, column)
        .map(cell -> sheet.found().where(cell.address()))
        .orElse(sheet.found().where(row));
  }

  private List<KnownWinter> winters() {
    List<KnownWinter> winters = new ArrayList<>();
    boolean southern = inventory.settings().southern();
    Optional<PlanSheet> found = PlanSheet.find(file, book, PlanTable.WINTERS, problems);
    if (found.isEmpty()) {
      return winters;
    }
    PlanSheet sheet = found.get();
    for (FoundRow row : sheet.rows()) {
      Optional<LocalDate> day = sheet.day(row, PlanColumn.COLDEST_NIGHT_DAY);
      OptionalDouble coldest = sheet.number(row, PlanColumn.COLDEST_NIGHT);
      if (day.isPresent() && coldest.isPresent()) {
        double shown = coldest.getAsDouble();
        double coldestC =
            sheet.inFahrenheit(PlanColumn.COLDEST_NIGHT) ? (shown - 32) * 5 / 9 : shown;
        winters.add(new KnownWinter(Season.containing(day.get(), southern), coldestC, day.get()));
      }
    }
    winters.sort(Comparator.comparing(KnownWinter::season));
    return winters;
  }

  private boolean isInAndOut(PlanSheet sheet, FoundRow row) {
    String what = sheet.text(row, PlanColumn.TASK);
    return what.equals(inAndOutTask)
        || sheet.record().constant("task", what).filter(IN_AND_OUT::equals).isPresent();
  }

  private List<InAndOut> inAndOut() {
    Set<String> known = inventory.plants().stream().map(Plant::id).collect(Collectors.toSet());
    List<InAndOut> nights = new ArrayList<>();
    Optional<PlanSheet> found = PlanSheet.find(file, book, PlanTable.TASKS, problems);
    if (found.isEmpty()) {
      return nights;
    }
    PlanSheet sheet = found.get();
    for (FoundRow row : sheet.rows()) {
      Optional<LocalDate> from = sheet.day(row, PlanColumn.TASK_FROM);
      if (!isInAndOut(sheet, row) || from.isEmpty()) {
        continue;
      }
      LocalDate to = sheet.day(row, PlanColumn.TASK_TO).orElse(from.get());
      Optional<String> refuge = place(sheet, row, PlanColumn.PLACE);
      if (refuge.isPresent()) {
        sheet.ids(row, PlanColumn.PLANTS, known).stream()
            .filter(this::isKnown)
            .forEach(id -> nights.add(new InAndOut(id, from.get(), to, refuge.get())));
      }
    }
    return nights;
  }
}
