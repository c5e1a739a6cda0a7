package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hibernacle.model.LabelGrid;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.LabelAuthor;
import org.hibernacle.report.LabelSheet;
import org.hibernacle.report.LabelSheet.Grid;
import org.hibernacle.report.LabelSheet.Label;
import org.hibernacle.report.Palette;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Labels as they lie on paper, read back with another library. */
class LabelSheetPdfTest {
  /** ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: Letter is 8.5 x 11 in. A point is 1/72 in. */
  private static double heightPt(Settings.Paper paper) {
    return paper == Settings.Paper.A4 ? 297 / 25.4 * 72 : 11 * 72;
  }

  private static SeasonPlan plan(Settings.Units units) {
    return Fixtures.plan(
        Fixtures.settings(units, units == Settings.Units.US ? Locale.US : Locale.UK));
  }

  private static SeasonReport report(SeasonPlan plan) {
    return ReportAuthor.write(plan, Fixtures.facts(), words(plan));
  }

  private static Words words(SeasonPlan plan) {
    return Words.of(plan.inventory().settings().language());
  }

  private static LabelSheet sheet(SeasonPlan plan) {
    return LabelAuthor.write(plan, Fixtures.facts(), words(plan));
  }

  private static byte[] bytes(SeasonReport report, LabelSheet sheet) throws IOException {
    assertEquals(Optional.empty(), check(report, sheet));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LabelSheetPdf.write(report, sheet, Palette.standard(), Optional.empty(), out);
    return out.toByteArray();
  }

  /** The cell of a label, by the keeper's ruler: from the upper left corner of the paper. */
  private static Rectangle2D cell(Grid grid, int label, double paperPt) {
    double mm = 72 / 25.4;
    int place = label % (grid.rows() * grid.columns());
    double left = grid.leftMm() + place % grid.columns() * (grid.widthMm() + grid.acrossMm());
    double top =
        grid.topMm() + Math.floorDiv(place, grid.columns()) * (grid.heightMm() + grid.downMm());
    double low = paperPt - (top + grid.heightMm()) * mm;
    return new Rectangle2D.Double(left * mm, low, grid.widthMm() * mm, grid.heightMm() * mm);
  }

  /** What stands in the cell of each label, every letter of the page being in one. */
  private static List<String> read(LabelSheet sheet, Settings.Paper paper, byte[] file)
      throws IOException {
    int perPage = sheet.grid().perSheet();
    List<StringBuilder> texts = sheet.labels().stream().map(l -> new StringBuilder()).toList();
    try (PdfProbe pdf = PdfProbe.of(file)) {
      assertEquals((sheet.labels().size() + perPage - 1) / perPage, pdf.pages());
      for (int page = 1; page <= pdf.pages(); page++) {
        for (PdfProbe.Letter letter : pdf.letters(page)) {
          assertTrue(letter.sizePt() >= 9, letter::toString);
          int first = (page - 1) * perPage;
          int at =
              IntStream.range(first, Math.min(first + perPage, texts.size()))
                  .filter(i -> cell(sheet.grid(), i, heightPt(paper)).contains(letter.box()))
                  .findFirst()
                  .orElseThrow(() -> new AssertionError("outside of every label: " + letter));
          texts.get(at).append(letter.text());
        }
      }
    }
    return texts.stream().map(t -> joined(t.toString())).toList();
  }

  private static String squeezed(Label label) {
    return squeezed(label, label.name());
  }

  private static String squeezed(Label label, String name) {
    return joined(
        Stream.concat(
                Stream.of(label.id(), name, label.place()),
                Stream.concat(label.dates().stream(), Stream.of(label.night())))
            .reduce("", String::concat));
  }

  /** Without blanks of any kind. */
  private static String joined(String text) {
    return PdfProbe.squeezed(text).replace("\u00a0", "");
  }

