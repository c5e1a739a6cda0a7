package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.EarlierPlan;
import org.hibernacle.input.FilledLog;
import org.hibernacle.input.Problems;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.model.Tick;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Task;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan says the same to the program in whatever language it says it to the keeper. */
class PlanInAnotherLanguageTest {
  private static final SeasonPlan PLAN = plan();
  private static final String ID = PLAN.plants().get(1).plant().id();
  private static final LocalDate CARRIED = LocalDate.of(2026, 11, 15);
  private static final LocalDate NOTICED = LocalDate.of(2027, 4, 2);

  private static byte[] inEnglish = {};
  private static byte[] inOther = {};

  @TempDir Path folder;

  @BeforeAll
  static void writeTheBundle() throws IOException {
    SecondLanguageTest.writeTheBundles();
    inEnglish = filledIn(english(), book -> {});
    inOther = filledIn(other(), book -> {});
  }

  /** With nights in and out, which a review reads. */
  private static SeasonPlan plan() {
    SeasonPlan plan = Fixtures.plan();
    List<Task> tasks = new ArrayList<>(plan.tasks());
    tasks.add(
        new Task(
            Task.Kind.IN_AND_OUT,
            LocalDate.of(2027, 3, 20),
            LocalDate.of(2027, 4, 10),
            Fixtures.SHED.name(),
            List.of(plan.plants().get(0).plant().id(), plan.plants().get(2).plant().id()),
            OptionalDouble.of(5)));
    return Fixtures.withTasks(plan, tasks);
  }

  @AfterAll
  static void takeTheBundleAway() throws IOException {
    SecondLanguageTest.takeTheBundlesAway();
  }

  private static Words english() {
    return Words.of(Locale.UK);
  }

  private static Words other() {
    return Words.of(SecondLanguageTest.LANGUAGE);
  }

  private static RunFacts after(Optional<EarlierPlan> earlier) {
    RunFacts facts = Fixtures.facts();
    return new RunFacts(
        facts.programVersion(),
        facts.inputs(),
        List.of(),
        facts.options(),
        List.of(),
        earlier.map(EarlierPlan::log),
        earlier.map(EarlierPlan::asPlanned));
  }

  private static SeasonReport report(Words words, Optional<EarlierPlan> earlier) {
    return ReportAuthor.write(PLAN, after(earlier), words);
  }

  private static int column(Section section, String id) {
    return section.columns().stream().map(Section.Column::id).toList().indexOf(id);
  }

  private static XSSFSheet sheet(XSSFWorkbook book, String table) {
    String cells = book.getName(table).getRefersToFormula();
    return book.getSheet(
        new AreaReference(cells, book.getSpreadsheetVersion()).getFirstCell().getSheetName());
  }

