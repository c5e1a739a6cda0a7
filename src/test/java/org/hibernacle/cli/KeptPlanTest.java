package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Season;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.Words;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a new plan does not carry on is kept in a file that no later run writes over. */
class KeptPlanTest {
  private static final Season SEASON = Fixtures.plan().season();

  @TempDir Path folder;

  private Path plan() {
    return folder.resolve(PlanCommand.WORKBOOK);
  }

  private static byte[] written() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(
        ReportAuthor.write(Fixtures.plan(), Fixtures.facts(), Words.of(Locale.UK)), out);
    return out.toByteArray();
  }

  private static byte[] withOwnSheet(byte[] bytes, String text) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      book.createSheet("My own").createRow(0).createCell(0).setCellValue(text);
      book.write(out);
    }
    return out.toByteArray();
  }

  private Optional<OutputFile> kept(Problems problems) throws IOException {
    EarlierPlans earlier = EarlierPlans.read(plan(), folder.resolve("none.xlsx"), new Problems());
    return KeptPlan.of(new OutputFolder(folder, List.of()), earlier, SEASON, false, problems);
  }

  private void keep() throws IOException {
    PrintWriter err = new PrintWriter(new StringWriter());
    new OutputFolder(folder, List.of()).write(kept(new Problems()).stream().toList(), err);
  }

  @Test
  void nothingIsKeptWhereNothingIsLost() throws IOException {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), kept(problems));
    Files.write(plan(), written());
    assertEquals(Optional.empty(), kept(problems));
    assertEquals(List.of(), problems.sorted());
  }

  @Test
  void eachEditedPlanIsKeptOnceUnderANameOfItsOwn() throws IOException {
    byte[] plain = written();
    byte[] first = withOwnSheet(plain, "one");
    Files.write(plan(), first);
    Problems problems = new Problems();
    assertEquals("season-plan-kept-1.xlsx", kept(problems).orElseThrow().name());
    assertEquals("IN-470", problems.sorted().get(0).code());
    keep();
    assertEquals(Optional.empty(), kept(new Problems()));
    byte[] second = withOwnSheet(plain, "two");
    Files.write(plan(), second);
    keep();
    assertArrayEquals(first, Files.readAllBytes(folder.resolve("season-plan-kept-1.xlsx")));
    assertArrayEquals(second, Files.readAllBytes(folder.resolve("season-plan-kept-2.xlsx")));
  }

  @Test
  void aDryRunSaysWhatWouldBeKept() throws IOException {
    Files.write(plan(), withOwnSheet(written(), "one"));
    EarlierPlans earlier = EarlierPlans.read(plan(), folder.resolve("none.xlsx"), new Problems());
    Problems problems = new Problems();
    KeptPlan.of(new OutputFolder(folder, List.of()), earlier, SEASON, true, problems);
    String told = problems.sorted().get(0).toString();
    assertTrue(told.contains("would be kept as season-plan-kept-1.xlsx"), told);
  }

  @Test
  void aPlanWithoutASealIsKeptSinceItCanNotBeTold() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written()))) {
      book.removeSheetAt(book.getSheetIndex("Record"));
      book.write(out);
    }
    Files.write(plan(), out.toByteArray());
    Problems problems = new Problems();
    assertEquals("season-plan-kept-1.xlsx", kept(problems).orElseThrow().name());
    assertEquals("IN-470.unsealed", problems.sorted().get(0).key());
  }

  @Test
  void ticksOfAnotherWinterAreKept() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written()))) {
      book.getSheet("Tasks").getRow(1).getCell(6).setCellValue("x");
      book.write(out);
    }
    Files.write(plan(), out.toByteArray());
    assertEquals(Optional.empty(), kept(new Problems()));
    EarlierPlans earlier = EarlierPlans.read(plan(), folder.resolve("none.xlsx"), new Problems());
    Season next = new Season(SEASON.year() + 1, false);
    OutputFolder output = new OutputFolder(folder, List.of());
    assertEquals(
        "season-plan-kept-1.xlsx",
        KeptPlan.of(output, earlier, next, false, new Problems()).orElseThrow().name());
  }

  /** Its record tells the season, whatever a mistyped day says, and what its Ids stood for. */
  @Test
  void theRecordTellsSeasonAndPlants() throws IOException {
    String id = Fixtures.plan().plants().get(0).plant().id();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written()))) {
      for (Row row : book.getSheet("Log")) {
        if (row.getCell(0).getStringCellValue().equals(id)) {
          row.getCell(7).setCellValue(LocalDate.of(1999, 11, 15));
        }
      }
      for (Row row : book.getSheet("Record")) {
        if (row.getCell(0).getStringCellValue().equals("plant")
            && row.getCell(1).getStringCellValue().equals(id)) {
          row.getCell(2).setCellValue("Old Tom");
          row.getCell(3).setCellValue("Malus domestica");
        }
      }
      book.write(out);
    }
    Files.write(plan(), out.toByteArray());
    EarlierPlans earlier = EarlierPlans.read(plan(), folder.resolve("none.xlsx"), new Problems());
    assertFalse(earlier.wouldLoseALog(SEASON));
    assertTrue(earlier.wouldLoseALog(new Season(SEASON.year() + 1, false)));
    Problems problems = new Problems();
    earlier.tellOtherPlants(Fixtures.plan(), problems);
    assertEquals(1, problems.sorted().size());
    assertTrue(problems.sorted().get(0).found().startsWith(id + " was Old Tom (Malus domestica)"));
  }
}
