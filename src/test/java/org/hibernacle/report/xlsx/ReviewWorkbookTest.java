package org.hibernacle.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.NextInventory;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReviewAuthor;
import org.hibernacle.report.ReviewFixtures;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.hibernacle.review.SeasonReview;
import org.junit.jupiter.api.Test;

class ReviewWorkbookTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final Words WORDS = Words.of(Locale.UK);
  private static final SeasonReview REVIEW = ReviewFixtures.review();

  private static SeasonReport report() {
    return ReviewAuthor.write(REVIEW, Fixtures.facts(), WORDS);
  }

  private static SeasonReport inventory() {
    List<SheetTable> sheets =
        NextInventory.sheets(
            REVIEW.inventory(),
            ReviewAuthor.revision(REVIEW, Fixtures.facts(), WORDS),
            SpeciesCatalogue.builtIn());
    List<SeasonReport.Asked> asked =
        NextInventory.questions(sheets).stream()
            .map(q -> new SeasonReport.Asked(q.sheet(), q.heading(), q.beside(), q.answers()))
            .toList();
    return ReviewAuthor.inventory(REVIEW, Fixtures.facts(), WORDS, sheets, asked);
  }

  private static byte[] write(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(report, out);
    return out.toByteArray();
  }

  @Test
  void theReviewReadsAsTheGoldenDump() throws IOException {
    assertGolden("losses-review.xlsx.txt", report());
  }

  @Test
  void theNextInventoryReadsAsTheGoldenDump() throws IOException {
    assertGolden("next-inventory.xlsx.txt", inventory());
  }

  private static void assertGolden(String name, SeasonReport report) throws IOException {
    List<String> dump = WorkbookDump.of(write(report));
    Path golden = GOLDEN.resolve(name);
    if (Boolean.getBoolean("golden.update")) {
      Files.write(golden, dump);
    }
    assertEquals(String.join("\n", Files.readAllLines(golden)), String.join("\n", dump));
  }

  @Test
  void writesEqualBytesWhateverTheMachinesLanguageAndTimeZone() throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    byte[] review = write(report());
    byte[] inventory = write(inventory());
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
      assertArrayEquals(review, write(report()));
      assertArrayEquals(inventory, write(inventory()));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void aSecondReaderFindsRealDatesAndNumbers() throws IOException {
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(write(report())))) {
      List<Row> losses = book.findSheet("Losses").orElseThrow().read();
      assertEquals(
          List.of("Id", "Name", "Outcome", "Place", "Likely cause"),
          IntStream.range(0, 5).mapToObj(losses.get(0)::getCellText).toList());
      // One row a harmed plant, the plan's own failures first.
      assertEquals(1 + REVIEW.harmed().count(), losses.size());
      assertEquals("THE PLAN FAILED", losses.get(1).getCellText(5));
      assertEquals(
          LocalDateTime.of(2027, 3, 6, 0, 0), losses.get(1).getCellAsDate(8).orElseThrow());
      List<Row> survival = book.findSheet("Survival").orElseThrow().read();
      assertEquals(70, survival.get(1).getCellAsNumber(4).orElseThrow().doubleValue(), 1e-9);
      // By hand from Wilson's formula (1927): (0.7 + 0.192) / 1.384 -+ 1.96 * 0.1749 / 1.384.
      assertEquals(39.7, survival.get(1).getCellAsNumber(5).orElseThrow().doubleValue(), 0.05);
      assertEquals(89.2, survival.get(1).getCellAsNumber(6).orElseThrow().doubleValue(), 0.05);
    }
  }

  @Test
  void offersWhatTheKeeperMayDecide() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(write(report())))) {
      assertEquals(1, book.getSheet("What to change").getDataValidations().size());
      assertEquals("accept", book.getSheet("Lists").getRow(0).getCell(0).getStringCellValue());
    }
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(write(inventory())))) {
      for (String sheet : List.of("Places", "Species")) {
        assertEquals(
            "list_answer",
            book.getSheet(sheet)
                .getDataValidations()
                .get(0)
                .getValidationConstraint()
                .getFormula1());
      }
      assertEquals("yes", book.getSheet("Lists").getRow(0).getCell(0).getStringCellValue());
    }
  }

  @Test
  void theNextInventoryIsOneWithoutTheSheetsOfTheReport() throws IOException {
    SeasonReport report = inventory();
    Problems problems = new Problems();
    List<String> names =
        InventoryWorkbook.read(
                new ByteArrayInputStream(write(report)),
                "next-inventory.xlsx",
                SpeciesCatalogue.builtIn(),
                problems)
            .orElseThrow(() -> new AssertionError(problems.sorted().toString()))
            .sheets()
            .stream()
            .map(SheetTable::name)
            .toList();
    assertEquals(report.carried().stream().map(SheetTable::name).toList(), names);
    assertTrue(names.containsAll(List.of("Set aside", "History", "Notes")), names.toString());
  }
}