  /** A plan in whose log and lists the keeper wrote, in the words that it offers. */
  static byte[] filledIn(Words words, Consumer<XSSFWorkbook> edit) throws IOException {
    SeasonReport report = report(words, Optional.empty());
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    WorkbookWriter.write(report, written);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written.toByteArray()))) {
      Section log = report.section("log");
      XSSFSheet sheet = sheet(book, "table_log");
      int own = log.columns().size();
      sheet.getRow(0).createCell(own).setCellValue("Shelf");
      for (Row row : sheet) {
        if (row.getCell(0).getStringCellValue().equals(ID)) {
          row.getCell(column(log, "real-move-in")).setCellValue(CARRIED);
          row.getCell(column(log, "noticed")).setCellValue(NOTICED);
          row.getCell(column(log, "if-blank"))
              .setCellValue(words.of("if-blank", IfBlank.NOT_MOVED));
          row.getCell(column(log, "outcome")).setCellValue(words.of("outcome", Outcome.BRANCHES));
          row.getCell(column(log, "stood-in")).setCellValue(Fixtures.SHED.name());
          row.getCell(column(log, "remark")).setCellValue("sad");
          row.createCell(own).setCellValue(4);
        }
      }
      String tick = words.text("workbook.tick");
      int done = column(report.section("moving-days"), "done");
      sheet(book, "table_moving_days").getRow(1).getCell(done).setCellValue(tick);
      done = column(report.section("tasks"), "done");
      sheet(book, "table_tasks").getRow(2).getCell(done).setCellValue("x by Ann");
      edit.accept(book);
      book.write(out);
    }
    return out.toByteArray();
  }

  private EarlierPlan earlier(byte[] bytes) throws IOException {
    Path file = folder.resolve("season-plan.xlsx");
    Files.write(file, bytes);
    Problems problems = new Problems();
    EarlierPlan plan = EarlierPlan.read(file, problems).orElseThrow();
    assertEquals(List.of(), problems.sorted());
    return plan;
  }

  private static SeasonLog log(byte[] bytes) throws IOException {
    Problems problems = new Problems();
    Optional<SeasonLog> log =
        FilledLog.read(
            new ByteArrayInputStream(bytes), "season-plan.xlsx", PLAN.inventory(), "", problems);
    assertEquals(List.of(), problems.sorted());
    return log.orElseThrow();
  }

  /** A tick without the words of its language. */
  private static List<Tick> wordless(EarlierPlan plan) {
    return plan.ticks().stream()
        .map(
            t ->
                new Tick(
                    Phrase.verbatim(""),
                    t.mark(),
                    t.moving(),
                    t.kind(),
                    "",
                    t.from(),
                    t.to(),
                    t.place(),
                    t.plantIds()))
        .toList();
  }

  /** The log without what follows by formulas, which an office program works out anew. */
  private static List<List<Object>> entered(EarlierPlan plan) {
    List<String> ids = plan.log().ids();
    return plan.log().table().rows().stream()
        .map(
            row ->
                IntStream.range(0, ids.size())
                    .filter(i -> !ids.get(i).startsWith("days-"))
                    .mapToObj(row::get)
                    .toList())
        .toList();
  }

  private static void assertSame(EarlierPlan expected, EarlierPlan found) {
    assertEquals(expected.moves(), found.moves());
    assertEquals(expected.log().ids(), found.log().ids());
    assertEquals(entered(expected), entered(found));
    assertEquals(wordless(expected), wordless(found));
    assertEquals(2, found.ticks().size());
    assertTrue(found.ticks().stream().noneMatch(t -> t.kind().isEmpty()));
    assertEquals(
        expected.published().orElseThrow().events().size(),
        found.published().orElseThrow().events().size());
  }

  @Test
  void aReviewReadsTheSame() throws IOException {
    SeasonLog expected = log(inEnglish);
    assertEquals(expected, log(inOther));
    LogEntry entry =
        expected.entries().stream().filter(e -> e.id().equals(ID)).findFirst().orElseThrow();
    assertEquals(Optional.of(Outcome.BRANCHES), entry.outcome());
    assertEquals(Optional.of(IfBlank.NOT_MOVED), entry.ifBlank());
    assertEquals(Optional.of(NOTICED), entry.noticed());
    assertEquals(2, expected.inAndOut().size());
    assertEquals(PLAN.winters().size(), expected.winters().size());
  }

  /** The next plan, whatever its own language, has log and ticks in its own words. */
  @Test
  void aPlanMadeOverItIsTheSame() throws IOException {
    EarlierPlan first = earlier(inEnglish);
    EarlierPlan second = earlier(inOther);
    assertSame(first, second);
    for (Words words : List.of(english(), other())) {
      SeasonReport expected = report(words, Optional.of(first));
      SeasonReport next = report(words, Optional.of(second));
      for (String id : List.of("log", "moving-days", "tasks")) {
        assertEquals(expected.section(id), next.section(id));
      }
      assertEquals(
          new org.hibernacle.report.Cell.Text(words.of("outcome", Outcome.BRANCHES)),
          next.section("log").rows().stream()
              .filter(row -> row.about().contains(ID))
              .findFirst()
              .orElseThrow()
              .cells()
              .get(column(next.section("log"), "outcome")));
      int done = column(next.section("tasks"), "done");
      assertEquals(
          new org.hibernacle.report.Cell.Text("x by Ann"),
          next.section("tasks").rows().get(1).cells().get(done));
      done = column(next.section("moving-days"), "done");
      assertEquals(
          new org.hibernacle.report.Cell.Text(words.text("workbook.tick")),
          next.section("moving-days").rows().get(0).cells().get(done));
    }
  }

  /** Whatever becomes of the day in the log, the program's own word is never the keeper's tick. */
  @Test
  void whatTheLogHasIsNoTick() throws IOException {
    for (Words words : List.of(english(), other())) {
      int done = column(report(words, Optional.empty()).section("moving-days"), "done");
      byte[] bytes =
          filledIn(
              words,
              book ->
                  sheet(book, "table_moving_days")
                      .getRow(2)
                      .getCell(done)
                      .setCellValue(words.text("move.made")));
      assertEquals(wordless(earlier(inEnglish)), wordless(earlier(bytes)));
    }
  }

  private static void rename(XSSFWorkbook book, String table, String name) {
    book.setSheetName(book.getSheetIndex(sheet(book, table)), name);
  }

  /** The first data row goes to the end, and a column of the keeper's own before all others. */
  private static void turnRound(XSSFSheet sheet) {
    sheet.shiftColumns(0, sheet.getRow(0).getLastCellNum() - 1, 1);
    sheet.getRow(0).createCell(0).setCellValue("!");
    XSSFRow last = sheet.createRow(sheet.getLastRowNum() + 1);
    last.copyRowFrom(sheet.getRow(1), new org.apache.poi.ss.usermodel.CellCopyPolicy());
    sheet.removeRow(sheet.getRow(1));
  }

  @Test
  void movedAndRenamedSheetsColumnsAndRowsAreFound() throws IOException {
    Consumer<XSSFWorkbook> edit =
        book -> {
          for (String table : List.of("table_log", "table_moving_days", "table_tasks")) {
            turnRound(sheet(book, table));
            rename(book, table, "My " + table);
          }
        };
    byte[] edited = filledIn(other(), edit);
    EarlierPlan found = earlier(edited);
    EarlierPlan expected = earlier(inEnglish);
    assertEquals(Set.copyOf(expected.moves()), Set.copyOf(found.moves()));
    assertEquals(Set.copyOf(wordless(expected)), Set.copyOf(wordless(found)));
    assertEquals(log(inEnglish).entries(), log(edited).entries());
    Section log = report(english(), Optional.of(expected)).section("log");
    assertEquals(
        log.rows().size(), report(english(), Optional.of(found)).section("log").rows().size());
  }

  /**
   * The filled-in plan in the made-up language, opened and saved by an office program; no bundle is
   * wanted to read it.
   */
  @Test
  void anOfficeProgramKeepsIt() throws IOException {
    byte[] saved = Files.readAllBytes(Path.of("src/test/resources/plans/saved-elsewhere.xlsx"));
    EarlierPlan plan = earlier(saved);
    assertSame(earlier(inEnglish), plan);
    assertEquals(log(inEnglish), log(saved));
  }

  @Test
  void withoutItsRecordAPlanIsReadByItsEnglishWords() throws IOException {
    Consumer<XSSFWorkbook> forget =
        book -> book.removeSheetAt(book.getSheetIndex(book.getSheet("Record")));
    byte[] bytes = filledIn(english(), forget);
    EarlierPlan plan = earlier(bytes);
    assertEquals(earlier(inEnglish).moves(), plan.moves());
    assertEquals(earlier(inEnglish).log(), plan.log());
  }
}
