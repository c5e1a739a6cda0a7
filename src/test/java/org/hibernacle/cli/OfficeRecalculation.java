package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An office program calculates the demo's workbook. Not part of the build, since it needs {@code
 * soffice} on the path: {@code mvn -Poffice test}.
 */
class OfficeRecalculation {
  @TempDir static Path folder;

  private static Path plan;

  @BeforeAll
  static void planTheDemo() {
    PrintWriter err = new PrintWriter(System.err, true);
    int code =
        Hibernacle.run(
            new PrintWriter(OutputStream.nullOutputStream()),
            err,
            "plan",
            "demo-data/inventory.xlsx",
            "demo-data/temperatures.csv",
            "-q",
            "--without-remedies",
            "-o",
            folder.toString());
    assertEquals(ExitCode.DONE, code);
    plan = folder.resolve("season-plan.xlsx");
  }

  /** Values by sheet and cell, of cells that have a formula. */
  private static Map<String, Object> values(Path file) throws IOException {
    Map<String, Object> values = new TreeMap<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              String at = sheet.getSheetName() + "!" + cell.getAddress();
              values.put(at, value(cell));
            }
          }
        }
      }
    }
    return values;
  }

  private static Object value(Cell cell) {
    return switch (cell.getCachedFormulaResultType()) {
      case NUMERIC -> cell.getNumericCellValue();
      case STRING, BLANK -> cell.getStringCellValue();
      default -> cell.getCachedFormulaResultType();
    };
  }

  /** A copy that an office program has calculated from nothing: our values are taken out first. */
  private static Path calculated(String name, Consumer<XSSFWorkbook> edits)
      throws IOException, InterruptedException {
    Path bare = folder.resolve(name + ".xlsx");
    try (InputStream in = Files.newInputStream(plan);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      edits.accept(book);
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              String formula = cell.getCellFormula();
              cell.setBlank();
              cell.setCellFormula(formula);
            }
          }
        }
      }
      try (OutputStream out = Files.newOutputStream(bare)) {
        book.write(out);
      }
    }
    Path to = folder.resolve("calculated");
    Process office =
        new ProcessBuilder(
                "soffice",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                "xlsx",
                "--outdir",
                to.toString(),
                bare.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("office.log").toFile())
            .start();
    assertTrue(office.waitFor(3, TimeUnit.MINUTES), "the office program takes too long");
    assertEquals(0, office.exitValue());
    return to.resolve(name + ".xlsx");
  }

  @Test
  void everyFormulaGivesTheValueThatWasWrittenWithIt() throws Exception {
    Map<String, Object> ours = values(plan);
    Map<String, Object> theirs = values(calculated("untouched", book -> {}));
    assertTrue(ours.size() > 400, ours.size() + " formulas");
    assertEquals(ours.keySet(), theirs.keySet());
    ours.forEach(
        (cell, value) -> {
          if (value instanceof Double number) {
            assertEquals(number, (Double) theirs.get(cell), 1e-9, cell);
          } else {
            assertEquals(value, theirs.get(cell), cell);
          }
        });
  }

  /** What a keeper would do in the middle of November, counted by hand from the same sheet. */
  @Test
  void theAnswersFollowWhatTheKeeperEnters() throws Exception {
    LocalDate today = LocalDate.of(2026, 11, 4);
    int[] pots = new int[3];
    Path file =
        calculated(
            "edited",
            book -> {
              set(book, "as_of", today);
              Sheet days = book.getSheet("Moving days");
              for (int r = 1; r <= days.getLastRowNum(); r++) {
                Row row = days.getRow(r);
                LocalDate date =
                    row.getCell(column(days, "Date")).getLocalDateTimeCellValue().toLocalDate();
                int count = (int) row.getCell(column(days, "Count")).getNumericCellValue();
                if (date.isBefore(today) && r > 2) {
                  row.getCell(column(days, "Done")).setCellValue("yes");
                  pots[0] += count;
                } else if (date.isBefore(today)) {
                  pots[1] += count;
                } else if (date.equals(LocalDate.of(2026, 11, 7))) {
                  pots[2] += count;
                }
              }
              Row first = book.getSheet("Log").getRow(2);
              first
                  .getCell(column(book.getSheet("Log"), "Real move-in"))
                  .setCellValue(LocalDate.of(2026, 11, 3));
              book.getSheet("Place forecast").getRow(2).getCell(2).setCellValue(1);
            });
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      assertEquals(
          LocalDate.of(2026, 11, 7),
          answer(book, "next_moving_day").getLocalDateTimeCellValue().toLocalDate());
      assertEquals(pots[0], answer(book, "pots_moved").getNumericCellValue());
      assertEquals(pots[1], answer(book, "pots_overdue").getNumericCellValue());
      assertEquals(pots[2], answer(book, "pots_next").getNumericCellValue());
      Sheet days = book.getSheet("Moving days");
      int stands = column(days, "Stands");
      assertEquals("OVERDUE", days.getRow(1).getCell(stands).getStringCellValue());
      assertEquals("done", days.getRow(3).getCell(stands).getStringCellValue());
      Sheet log = book.getSheet("Log");
      Row logged = log.getRow(2);
      LocalDate planned =
          logged.getCell(column(log, "Planned move-in")).getLocalDateTimeCellValue().toLocalDate();
      assertEquals(
          3 - planned.getDayOfMonth(),
          logged.getCell(column(log, "Days late")).getNumericCellValue(),
          "planned for " + planned);
      assertEquals(1, logged.getCell(column(log, "Days away")).getNumericCellValue());
      Row place = book.getSheet("Place forecast").getRow(2);
      int word = column(book.getSheet("Place forecast"), "Room exceeded");
      assertEquals("OVERFULL", place.getCell(word).getStringCellValue());
      List<String> none =
          values(file).entrySet().stream()
              .filter(e -> e.getValue() instanceof CellType)
              .map(Map.Entry::getKey)
              .toList();
      assertEquals(List.of(), none, "cells with an error");
    }
  }

  private static Cell answer(XSSFWorkbook book, String name) {
    CellReference at = new CellReference(book.getName(name).getRefersToFormula());
    return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  private static void set(XSSFWorkbook book, String name, LocalDate day) {
    answer(book, name).setCellValue(day);
  }

  private static int column(Sheet sheet, String heading) {
    for (Cell cell : sheet.getRow(0)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no heading " + heading + " on " + sheet.getSheetName());
  }
}
