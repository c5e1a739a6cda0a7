package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DateFormatSymbols;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Phrasebook;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.ics.CalendarFile;
import org.hibernacle.report.pdf.CalendarPdf;
import org.hibernacle.report.pdf.HandOutPdf;
import org.hibernacle.report.pdf.LabelSheetPdf;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.hibernacle.review.SeasonReview;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A second language needs bundles and no code. In {@link OtherLanguage} no word has a Latin letter,
 * so every Latin word that the files still show stands in the code, unless it is the keeper's, a
 * unit, or the platform's.
 */
class SecondLanguageTest {
  static final Locale LANGUAGE = OtherLanguage.TAG;

  private static final List<String> BUNDLES =
      List.of("org/hibernacle/report/words", "org/hibernacle/model/messages");

  private static final List<Charset> CHARSETS =
      List.of(
          StandardCharsets.UTF_8,
          StandardCharsets.ISO_8859_1,
          StandardCharsets.UTF_16LE,
          StandardCharsets.UTF_16BE);

  @BeforeAll
  static void writeTheBundles() throws IOException {
    for (String bundle : BUNDLES) {
      OtherLanguage.write(bundle);
    }
  }

  @AfterAll
  static void takeTheBundlesAway() throws IOException {
    for (String bundle : BUNDLES) {
      OtherLanguage.remove(bundle);
    }
  }

  /** Files and options keep their names; of remarks and options there are none here. */
  private static RunFacts facts() {
    return new RunFacts(
        "0.1.0", List.of(), Fixtures.facts().diagnostics(), List.of(), List.of(), Optional.empty());
  }

  private static final SeasonPlan PLAN =
      Fixtures.plan(Fixtures.settings(Settings.Units.METRIC, LANGUAGE));

  private static SeasonReport report() {
    return ReportAuthor.write(PLAN, facts(), Words.of(LANGUAGE));
  }

  @Test
  void theWorkbookShowsNoEnglishWord() throws IOException {
    check(workbook(report()), 200);
  }

  @Test
  void theReviewShowsNoEnglishWord() throws IOException {
    SeasonReview review = ReviewFixtures.review(PLAN.inventory().settings());
    StringBuilder own = new StringBuilder("sp. pale leaves ");
    review.doseResponses().forEach(dose -> own.append(dose.taxon()).append(' '));
    SeasonReport report = ReviewAuthor.write(review, facts(), Words.of(LANGUAGE));
    check(workbook(report), own.toString());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertEquals(List.of(), CalendarPdf.write(report, Palette.standard(), out).missing());
    check(paper(out), own.toString());
  }

  @Test
  void theHandOutShowsNoEnglishWord() throws IOException {
    DateSpan days = new DateSpan(LocalDate.of(2026, 12, 20), LocalDate.of(2027, 1, 10));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    HandOutPdf.write(
        HandOutAuthor.editions(PLAN, facts(), Words.of(LANGUAGE), days),
        Palette.standard(),
        Optional.empty(),
        out);
    check(paper(out), 20);
  }

