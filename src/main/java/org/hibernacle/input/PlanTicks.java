package org.hibernacle.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Tick;

/**
 * Reads what the keeper ticked in a season plan: moves, other work, and what the notes tell of
 * ticks in plans before.
 */
final class PlanTicks {
  private final Set<String> plantIds;
  private final List<Tick> ticks = new ArrayList<>();

  private PlanTicks(Set<String> plantIds) {
    this.plantIds = plantIds;
  }

  static List<Tick> read(String file, XSSFWorkbook book, Set<String> plantIds, Problems problems) {
    PlanTicks reader = new PlanTicks(plantIds);
    PlanSheet.find(file, book, PlanTable.MOVES, problems).ifPresent(reader::moves);
    PlanSheet.find(file, book, PlanTable.TASKS, problems).ifPresent(reader::tasks);
    PlanSheet.find(file, book, PlanTable.NOTES, problems).ifPresent(reader::notes);
    return reader.ticks;
  }

  private void moves(PlanSheet sheet) {
    for (FoundRow row : sheet.rows()) {
      String text = sheet.text(row, PlanColumn.MOVE);
      Optional<LocalDate> date = sheet.day(row, PlanColumn.DATE);
      if (isTicked(sheet, row)) {
        add(
            sheet,
            row,
            true,
            sheet.moveKind(row).orElse(""),
            text,
            date,
            date,
            sheet.place(row, PlanColumn.TO),
            List.of(sheet.text(row, PlanColumn.ID)));
      }
    }
  }

  private void tasks(PlanSheet sheet) {
    for (FoundRow row : sheet.rows()) {
      String text = sheet.text(row, PlanColumn.TASK);
      Optional<LocalDate> from = sheet.day(row, PlanColumn.TASK_FROM);
      if (isTicked(sheet, row)) {
        add(
            sheet,
            row,
            false,
            sheet.record().constant("task", text).orElse(""),
            text,
            from,
            sheet.day(row, PlanColumn.TASK_TO).or(() -> from),
            sheet.place(row, PlanColumn.PLACE),
            sheet.ids(row, PlanColumn.PLANTS, plantIds));
      }
    }
  }

  /** The program's own word for a move that the log has is no tick. */
  private static boolean isTicked(PlanSheet sheet, FoundRow row) {
    String mark = sheet.text(row, PlanColumn.DONE).strip();
    return !mark.isEmpty() && sheet.record().word("done.made").filter(mark::equals).isEmpty();
  }

  private void add(
      PlanSheet sheet,
      FoundRow row,
      boolean moving,
      String kind,
      String what,
      Optional<LocalDate> from,
      Optional<LocalDate> to,
      String place,
      List<String> ids) {
    String mark = sheet.text(row, PlanColumn.DONE);
    boolean offered = sheet.record().word("workbook.tick").filter(mark::equals).isPresent();
    // Without its day it can not be told from other work, and is handed on as it is.
    ticks.add(
        new Tick(
            sheet.found().where(),
            offered ? "" : mark,
            moving,
            from.isPresent() ? kind : "",
            what,
            from.orElse(LocalDate.EPOCH),
            to.orElse(LocalDate.EPOCH),
            place,
            ids));
  }

  /** What a note tells of a tick is handed on in its own words. */
  private void notes(PlanSheet sheet) {
    String code = "[" + Tick.WITHOUT_WORK + "]";
    for (FoundRow row : sheet.rows()) {
      String where = sheet.text(row, PlanColumn.WHERE);
      if (where.contains(code)) {
        ticks.add(
            new Tick(
                Phrase.verbatim(where.replace(code, "").strip()),
                "",
                false,
                "",
                sheet.text(row, PlanColumn.NOTE),
                LocalDate.EPOCH,
                LocalDate.EPOCH,
                "",
                List.of()));
      }
    }
  }
}
