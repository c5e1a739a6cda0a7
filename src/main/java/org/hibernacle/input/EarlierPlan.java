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
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.SheetTable;

/**
 * What a season plan written earlier hands on: the keeper's log, and the moves as it had them.
 *
 * @param file name of it
 * @param log its log sheet, as found
 * @param moves by date, as on its sheet of moving days
 */
public record EarlierPlan(String file, SheetTable log, List<MovePlanned> moves) {
  /** Name of the log sheet. */
  static final String LOG_SHEET = "Log";

  /** Name of the sheet of moves. */
  static final String MOVES_SHEET = "Moving days";

  public EarlierPlan {
    moves = List.copyOf(moves);
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
        Optional<PlanSheet> log = PlanSheet.find(name, book, "log", LOG_SHEET, problems);
        if (book.getName("table_log") != null && log.filter(EarlierPlan::isLog).isEmpty()) {
          problems.error(Code.FOREIGN_LOG, name);
          return Optional.empty();
        }
        Optional<PlanSheet> moves =
            PlanSheet.find(name, book, "moving-days", MOVES_SHEET, problems);
        return log.map(
            found ->
                new EarlierPlan(
                    name, found.found().table(0), moves(moves.map(m -> m.found().table(0)))));
      }
    } catch (IOException e) {
      problems.error(Code.UNREADABLE_FILE, file.toString(), String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  /** Whether it has the headings by which a log is read. */
  private static boolean isLog(PlanSheet sheet) {
    return sheet.columns().keySet().containsAll(List.of(Words.key("Id"), Words.key("Outcome")));
  }

  /** What it planned, and for whom. */
  public AsPlanned asPlanned() {
    Set<String> ids = new TreeSet<>();
    log.rows().forEach(row -> ids.add(SheetTable.plainText(log.cell(row, "Id"))));
    return new AsPlanned(ids, moves);
  }

  private static List<MovePlanned> moves(Optional<SheetTable> sheet) {
    List<MovePlanned> moves = new ArrayList<>();
    if (sheet.isEmpty()) {
      return moves;
    }
    SheetTable table = sheet.get();
    for (List<Object> row : table.rows()) {
      if (table.cell(row, "Date") instanceof LocalDate date) {
        String id = SheetTable.plainText(table.cell(row, "Id"));
        String kind = SheetTable.plainText(table.cell(row, "Move"));
        moves.add(new MovePlanned(id, kind, date, SheetTable.plainText(table.cell(row, "To"))));
      }
    }
    return moves;
  }
}