  @ParameterizedTest
  @EnumSource(Settings.Units.class)
  void everyWordStandsInItsLabelOnBothPapers(Settings.Units units) throws IOException {
    SeasonPlan plan = plan(units);
    Settings.Paper paper = plan.inventory().settings().paper();
    LabelSheet sheet = sheet(plan);
    List<String> read = read(sheet, paper, bytes(report(plan), sheet));
    assertEquals(sheet.labels().stream().map(LabelSheetPdfTest::squeezed).toList(), read);
    String all = String.join("", read);
    assertEquals(units == Settings.Units.US, all.contains("(°F)"), all);
  }

  /** One a pot, with the dates that the season plan has. */
  @Test
  void everyPotHasItsLabel() {
    SeasonPlan plan = plan(Settings.Units.METRIC);
    int pots = plan.plants().stream().mapToInt(p -> p.plant().count()).sum();
    List<Label> labels = sheet(plan).labels();
    assertEquals(pots, labels.size());
    assertEquals(pots, labels.stream().map(Label::id).distinct().count());
    assertTrue(labels.stream().anyMatch(l -> !l.night().isEmpty()));
    long dates = plan.plants().stream().mapToLong(p -> p.moves().size() * p.plant().count()).sum();
    assertEquals(
        dates,
        labels.stream()
            .flatMap(l -> l.dates().stream())
            .filter(date -> date.matches(".*\\d.*"))
            .count());
  }

  private static LabelSheet sheet(int rows, int columns, Settings.Paper paper, Label... labels) {
    LabelGrid g = new LabelGrid(rows, columns, 1.3, 0.9, 0.7, 0.8, 0.2, 0.3);
    return new LabelSheet(
        "Pot labels",
        new Grid(
            rows,
            columns,
            10 * g.topCm(),
            10 * g.leftCm(),
            10 * g.labelWidthCm(paper),
            10 * g.labelHeightCm(paper),
            10 * g.downCm(),
            10 * g.acrossCm()),
        List.of(labels));
  }

  private static Label named(String name) {
    return new Label(
        "K-207",
        name,
        "winter: Shed",
        List.of("move-down Sat 7 Nov", "return-to-bench Sat 20 Mar"),
        "act below (°F) 14 until 30 Nov");
  }

  private static final String LONG_NAME =
      "Acer palmatum var. dissectum 'Weeping curtain of the lower garden' grafted upon a very old"
          + " stock from the nursery behind the mill, repotted twice";

  @Test
  void aNameIsShortenedAtAWordOnlyWhereTwoLinesDoNotHoldIt() throws IOException {
    SeasonReport report = report(plan(Settings.Units.METRIC));
    Label two = named("Acer palmatum 'Weeping curtain'");
    LabelSheet sheet = sheet(7, 4, Settings.Paper.A4, two, named(LONG_NAME));
    List<String> read = read(sheet, Settings.Paper.A4, bytes(report, sheet));
    assertEquals(squeezed(two), read.get(0));
    int cut = read.get(1).indexOf('\u2026');
    assertTrue(cut > 0, read.get(1));
    String kept = read.get(1).substring(PdfProbe.squeezed("K-207").length(), cut);
    List<String> beginnings = new ArrayList<>();
    String[] words = LONG_NAME.split(" ");
    for (int n = 1; n < words.length; n++) {
      beginnings.add(String.join("", List.of(words).subList(0, n)));
    }
    assertTrue(beginnings.contains(kept), kept);
    assertEquals(squeezed(named(LONG_NAME), kept + "\u2026"), read.get(1));
  }

  /** The long name alone is small, and told; without it the sheet is the same for the others. */
  @Test
  void oneLongNameDoesNotMakeTheOthersSmall() throws IOException {
    SeasonReport report = report(plan(Settings.Units.METRIC));
    Label one = named("Larch");
    Label two = named("Zelkova");
    LabelSheet without = sheet(6, 3, Settings.Paper.A4, one, two);
    LabelSheet with = sheet(6, 3, Settings.Paper.A4, one, two, longNamed());
    List<Double> larger = sizes(without, bytes(report, without));
    List<Double> sizes = sizes(with, bytes(report, with));
    assertTrue(larger.get(0) > 9, larger::toString);
    assertEquals(larger, sizes.subList(0, 2));
    assertEquals(9, sizes.get(2));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    LabelSheetPdf.Result result =
        LabelSheetPdf.write(report, with, Palette.standard(), Optional.empty(), out);
    assertEquals(List.of("K-208"), result.shortened());
  }

