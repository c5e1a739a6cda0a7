package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command after the winter, from the demo's filled-in plan to the next plan. */
class ReviewCommandTest {
  private static final Path DEMO = Path.of("demo-data");
  private static final Path PLAN = DEMO.resolve("season-plan-filled-in.xlsx");
  private static final Path BEFORE = DEMO.resolve("temperatures.csv");
  private static final Path WINTER = DEMO.resolve("winter-2026-27.csv");
  private static final String SHED = "Stone shed=" + DEMO.resolve("stone-shed-2026-27.csv");

  @TempDir Path folder = Path.of("");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... words) {
    String[] line = Arrays.stream(words).map(Object::toString).toArray(String[]::new);
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), line);
  }

  @Test
  void theDemosWinterIsReviewedAndTheNextOnePlannedFromIt() throws IOException {
    byte[] before = Files.readAllBytes(PLAN);
    assertEquals(
        ExitCode.DONE,
        run("review", PLAN, BEFORE, WINTER, "-o", folder, "--place-temperatures", SHED),
        err::toString);
    assertArrayEquals(before, Files.readAllBytes(PLAN), "inputs are only read");
    assertEquals(
        List.of("losses-review.pdf", "losses-review.xlsx", "next-inventory.xlsx"), names(folder));
    String told = out.toString();
    assertTrue(told.startsWith("Losses review, Quillbrook Yard, winter 2026/27"), told);
    assertTrue(told.indexOf("PLAN ITSELF FAILED") < told.indexOf("Dead"), told);
    assertTrue(told.contains("Value of the dead"), told);
    assertTrue(told.contains("Wrote " + folder.resolve("next-inventory.xlsx")), told);
    try (PDDocument paper = Loader.loadPDF(folder.resolve("losses-review.pdf").toFile())) {
      assertTrue(Set.of(2, 3, 4).contains(paper.getNumberOfPages()));
    }
    List<String> reasons = column("losses-review.xlsx", "Losses", "Why");
    assertTrue(reasons.stream().anyMatch(w -> w.contains("was not made")), reasons.toString());
    assertTrue(
        reasons.stream().anyMatch(w -> w.contains("came 41 days after the planned 4 Oct 2026")),
        reasons.toString());

    // The dead and gone are set aside; the proposals change the next plan once accepted.
    assertEquals(
        List.of("P05", "P21", "P25", "P26", "P30", "P36"),
        column("next-inventory.xlsx", "Set aside", "Id").stream().sorted().toList());
    List<String> left = column("next-inventory.xlsx", "Plants", "Id");
    assertEquals(40, left.size());
    assertTrue(left.stream().noneMatch("P05"::equals));
    assertEquals(46, column("next-inventory.xlsx", "History", "Id").size());
    Path inventory = folder.resolve("next-inventory.xlsx");
    assertEquals(List.of("[IN-371]"), answered(inventory, ""));
    assertEquals(List.of("[IN-372]"), answered(inventory, "yes"));
  }

  /** Plans a few of the plants, and tells which codes for proposals stand in the notes. */
  private List<String> answered(Path inventory, String answer) throws IOException {
    Path file = folder.resolve("answered" + answer + ".xlsx");
    try (InputStream in = Files.newInputStream(inventory);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream to = Files.newOutputStream(file)) {
      Sheet plants = book.getSheet("Plants");
      for (int i = plants.getLastRowNum(); i > 0; i--) {
        if (!Set.of("P12", "P44").contains(plants.getRow(i).getCell(0).getStringCellValue())) {
          plants.removeRow(plants.getRow(i));
        }
      }
      int answers = 0;
      for (String name : List.of("Places", "Species")) {
        Sheet sheet = book.getSheet(name);
        int proposed = index(sheet, "Proposed");
        for (Row row : sheet) {
          Cell cell = row.getCell(proposed);
          if (row.getRowNum() > 0 && cell != null && !cell.toString().isEmpty()) {
            row.getCell(index(sheet, "Accept")).setCellValue(answer);
            answers++;
          }
        }
      }
      assertEquals(2, answers, "a root limit and a place");
      book.write(to);
    }
    Path plan = folder.resolve("plan" + answer);
    assertTrue(
        Set.of(ExitCode.DONE, ExitCode.UNPROTECTED)
            .contains(run("plan", file, WINTER, "-o", plan, "-q")),
        err::toString);
    return column(plan.resolve("season-plan.xlsx"), "Notes", "Where").stream()
        .filter(where -> where.matches(".*(Places|Species) \\[IN-37.]"))
        .map(where -> where.substring(where.indexOf('[')))
        .distinct()
        .toList();
  }

  @Test
  void aDryRunWritesNothingAndAQuietOneSaysNothing() throws IOException {
    assertEquals(
        ExitCode.DONE,
        run("review", PLAN, WINTER, "-o", folder.resolve("new"), "--dry-run", "-q"),
        err::toString);
    assertEquals("", out + err.toString());
    assertTrue(Files.notExists(folder.resolve("new")));
  }

  @Test
  void anotherWintersTemperaturesAndAnInventoryWithoutALogStopTheRun() throws IOException {
    assertEquals(ExitCode.BAD_INPUT, run("review", PLAN, BEFORE, "-o", folder));
    assertTrue(
        err.toString()
            .contains(
                "error: temperatures.csv [RV-550]: the cold months of winter 2026/27 are not on"
                    + " file"),
        err.toString());
    err.getBuffer().setLength(0);
    Path inventory = DEMO.resolve("inventory.xlsx");
    assertEquals(ExitCode.BAD_INPUT, run("review", inventory, WINTER, "-o", folder));
    assertTrue(err.toString().contains("inventory.xlsx [IN-350]"), err.toString());
    assertEquals(ExitCode.WRONG_USE, run("review", PLAN));
    assertEquals(List.of(), names(folder));
  }

  @Test
  void neverWritesOverItsInputs() throws IOException {
    Path plan = Files.copy(PLAN, folder.resolve("next-inventory.xlsx"));
    assertEquals(ExitCode.NOT_WRITTEN, run("review", plan, WINTER, "-o", folder));
    assertTrue(err.toString().contains("next-inventory.xlsx is an input."), err.toString());
    assertEquals(List.of("next-inventory.xlsx"), names(folder));
    assertEquals(-1, Files.mismatch(PLAN, plan));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> String.valueOf(f.getFileName())).sorted().toList();
    }
  }

  private List<String> column(String file, String sheet, String heading) throws IOException {
    return column(folder.resolve(file), sheet, heading);
  }

  private static List<String> column(Path file, String sheetName, String heading)
      throws IOException {
    List<String> values = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      Sheet sheet = book.getSheet(sheetName);
      int column = index(sheet, heading);
      for (Row row : sheet) {
        if (row.getRowNum() > 0) {
          Cell cell = row.getCell(column);
          values.add(cell == null ? "" : cell.toString());
        }
      }
    }
    return values;
  }

  private static int index(Sheet sheet, String headingStart) {
    for (Cell cell : sheet.getRow(0)) {
      if (cell.getStringCellValue().startsWith(headingStart)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError(headingStart + " in " + sheet.getSheetName());
  }
}
