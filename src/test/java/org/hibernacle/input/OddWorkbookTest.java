package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.Plant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What keepers' own workbooks hold: read as the eye reads it, and said so. */
class OddWorkbookTest {
  private static TestBook withDate(Object date) {
    return TestBook.least()
        .plants("Id|Species|Home|Volume L|Not before", "A1", "Acer palmatum", "Bench", 5, date);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-10-01",
        "2026/10/1",
        "2026.10.01.",
        "1 Oct 2026",
        "1. October 2026",
        "01-Oct-2026",
        "Oct 1, 2026",
        "October 1st, 2026"
      })
  void aDayWithItsMonthByNameOrItsYearInFrontIsReadFromText(String text) {
    Reading reading = withDate(text).read();
    assertEquals(
        LocalDate.of(2026, 10, 1), reading.sound().plants().get(0).notBefore().orElseThrow());
    assertTrue(reading.text("IN-127").contains("Not before holds a date as text"), reading::text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1/10/2026", "1.10.2026", "1 Okt 2026", "31 Feb 2026", "soon", "1 Ma 2026"})
  void aDayThatCouldBeAnotherIsRefused(String text) {
    assertTrue(
        withDate(text)
            .read()
            .text("IN-121")
            .contains(
                "E2 [IN-121]: Not before \""
                    + text
                    + "\"; expected a cell formatted as a date, or text like 2026-10-01 or 1 Oct"
                    + " 2026"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"12,5|12.5", "0,125|0.125", "1234,5|1234.5", ",5|0.5"})
  void aDecimalCommaIsRead(String text, double expectedL) {
    Reading reading =
        TestBook.least().plants("Id|Species|Home|Volume L", "A", "ume", "Bench", text).read();
    assertEquals(expectedL, reading.sound().plants().get(0).container().volumeL());
    assertTrue(reading.text("IN-126").contains("Volume L holds a number as text"), reading::text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,500", "12 L", "1.234,5", "1,234.5", "a few"})
  void aNumberThatCouldBeAnotherIsRefused(String text) {
    Reading reading =
        TestBook.least().plants("Id|Species|Home|Volume L", "A", "ume", "Bench", text).read();
    assertTrue(
        reading.text("IN-120").contains("\"" + text + "\"; expected a number from 0.02 to 3000 L"),
        reading::text);
  }

  @Test
  void cellsMergedOverRowsCountInEachOfThem() {
    TestBook book =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L",
                "A1",
                "Acer palmatum",
                "Bench",
                5,
                "A2",
                "ume",
                "",
                6,
                "A3",
                "ume",
                "",
                7);
    book.sheet("Plants").addMergedRegion(CellRangeAddress.valueOf("C2:C9"));
    Reading reading = book.read();
    assertEquals(
        List.of("Bench", "Bench", "Bench"),
        reading.sound().plants().stream().map(Plant::home).toList());
    assertEquals(
        "NOTE inventory.xlsx, sheet Plants [IN-443]: merged cells that cover 2 cells; the value"
            + " above is read in each row that they cover.\n",
        reading.text("IN-443"));
  }

  @Test
  void cellsMergedOverColumnsAreATitleAndNoValueOfTheOthers() {
    TestBook book =
        TestBook.least()
            .plants("Id|Species|Home|Volume L", "Maples", "", "", "", "A1", "ume", "Bench", 5);
    book.sheet("Plants").addMergedRegion(CellRangeAddress.valueOf("A2:D2"));
    assertTrue(book.read().text("IN-129").contains("B2 [IN-129]: Species is empty"));
  }

  @Test
  void whatIsHiddenIsReadAndSaidSo() {
    TestBook book =
        TestBook.least()
            .plants(
                "Id|Species|Home|Volume L|Count",
                "A1",
                "Acer palmatum",
                "Bench",
                5,
                1,
                "A2",
                "ume",
                "Bench",
                6,
                3);
    book.sheet("Plants").getRow(2).setZeroHeight(true);
    book.sheet("Plants").setColumnHidden(4, true);
    book.book().setSheetHidden(book.book().getSheetIndex("Places"), true);
    Reading reading = book.read();
    assertEquals(3, reading.sound().plants().get(1).count());
    String read = "; what stands there is read like anything else.\n";
    assertEquals(
        "NOTE inventory.xlsx, sheet Places [IN-442]: the sheet is hidden"
            + read
            + "NOTE inventory.xlsx, sheet Plants [IN-442]: 1 column is hidden"
            + read
            + "NOTE inventory.xlsx, sheet Plants [IN-442]: 1 row is hidden"
            + read,
        reading.text("IN-442"));
  }

  /** Spreadsheet programs count days from 1900 or from 1904; ECMA-376 part 1, 18.2.28. */
  @Test
  void daysCountedFrom1904AreTheSameDays() {
    TestBook book = withDate(LocalDate.of(2026, 10, 1));
    double from1900 = book.sheet("Plants").getRow(1).getCell(4).getNumericCellValue();
    book.book().getCTWorkbook().getWorkbookPr().setDate1904(true);
    book.sheet("Plants").getRow(1).getCell(4).setCellValue(from1900 - 1462);
    assertEquals(
        LocalDate.of(2026, 10, 1), book.read().sound().plants().get(0).notBefore().orElseThrow());
  }

  @Test
  void aWorkbookWithMacrosIsReadWithoutThem() throws IOException {
    TestBook book = TestBook.least();
    book.book().setWorkbookType(XSSFWorkbookType.XLSM);
    Reading reading = book.read();
    assertEquals(1, reading.sound().plants().size());
    assertEquals(
        "NOTE inventory.xlsx [IN-446]: the workbook has macros; they are neither run nor carried"
            + " into the plan.\n",
        reading.text("IN-446"));
  }

  @Test
  void unitsStandInHeadings() {
    Plant plant =
        TestBook.least()
            .plants(
                "Id|Species|Home|Pot volume\n(gal)|Height (in)|Root limit [°F]",
                "A1",
                "Acer palmatum",
                "Bench",
                2,
                40,
                14)
            .read()
            .sound()
            .plants()
            .get(0);
    // The gallon has 231 cubic inches of 2.54 cm: NIST Handbook 44, appendix C.
    assertEquals(2 * 231 * 2.54 * 2.54 * 2.54 / 1000, plant.container().volumeL(), 1e-9);
    assertEquals(101.6, plant.heightCm().orElseThrow(), 1e-9);
    assertEquals(-10, plant.ownRootLimitC().orElseThrow(), 1e-9);
  }

  @Test
  void aFormulaWithAnEmptyResultIsNotZero() {
    TestBook book =
        TestBook.least().plants("Id|Species|Home|Volume L|Value", "A", "ume", "Bench", 5, 77.125);
    byte[] bytes =
        book.bytesWith(
            sheetPart(book, "Plants"), xml -> xml.replace("<v>77.125</v>", "<f>G1*2</f><v></v>"));
    assertTrue(
        TestBook.read(bytes).text("IN-124").contains("E2 [IN-124]: the formula has no stored"));
  }

  /** The parts are numbered in the order in which the sheets were made. */
  private static String sheetPart(TestBook book, String sheet) {
    return book.sheet(sheet).getPackagePart().getPartName().getName().substring(1);
  }

  /** Saved by a spreadsheet program: merged cells, calculated cells, a date in another format. */
  @Test
  void aWorkbookSavedByAnotherProgramIsReadTheSame() throws IOException {
    Path folder = Path.of("src", "test", "resources", "inventories");
    Problems problems = new Problems();
    var here =
        InventoryWorkbook.read(
            folder.resolve("merged-and-calculated.xlsx"), SpeciesCatalogue.builtIn(), problems);
    assertEquals(
        List.of(), problems.sorted().stream().filter(d -> !d.expected().isEmpty()).toList());
    List<Plant> plants = here.orElseThrow().plants();
    assertEquals(List.of("A1", "A2", "A3"), plants.stream().map(Plant::id).toList());
    assertEquals(LocalDate.of(2026, 10, 1), plants.get(0).notBefore().orElseThrow());
    assertEquals(12.5, plants.get(1).container().volumeL());
    assertEquals(List.of("Bench", "Bench", "Bench"), plants.stream().map(Plant::home).toList());
    assertEquals(6, plants.get(2).priority() + plants.get(2).count());
  }
}