  private static Label longNamed() {
    Label l = named(LONG_NAME);
    return new Label("K-208", l.name(), l.place(), l.dates(), l.night());
  }

  /** The smallest letters on each label, in points. */
  private static List<Double> sizes(LabelSheet sheet, byte[] file) throws IOException {
    List<Double> sizes = new ArrayList<>();
    try (PdfProbe pdf = PdfProbe.of(file)) {
      for (int i = 0; i < sheet.labels().size(); i++) {
        Rectangle2D cell = cell(sheet.grid(), i, heightPt(Settings.Paper.A4));
        sizes.add(
            pdf.letters(1).stream()
                .filter(letter -> cell.contains(letter.box()))
                .mapToDouble(PdfProbe.Letter::sizePt)
                .min()
                .orElseThrow());
      }
    }
    return sizes;
  }

  @Test
  void anEndlessWordIsCutTooAndStaysInItsLabel() throws IOException {
    SeasonReport report = report(plan(Settings.Units.US));
    LabelSheet sheet = sheet(6, 4, Settings.Paper.LETTER, named("Larch".repeat(40)));
    List<String> read = read(sheet, Settings.Paper.LETTER, bytes(report, sheet));
    assertTrue(read.get(0).startsWith("K-207LarchLarchLarch"), read.get(0));
    assertTrue(read.get(0).contains("\u2026winter:Shed"), read.get(0));
  }

  /** The height that is asked for is enough, and a millimetre less is not. */
  @Test
  void tellsHowHighALabelHasToBe() throws IOException {
    SeasonReport report = report(plan(Settings.Units.METRIC));
    LabelSheet low = sheet(14, 4, Settings.Paper.A4, named("Larch"), named(LONG_NAME));
    LabelSheetPdf.TooSmall small = check(report, low).orElseThrow();
    assertFalse(small.tooNarrow());
    assertEquals("K-207", small.id());
    assertEquals(low.grid().heightMm(), small.availableMm());
    LabelSheet enough = ofHeight(low, small.neededMm());
    read(enough, Settings.Paper.A4, bytes(report, enough));
    assertTrue(check(report, ofHeight(low, small.neededMm() - 1)).isPresent());
  }

  private static LabelSheet ofHeight(LabelSheet s, double heightMm) {
    Grid g = s.grid();
    return new LabelSheet(
        s.title(),
        new Grid(
            1, g.columns(), g.topMm(), g.leftMm(), g.widthMm(), heightMm, g.downMm(), g.acrossMm()),
        s.labels());
  }

  @Test
  void tellsHowWideALabelHasToBe() throws IOException {
    SeasonReport report = report(plan(Settings.Units.METRIC));
    LabelSheet narrow = sheet(3, 16, Settings.Paper.A4, named("Larch"));
    LabelSheetPdf.TooSmall small = check(report, narrow).orElseThrow();
    assertTrue(small.tooNarrow());
    assertTrue(small.neededMm() > small.availableMm());
    // "return-to-bench" in 9 points, and no more than that.
    assertTrue(small.neededMm() < 40, small::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "en-US,UTC",
    "de-DE,America/St_Johns",
    "tr-TR,Australia/Lord_Howe",
    "ja-JP,Asia/Tokyo"
  })
  void equalOnEveryMachine(String locale, String zone) throws IOException {
    SeasonPlan plan = plan(Settings.Units.METRIC);
    byte[] expected = bytes(report(plan), sheet(plan));
    Locale localeBefore = Locale.getDefault();
    TimeZone zoneBefore = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertArrayEquals(expected, bytes(report(plan), sheet(plan)));
    } finally {
      Locale.setDefault(localeBefore);
      TimeZone.setDefault(zoneBefore);
    }
  }

  private static Optional<LabelSheetPdf.TooSmall> check(SeasonReport report, LabelSheet sheet)
      throws IOException {
    return LabelSheetPdf.check(report, sheet, Palette.standard(), Optional.empty());
  }
}
