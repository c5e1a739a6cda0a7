package org.hibernacle.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a keeper writes is seen where it would be lost, and nowhere else. */
class SealTest {
  private static byte[] plan = {};

  @BeforeAll
  static void write() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(
        ReportAuthor.write(Fixtures.plan(), Fixtures.facts(), Words.of(Locale.UK)), out);
    plan = out.toByteArray();
  }

  private static boolean brokenBy(Consumer<XSSFWorkbook> edit) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(plan))) {
      edit.accept(book);
      return Seal.of(book) == Seal.State.BROKEN;
    }
  }

  @Test
  void whatIsCarriedOnBreaksNothing() throws IOException {
    assertFalse(brokenBy(book -> {}));
    assertFalse(
        brokenBy(
            book -> {
              XSSFSheet log = book.getSheet("Log");
              log.getRow(1).getCell(6).setCellValue(LocalDate.of(2026, 11, 15));
              log.createRow(60).createCell(0).setCellValue("P-99");
              book.getSheet("Moving days").getRow(1).getCell(9).setCellValue("yes");
              book.getSheet("Tasks").getRow(1).getCell(6).setCellValue("x");
              book.getSheet("Overview").getRow(3).getCell(2).setCellValue(46300);
              book.setSheetName(book.getSheetIndex("Tasks"), "Work");
            }));
  }

  @Test
  void aSortedTableIsTheSame() throws IOException {
    assertFalse(
        brokenBy(
            book -> {
              XSSFSheet tasks = book.getSheet("Tasks");
              String first = tasks.getRow(1).getCell(2).getStringCellValue();
              String second = tasks.getRow(2).getCell(2).getStringCellValue();
              tasks.getRow(1).getCell(2).setCellValue(second);
              tasks.getRow(2).getCell(2).setCellValue(first);
            }));
  }

  @Test
  void whatWouldBeLostBreaksIt() throws IOException {
    assertTrue(
        brokenBy(book -> book.createSheet("My own").createRow(0).createCell(0).setCellValue(1)));
    assertTrue(
        brokenBy(book -> book.getSheet("Tasks").getRow(1).createCell(12).setCellValue("ask Ann")));
    assertTrue(
        brokenBy(book -> book.getSheet("Tasks").createRow(80).createCell(2).setCellValue("sweep")));
    assertTrue(
        brokenBy(book -> book.getSheet("Tasks").createRow(80).createCell(2).setCellFormula("1+1")));
    assertTrue(brokenBy(book -> book.getSheet("Plants").getRow(1).getCell(0).setCellValue("P-77")));
    assertTrue(
        brokenBy(book -> book.getSheet("Place forecast").getRow(1).getCell(2).setCellValue(3.5)));
    assertTrue(
        brokenBy(book -> Notes.put(book.getSheet("Tasks").getRow(1).getCell(0), "rained off")));
  }

  @Test
  void whatTheNewLogWritesAnewIsSealed() throws IOException {
    assertTrue(brokenBy(book -> Notes.put(book.getSheet("Log").getRow(1).getCell(8), "late")));
    assertTrue(brokenBy(book -> book.getSheet("Log").getRow(1).getCell(1).setCellValue("Olga")));
    assertTrue(brokenBy(book -> book.getSheet("Log").getRow(1).getCell(3).setCellValue(46300)));
    assertTrue(brokenBy(book -> book.getSheet("Log").getRow(1).createCell(15).setCellValue(3)));
  }

  @Test
  void rowsOfTheKeepersOwnInTheLogAreCarriedOn() throws IOException {
    assertFalse(
        brokenBy(
            book -> {
              XSSFSheet log = book.getSheet("Log");
              log.createRow(60).createCell(0).setCellValue("P-99");
              log.getRow(60).createCell(1).setCellValue("a gift");
              String id = log.getRow(1).getCell(0).getStringCellValue();
              log.createRow(61).createCell(0).setCellValue(id);
              log.getRow(61).createCell(8).setCellValue(LocalDate.of(2027, 1, 2));
              log.removeRow(log.getRow(2));
            }));
  }

  @Test
  void aNumberThatIsNoneBreaksIt() throws IOException {
    assertTrue(
        brokenBy(book -> book.getSheet("Tasks").getRow(1).createCell(12).getCTCell().setV("NaN")));
  }

  @Test
  void aWorkbookWithoutASealTellsNothing() throws IOException {
    assertEquals(
        Seal.State.NONE, Seal.of(Files.readAllBytes(Path.of("demo-data", "inventory.xlsx"))));
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(plan))) {
      book.removeSheetAt(book.getSheetIndex("Record"));
      assertEquals(Seal.State.NONE, Seal.of(book));
    }
  }

  /** Log and ticks were filled in, and an office program opened and saved it; nothing else. */
  @Test
  void savingItElsewhereBreaksNothing() throws IOException {
    assertEquals(
        Seal.State.WHOLE,
        Seal.of(Files.readAllBytes(Path.of("src/test/resources/plans/saved-elsewhere.xlsx"))));
  }
}
