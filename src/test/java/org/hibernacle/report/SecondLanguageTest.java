package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DateFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.ics.CalendarFile;
import org.hibernacle.report.pdf.CalendarPdf;
import org.hibernacle.report.pdf.LabelSheetPdf;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A second language needs a bundle and no code. The bundle is made from the English one: each Latin
 * letter outside of the patterns' own syntax becomes a Cyrillic one, so every Latin word that the
 * files still show stands in the code, unless it is the keeper's, a unit, or the platform's.
 */
class SecondLanguageTest {
  /**
   * Icelandic: no other test speaks it, and its dates and decimal comma are not those of English.
   */
  static final Locale LANGUAGE = Locale.forLanguageTag("is-IS");

  private static final String CYRILLIC = "абвгдежзийклмнопрстуфхцчшщ";

  /** Syntax of a pattern: arguments, and the beginning of each of their choices. */
  private static final Pattern SYNTAX =
      Pattern.compile("\\{\\d+(,choice,)?|\\\\u[0-9a-f]{4}|[|]?\\d+[#<]");

  private static Path bundle = Path.of("");

  @BeforeAll
  static void writeTheBundle() throws IOException {
    Properties english = new Properties();
    try (InputStream in = Words.class.getResourceAsStream("words.properties")) {
      english.load(new java.io.InputStreamReader(in, StandardCharsets.UTF_8));
    }
    Properties other = new Properties();
    for (String key : english.stringPropertyNames()) {
      String text = english.getProperty(key);
      other.setProperty(key, key.startsWith("date.") ? text : translated(text));
    }
    bundle = Path.of("target/test-classes/org/hibernacle/report/words_is.properties");
    try (Writer out = Files.newBufferedWriter(bundle, StandardCharsets.UTF_8)) {
      other.store(out, null);
    }
    ResourceBundle.clearCache();
  }

  @AfterAll
  static void takeTheBundleAway() throws IOException {
    Files.deleteIfExists(bundle);
    ResourceBundle.clearCache();
  }

  private static String translated(String pattern) {
    StringBuilder out = new StringBuilder();
    Matcher syntax = SYNTAX.matcher(pattern);
    int from = 0;
    while (syntax.find()) {
      out.append(cyrillic(pattern.substring(from, syntax.start()))).append(syntax.group());
      from = syntax.end();
    }
    return out.append(cyrillic(pattern.substring(from))).toString();
  }

  private static String cyrillic(String text) {
    StringBuilder out = new StringBuilder();
    for (char c : text.toCharArray()) {
      boolean small = c >= 'a' && c <= 'z';
      boolean capital = c >= 'A' && c <= 'Z';
      char letter = small || capital ? CYRILLIC.charAt(Character.toLowerCase(c) - 'a') : c;
      out.append(capital ? Character.toUpperCase(letter) : letter);
    }
    return out.toString();
  }

  private static SeasonPlan plan() {
    SeasonPlan plan = Fixtures.plan(Fixtures.settings(Settings.Units.METRIC, LANGUAGE));
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plan.plants(),
        plan.places(),
        plan.tasks(),
        plan.traces(),
        List.of());
  }

  /** Problems of the input keep their English, as on the screen and on their page of the manual. */
  private static RunFacts facts() {
    return new RunFacts("0.1.0", List.of(), List.of(), List.of(), List.of(), Optional.empty());
  }

  private static final SeasonPlan PLAN = plan();

  private static SeasonReport report() {
    return ReportAuthor.write(PLAN, facts(), Words.of(LANGUAGE));
  }

  @Test
  void theWorkbookShowsNoEnglishWord() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(report(), out);
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
    check(texts, 200);
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
    Set<String> known = known();
    Pattern latin = Pattern.compile("\\p{IsLatin}{2,}");
    Set<String> english = new TreeSet<>();
    for (String text : texts) {
      latin
          .matcher(text)
          .results()
          .map(r -> r.group())
          .filter(w -> !known.contains(w))
          .forEach(english::add);
    }
    assertEquals(Set.of(), english);
    long told = texts.stream().filter(t -> t.matches("(?s).*\\p{IsCyrillic}{3}.*")).count();
    assertTrue(told >= leastCyrillic, () -> told + " texts of the bundle");
  }

  private static Set<String> known() {
    StringBuilder text = new StringBuilder("Hibernacle kg cm mm ");
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
    text.append(PLAN.inventory().settings().site()).append(' ');
    text.append(report().digest()).append(' ');
    DateFormatSymbols days = DateFormatSymbols.getInstance(LANGUAGE);
    for (String[] names :
        List.of(
            days.getMonths(), days.getShortMonths(), days.getWeekdays(), days.getShortWeekdays())) {
      text.append(String.join(" ", names)).append(' ');
    }
    Set<String> words = new TreeSet<>();
    Pattern.compile("\\p{IsLatin}{2,}").matcher(text).results().forEach(r -> words.add(r.group()));
    return words;
  }
}
