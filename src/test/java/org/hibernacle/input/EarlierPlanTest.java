package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Diagnostic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A log is found again where the keeper put it, and one that can not be read is not overlooked. */
class EarlierPlanTest {
  private static final Path FILLED_IN = Path.of("demo-data", "season-plan-filled-in.xlsx");

  @TempDir Path folder;

  private final Problems problems = new Problems();

  private Optional<EarlierPlan> readAfter(Consumer<XSSFWorkbook> edit) throws IOException {
    Path file = folder.resolve("season-plan.xlsx");
    try (InputStream in = Files.newInputStream(FILLED_IN);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(file)) {
      edit.accept(book);
      book.write(out);
    }
    return EarlierPlan.read(file, problems);
  }

  @Test
  void renamedSheetsAreFoundByTheirNamedCells() throws IOException {
    EarlierPlan before = EarlierPlan.read(FILLED_IN, problems).orElseThrow();
    EarlierPlan after =
        readAfter(
                book -> {
                  book.setSheetName(book.getSheetIndex("Log"), "My winter");
                  book.setSheetName(book.getSheetIndex("Moving days"), "Carrying");
                })
            .orElseThrow();
    assertEquals(before.log().table().rows(), after.log().table().rows());
    assertEquals(before.moves(), after.moves());
    assertTrue(!before.moves().isEmpty() && problems.sorted().isEmpty());
  }

  @Test
  void aRenamedHeadingIsToldAsWhatItMayBe() throws IOException {
    Optional<EarlierPlan> plan =
        readAfter(
            book -> {
              for (Cell cell : book.getSheet("Log").getRow(0)) {
                if (cell.getStringCellValue().equals("Outcome")) {
                  cell.setCellValue("How it went");
                }
              }
            });
    assertEquals(Optional.empty(), plan);
    Diagnostic problem = problems.sorted().get(0);
    assertEquals("IN-381", problem.code());
    assertTrue(problem.found().contains("headings were renamed"), problem::found);
  }

  @Test
  void aNameThatMeansNoCellsIsPassedBy() throws IOException {
    EarlierPlan before = EarlierPlan.read(FILLED_IN, problems).orElseThrow();
    EarlierPlan after =
        readAfter(
                book ->
                    book.getName("table_log")
                        .setRefersToFormula("OFFSET(Log!$A$1,0,0,COUNTA(Log!$A:$A),5)"))
            .orElseThrow();
    assertEquals(before.log().table().rows(), after.log().table().rows());
  }

  /** None is a reference to cells, and the library says so in four different ways. */
  @ParameterizedTest
  @ValueSource(strings = {"", ":", "$A$1", "(.Log!:Log!]9Log!)", "Log!A99999999999999", "#REF!"})
  void aNameThatMeansNothingIsPassedBy(String formula) throws IOException {
    EarlierPlan before = EarlierPlan.read(FILLED_IN, problems).orElseThrow();
    EarlierPlan after =
        readAfter(
                book ->
                    book.getCTWorkbook().getDefinedNames().getDefinedNameList().stream()
                        .filter(name -> name.getName().equals("table_log"))
                        .forEach(name -> name.setStringValue(formula)))
            .orElseThrow();
    assertEquals(before.log().table().rows(), after.log().table().rows());
  }
}
