package org.hibernacle.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Published;
import org.hibernacle.model.SheetTable;
import org.hibernacle.model.Tick;

/**
 * What a season plan written earlier hands on: the keeper's log, and the moves as it had them.
 *
 * @param file name of it
 * @param log its log sheet, as found
 * @param moves by date, as on its sheet of moving days
 * @param ticks that the keeper set
 * @param published what it told calendar programs; empty if it does not say
 * @param seasonStart first day of its season; empty if it does not say
 * @param plants that it was for; none if it does not say
 */
public record EarlierPlan(
    String file,
    LogSheet log,
    List<MovePlanned> moves,
    List<Tick> ticks,
    Optional<Published> published,
    Optional<LocalDate> seasonStart,
    List<KnownPlant> plants) {
  /**
   * What an Id stood for.
   *
   * @param id in the inventory
   * @param name that people call it by
   * @param taxon scientific name of its species
   */
  public record KnownPlant(String id, String name, String taxon) {}

  /** Columns of the log that the keeper writes. */
  private static final Pattern KEPT =
      Pattern.compile("|real-.+|if-blank|stood-in|outcome|noticed|remark");

  public EarlierPlan {
    moves = List.copyOf(moves);
    ticks = List.copyOf(ticks);
    plants = List.copyOf(plants);
  }

  /**
   * Reads a season plan.
   *
   * @return empty if the file has no log, or can not be read, which is an error in {@code problems}
   */
  public static Optional<EarlierPlan> read(Path file, Problems problems) {
    String name = String.valueOf(file.getFileName());
    try (InputStream in = Files.newInputStream(file)) {
      Optional<XSSFWorkbook> opened = WorkbookFile.open(in, name, problems);
      if (opened.isEmpty()) {
        return Optional.empty();
      }
      try (XSSFWorkbook book = opened.get()) {
        Optional<PlanSheet> log = PlanSheet.find(name, book, PlanTable.LOG, problems);
        boolean isPlan = book.getName(PlanTable.LOG.cells()) != null;
        if (isPlan && log.filter(EarlierPlan::isLog).isEmpty()) {
          PlanRecord record = PlanRecord.of(book);
          problems.error(
              Code.FOREIGN_LOG,
              name,
              record.word("section.log").orElse(PlanTable.LOG.title()),
              record.word("log.id").orElse(PlanColumn.ID.title()),
              record.word("log.outcome").orElse(PlanColumn.OUTCOME.title()));
          return Optional.empty();
        }
        Optional<PlanSheet> moves = PlanSheet.find(name, book, PlanTable.MOVES, problems);
        if (log.isEmpty()) {
          return Optional.empty();
        }
        LogSheet sheet = table(log.get());
        return Optional.of(
            new EarlierPlan(
                name,
                sheet,
                moves.map(EarlierPlan::moves).orElse(List.of()),
                PlanTicks.read(name, book, ids(sheet), problems),
                PlanRecord.of(book).published(),
                PlanRecord.of(book).seasonStart(),
                PlanRecord.of(book).plants()));
      }
    } catch (IOException e) {
      problems.error(Code.UNREADABLE_FILE, file.toString(), String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  /** Whether it has the headings by which a log is read. */
  private static boolean isLog(PlanSheet sheet) {
    return sheet.has(PlanColumn.ID, PlanColumn.OUTCOME);
  }

  /** The log as found, with constants for the words offered. */
  private static LogSheet table(PlanSheet sheet) {
    List<String> ids = sheet.ids();
    SheetTable found = sheet.found().table(0);
    List<List<Object>> rows = new ArrayList<>();
    for (List<Object> row : found.rows()) {
      List<Object> values = new ArrayList<>(row);
      constant(sheet, values, PlanColumn.OUTCOME, Choice.OUTCOME);
      constant(sheet, values, PlanColumn.IF_BLANK, Choice.IF_BLANK);
      rows.add(values);
    }
    return new LogSheet(new SheetTable(found.name(), found.headings(), rows), ids);
  }

  /** Words that are not on the list stay as they are. */
  private static <E extends Enum<E>> void constant(
      PlanSheet sheet, List<Object> row, PlanColumn column, Choice<E> english) {
    Integer index = sheet.columns().get(column);
    if (index != null) {
      String text = row.get(index).toString();
      sheet
          .record()
          .constant(column.id(), text)
          .or(() -> english.offered(text).map(Enum::name))
          .ifPresent(name -> row.set(index, name));
    }
  }

  /** What it planned, and for whom, and what was done of it. */
  public AsPlanned asPlanned() {
    return new AsPlanned(ids(log), moves, ticks, published);
  }

  /** The plants with entries in the log or with ticks. */
  public List<KnownPlant> marked() {
    Set<String> ids = new TreeSet<>();
    ticks.forEach(tick -> ids.addAll(tick.plantIds()));
    for (List<Object> row : log.table().rows()) {
      boolean filled =
          IntStream.range(0, row.size())
              .anyMatch(i -> KEPT.matcher(log.ids().get(i)).matches() && !row.get(i).equals(""));
      if (filled) {
        ids.add(SheetTable.plainText(log.value(row, PlanColumn.ID.id())));
      }
    }
    return plants.stream().filter(plant -> ids.contains(plant.id())).toList();
  }

  private static Set<String> ids(LogSheet log) {
    Set<String> ids = new TreeSet<>();
    log.table()
        .rows()
        .forEach(row -> ids.add(SheetTable.plainText(log.value(row, PlanColumn.ID.id()))));
    return ids;
  }

  private static List<MovePlanned> moves(PlanSheet sheet) {
    List<MovePlanned> moves = new ArrayList<>();
    for (FoundRow row : sheet.rows()) {
      sheet
          .day(row, PlanColumn.DATE)
          .ifPresent(
              date ->
                  moves.add(
                      new MovePlanned(
                          sheet.text(row, PlanColumn.ID),
                          sheet.moveKind(row).orElse(sheet.text(row, PlanColumn.MOVE)),
                          date,
                          sheet.place(row, PlanColumn.TO))));
    }
    return moves;
  }
}
