package org.hibernacle.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Sheet;
import org.hibernacle.input.EarlierPlan;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookWriterTest {
  /** A dump to be read in reviews; rewritten by {@code -Dgolden.update}. */
  private static final Path GOLDEN = Path.of("src/test/resources/golden/season-plan.xlsx.txt");

  private static final SeasonReport REPORT = report(Settings.Units.METRIC, Locale.UK);

  private static SeasonReport report(Settings.Units units, Locale language) {
    return ReportAuthor.write(
        Fixtures.plan(Fixtures.settings(units, language)), Fixtures.facts(), Words.of(language));
  }

  private static byte[] write(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(report, out);
    return out.toByteArray();
  }

  private static XSSFWorkbook open(byte[] bytes) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  @Test
  void holdsWhatTheGoldenDumpSays() throws IOException {
    List<String> dump = WorkbookDump.of(write(REPORT));
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(GOLDEN.getParent());
      Files.write(GOLDEN, dump);
    }
    assertEquals(String.join("\n", Files.readAllLines(GOLDEN)), String.join("\n", dump));
  }

  @Test
  void writesEqualBytesWhateverTheMachinesLanguageAndTimeZone() throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    byte[] expected = write(REPORT);
    try {
      for (String language : List.of("en", "de", "tr")) {
        String place = language.equals("de") ? "UTC" : "Asia/Tokyo";
        Locale.setDefault(Locale.forLanguageTag(language));
        TimeZone.setDefault(TimeZone.getTimeZone(place));
        SeasonReport again = report(Settings.Units.METRIC, Locale.UK);
        assertEquals(REPORT, again, language + " " + place);
        assertArrayEquals(expected, write(again), language + " " + place);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void everyCellOfTheReportIsReadBackAsItIsDisplayed() throws IOException {
    for (Locale language : List.of(Locale.UK, Locale.GERMANY)) {
      SeasonReport report = report(Settings.Units.METRIC, language);
      Display display = new Display(Words.of(language));
      DataFormatter formatter = new DataFormatter(language);
      formatter.setUseCachedValuesForFormulaCells(true);
      try (XSSFWorkbook workbook = open(write(report))) {
        for (Section section : report.sections()) {
          XSSFSheet sheet = workbook.getSheet(section.title());
          for (int r = 0; r < section.rows().size(); r++) {
            Row row = sheet.getRow(r + 1);
            int c = 0;
            for (int i = 0; i < section.columns().size(); i++) {
              if (section.columns().get(i).media().contains(Medium.WORKBOOK)) {
                assertEquals(
                    display.text(section.rows().get(r).cells().get(i)),
                    formatter.formatCellValue(row.getCell(c)),
                    section.title() + " " + row.getCell(c).getAddress());
                c++;
              }
            }
          }
        }
      }
    }
  }

  @Test
  void aSecondReaderFindsHeadingsInTheFirstRowAndRealDatesAndNumbersBelow() throws IOException {
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(write(REPORT)))) {
      Sheet plan = workbook.findSheet("Season plan").orElseThrow();
      List<org.dhatim.fastexcel.reader.Row> rows = plan.read();
      assertEquals(REPORT.section("season-plan").rows().size() + 1, rows.size());
      List<String> headings =
          Stream.iterate(0, c -> c < rows.get(0).getCellCount(), c -> c + 1)
              .map(c -> rows.get(0).getCellText(c))
              .toList();
      assertTrue(
          headings.containsAll(
              List.of("Id", "Species", "Place", "Move-down", "Move-in", "Return-to-bench")),
          headings.toString());
      org.dhatim.fastexcel.reader.Row pine =
          rows.stream().filter(r -> r.getCellText(0).equals("P-02")).findFirst().orElseThrow();
      assertEquals(
          LocalDateTime.of(2026, 11, 14, 0, 0),
          pine.getCellAsDate(headings.indexOf("Move-down")).orElseThrow());
      assertTrue(pine.getCellAsDate(headings.indexOf("Move-in")).isEmpty());
      assertEquals(
          BigDecimal.valueOf(2.25),
          pine.getCellAsNumber(headings.indexOf("Smallest margin (K)")).orElseThrow());
      assertEquals("=Old pine", pine.getCellText(headings.indexOf("Name")));
      Sheet plants = workbook.findSheet("Plants").orElseThrow();
      assertEquals("Shelf mark", plants.read().get(0).getCellText(6));
    }
  }

  @Test
  void thePlanIsAnInventoryAgainWithoutTheSheetsOfTheReport() throws IOException {
    byte[] bytes = write(REPORT);
    Problems problems = new Problems();
    Inventory inventory =
        InventoryWorkbook.read(
                new ByteArrayInputStream(bytes),
                "season-plan.xlsx",
                SpeciesCatalogue.builtIn(),
                problems)
            .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    // A sheet named like one of the report's goes by a number from then on.
    List<SheetTable> expected =
        REPORT.carried().stream()
            .map(t -> t.name().equals("Notes") ? renamed(t, "Notes (2)") : t)
            .toList();
    assertEquals(expected, inventory.sheets());
    assertEquals(List.of("P-01", "P-02"), inventory.plants().stream().map(Plant::id).toList());
    try (XSSFWorkbook workbook = open(bytes)) {
      assertEquals("1", workbook.getName(WorkbookWriter.FORMAT_NAME).getRefersToFormula());
    }
  }

  private static SheetTable renamed(SheetTable table, String name) {
    return new SheetTable(name, table.headings(), table.rows());
  }

  @Test
  void aLogThatWasFilledInComesBackWithTheNextPlan(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("season-plan.xlsx");
    try (XSSFWorkbook workbook = open(write(REPORT));
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet log = workbook.getSheet("Log");
      Row pine =
          Stream.iterate(1, r -> r + 1)
              .map(log::getRow)
              .filter(r -> r.getCell(0).getStringCellValue().equals("P-02"))
              .findFirst()
              .orElseThrow();
      pine.getCell(6).setCellValue(LocalDate.of(2026, 11, 15));
      pine.getCell(10).setCellValue("no damage");
      workbook.write(out);
    }
    Problems problems = new Problems();
    Optional<LogSheet> earlier = EarlierPlan.read(file, problems).map(EarlierPlan::log);
    RunFacts facts = Fixtures.facts(earlier);
    SeasonReport next = ReportAuthor.write(Fixtures.plan(), facts, Words.of(Locale.UK));
    Section log = next.section("log");
    assertEquals(REPORT.section("log").columns(), log.columns());
    assertEquals(REPORT.section("log").rows().size(), log.rows().size());
    List<Cell> pine =
        log.rows().stream()
            .map(Section.Row::cells)
            .filter(cells -> cells.get(0).equals(new Cell.Text("P-02")))
            .findFirst()
            .orElseThrow();
    assertEquals(new Cell.Day(LocalDate.of(2026, 11, 15)), pine.get(6));
    assertEquals(new Cell.Text("no damage"), pine.get(10));
    assertEquals(List.of(), problems.sorted());
  }

  @Test
  void numbersASheetThatHasTheNameOfAnother() {
    SheetNames names = new SheetNames(Words.of(Locale.UK));
    assertEquals("Notes", names.unique("Notes"));
    assertEquals("notes (2)", names.unique("notes"));
    assertEquals("Notes (3)", names.unique("Notes"));
    assertEquals("North bed", names.unique("North/bed"));
    String longest = names.unique("x".repeat(40));
    assertEquals("x".repeat(31), longest);
    assertEquals("x".repeat(27) + " (2)", names.unique("x".repeat(40)));
  }

  @Test
  void offersTheOutcomesFromAHiddenSheet() throws IOException {
    try (XSSFWorkbook workbook = open(write(REPORT))) {
      String cells = workbook.getName("list_outcome").getRefersToFormula();
      assertTrue(cells.matches("Lists!\\$([A-Z])\\$1:\\$\\1\\$5"), cells);
      assertTrue(workbook.isSheetHidden(workbook.getSheetIndex("Lists")));
      List<String> formulas =
          workbook.getSheet("Log").getDataValidations().stream()
              .map(v -> v.getValidationConstraint().getFormula1())
              .toList();
      assertTrue(formulas.contains("list_outcome"), formulas.toString());
      assertTrue(
          formulas.containsAll(List.of("list_if_blank", "list_stood_in")), formulas.toString());
      assertEquals(8, formulas.size());
    }
  }

  @Test
  void writesOnlySectionsOfItsMedium() throws IOException {
    try (XSSFWorkbook workbook = open(write(REPORT))) {
      Set<String> expected = new TreeSet<>(List.of("Notes (2)"));
      REPORT.sections().stream()
          .filter(s -> s.media().contains(Medium.WORKBOOK))
          .forEach(s -> expected.add(s.title()));
      REPORT.carried().forEach(t -> expected.add(t.name()));
      expected.addAll(List.of("Overview", "Lists", "Record"));
      Set<String> found = new TreeSet<>();
      workbook.sheetIterator().forEachRemaining(sheet -> found.add(sheet.getSheetName()));
      assertEquals(expected, found);
      assertEquals("Overview", workbook.getSheetName(0));
      assertEquals("Season plan", workbook.getSheetName(1));
    }
  }

  @Test
  void countsTheLinesOfWrappedWords() {
    assertEquals(1, Paragraphs.lines("", 10));
    assertEquals(1, Paragraphs.lines("ten chars.", 10));
    assertEquals(2, Paragraphs.lines("ten chars. x", 10));
    assertEquals(3, Paragraphs.lines("a\nb\nc", 10));
    assertEquals(3, Paragraphs.lines("x".repeat(25), 10));
  }

  @Test
  void cutsATextThatNoCellHolds() throws IOException {
    String tooLong = "word ".repeat(8000);
    Section section = REPORT.section("notes");
    Section.Row row = section.rows().get(0);
    List<Cell> cells =
        List.of(row.cells().get(0), row.cells().get(1), new Cell.Text(tooLong), new Cell.Gap());
    Section longer =
        new Section(
            section.id(),
            section.title(),
            section.media(),
            section.intro(),
            section.columns(),
            List.of(new Section.Row(row.role(), cells)));
    SeasonReport report =
        new SeasonReport(
            REPORT.title(),
            REPORT.subtitle(),
            REPORT.overview(),
            List.of(longer),
            REPORT.months(),
            REPORT.legend(),
            REPORT.chart(),
            List.of(),
            REPORT.pageFooter(),
            REPORT.digest(),
            true,
            REPORT.weekStart(),
            REPORT.language());
    try (XSSFWorkbook workbook = open(write(report))) {
      String text = workbook.getSheet("Notes").getRow(1).getCell(2).getStringCellValue();
      // 32,767: length of a cell's text in the file format's limits.
      assertEquals(32_767, text.length());
      assertTrue(text.endsWith("(cut)"));
      assertFalse(workbook.isSheetHidden(0));
    }
  }
}