  /** What can be said of temperature files, over all those of the tests. */
  @Test
  void messagesOfTemperatureFilesShowNoEnglishWord() throws IOException {
    Phrasebook other = Words.of(LANGUAGE).messages();
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of("src", "test", "resources", "csv"))) {
      files = all.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
    Set<String> codes = new TreeSet<>();
    for (Path file : files) {
      Problems problems = new Problems();
      TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems);
      byte[] bytes = Files.readAllBytes(file);
      // Options of the command line.
      String own = file + " tenths day-number ";
      for (Charset charset : CHARSETS) {
        own += " " + new String(bytes, charset);
      }
      String known = own + " " + String.join(" ", TemperatureCsv.layoutNames());
      for (Diagnostic message : problems.sorted()) {
        codes.add(message.code());
        check(said(message, other), known);
      }
    }
    assertTrue(codes.size() > 30, codes::toString);
  }

  /** What is said of the demo, whose columns and words are those that the program knows. */
  @Test
  void messagesOfTheInventoryShowNoEnglishWord() throws IOException {
    Path file = Path.of("demo-data", "inventory.xlsx");
    Problems problems = new Problems();
    Inventory demo =
        InventoryWorkbook.read(file, SpeciesCatalogue.builtIn(), problems).orElseThrow();
    assertTrue(problems.sorted().size() > 10);
    Phrasebook other = Words.of(LANGUAGE).messages();
    StringBuilder own = new StringBuilder(Files.readString(Path.of("docs", "inventory.md")));
    demo.sheets().forEach(sheet -> own.append(sheet.headings()).append(sheet.rows()));
    SpeciesCatalogue.builtIn().species().forEach(s -> own.append(s.taxon()).append(' '));
    for (Diagnostic message : problems.sorted()) {
      check(said(message, other), own + " AA " + file);
    }
  }

  private static List<String> said(Diagnostic message, Phrasebook words) {
    return List.of(
        words.where(message),
        words.found(message),
        words.expected(message),
        words.consequence(message));
  }

  private static List<String> workbook(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(report, out);
    List<String> texts = new ArrayList<>();
    Set<String> own = new TreeSet<>();
    PLAN.inventory().sheets().forEach(s -> own.add(s.name()));
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        XSSFSheet sheet = book.getSheetAt(i);
        boolean forPrograms = book.isSheetVeryHidden(i);
        if (own.contains(sheet.getSheetName()) || forPrograms) {
          continue;
        }
        texts.add(sheet.getSheetName());
        texts.add(sheet.getFooter().getLeft() + " " + sheet.getFooter().getRight());
        sheet.getCellComments().values().forEach(c -> texts.add(c.getString().getString()));
        sheet
            .getDataValidations()
            .forEach(v -> texts.add(v.getErrorBoxTitle() + " " + v.getErrorBoxText()));
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING) {
              texts.add(cell.getStringCellValue());
            }
          }
        }
      }
    }
    return texts;
  }

  @Test
  void theCalendarOnPaperShowsNoEnglishWord() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertEquals(List.of(), CalendarPdf.write(report(), Palette.standard(), out).missing());
    check(paper(out), 200);
  }

  @Test
  void theLabelsShowNoEnglishWord() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LabelSheet sheet = LabelAuthor.write(PLAN, facts(), Words.of(LANGUAGE));
    LabelSheetPdf.write(report(), sheet, Palette.standard(), Optional.empty(), out);
    check(paper(out), 50);
  }

  @Test
  void theCalendarFileShowsNoEnglishWord() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarFile.write(AgendaAuthor.write(PLAN, facts(), Words.of(LANGUAGE)), out);
    String text = out.toString(StandardCharsets.UTF_8).replace("\r\n ", "");
    List<String> shown =
        text.lines()
            .filter(l -> l.matches("(SUMMARY|DESCRIPTION|NAME)[;:].*"))
            .map(l -> l.substring(l.indexOf("is-IS:") + 6).replace("\\n", " "))
            .toList();
    check(shown, 50);
  }

  private static List<String> paper(ByteArrayOutputStream file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file.toByteArray())) {
      return new PDFTextStripper().getText(document).lines().toList();
    }
  }

  @Test
  void theCheckSeesWhatItForbids() {
    assertThrows(AssertionError.class, () -> check(List.of("Move 3 pots"), 0));
    assertThrows(AssertionError.class, () -> check(List.of("Шед"), 2));
    check(List.of("Шед: kg Hibernacle"), 1);
  }

  /** Nothing but the keeper's words, names of species, units and the platform's days. */
  private static void check(List<String> texts, int leastCyrillic) {
    check(texts, String.join(" ", known()));
    long told = texts.stream().filter(t -> t.matches("(?s).*\\p{IsCyrillic}{3}.*")).count();
    assertTrue(told >= leastCyrillic, () -> told + " texts of the bundle");
  }

  private static void check(List<String> texts, String own) {
    Set<String> known = words(own);
    known.addAll(known());
    Set<String> english = new TreeSet<>();
    texts.forEach(text -> english.addAll(words(text)));
    english.removeAll(known);
    english.removeIf(word -> word.matches("[yMdHms]+")); // ways of writing dates
    assertEquals(Set.of(), english);
  }

  private static Set<String> words(String text) {
    Set<String> words = new TreeSet<>();
    Pattern.compile("\\p{IsLatin}{2,}").matcher(text).results().forEach(r -> words.add(r.group()));
    return words;
  }

  private static Set<String> known() {
    StringBuilder text =
        new StringBuilder(
            "Hibernacle kg cm mm GiB UTF LE BE ISO Windows windows Shift_JIS IN PL RV ");
    PLAN.plants()
        .forEach(
            p -> {
              var plant = p.plant();
              text.append(plant.name()).append(' ').append(plant.id()).append(' ');
              text.append(plant.species().taxon()).append(' ');
              text.append(plant.species().sources()).append(plant.rootSpecies().sources());
              text.append(' ').append(plant.home()).append(' ').append(plant.speciesAsWritten());
              text.append(' ').append(plant.cultivar()).append(' ');
            });
    PLAN.inventory().places().forEach(p -> text.append(p.name()).append(' '));
    PLAN.inventory().sheets().forEach(s -> text.append(s.name()).append(' '));
    text.append("inventory.xlsx Plants Places Volume Sun part ground ");
    text.append(PLAN.inventory().settings().site()).append(' ');
    text.append(report().digest()).append(' ');
    DateFormatSymbols days = DateFormatSymbols.getInstance(LANGUAGE);
    for (String[] names :
        List.of(
            days.getMonths(), days.getShortMonths(), days.getWeekdays(), days.getShortWeekdays())) {
      text.append(String.join(" ", names)).append(' ');
    }
    return words(text.toString());
  }
}
