package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.hibernacle.report.Cell;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.TemperatureChart;
import org.junit.jupiter.api.Test;

class CalendarPdfTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/season-calendar.txt");

  /** All words, bookmarks, page shapes and fonts; renewed by {@code -Dgolden.update=true}. */
  @Test
  void readsAsTheGoldenDump() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(ReportFixture.season())) {
      if (Boolean.getBoolean("golden.update")) {
        Files.createDirectories(GOLDEN.getParent());
        Files.writeString(GOLDEN, pdf.dump());
      }
      assertEquals(Files.readString(GOLDEN), pdf.dump());
    }
  }

  @Test
  void everyWordOfTheReportIsOnPaper() throws IOException {
    SeasonReport report = ReportFixture.season();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      String paper = PdfProbe.squeezed(pdf.text());
      for (String fact : facts(report)) {
        assertTrue(paper.contains(PdfProbe.squeezed(fact)), fact);
      }
      assertFalse(paper.contains(PdfProbe.squeezed("never on paper")));
      assertFalse(paper.contains("P-101"), "a column for the workbook alone");
    }
  }

  /** Display texts, found by walking the report. */
  private static List<String> facts(SeasonReport report) {
    CellText words = new CellText(report.language());
    List<String> facts = new ArrayList<>(report.cautions());
    facts.addAll(List.of(report.title(), report.subtitle(), report.pageFooter()));
    report.overview().forEach(f -> facts.addAll(List.of(f.label(), f.text())));
    report.legend().forEach(l -> facts.addAll(List.of(l.mark(), l.text())));
    report.chart().lines().forEach(l -> facts.add(l.name()));
    report.months().stream()
        .flatMap(m -> m.entries().stream())
        .flatMap(e -> e.lines().stream())
        .forEach(l -> facts.addAll(List.of(l.mark(), l.text())));
    for (Section section : report.sections()) {
      if (!section.media().contains(Section.Medium.PDF)) {
        continue;
      }
      facts.add(section.title());
      facts.addAll(section.intro());
      for (int i = 0; i < section.columns().size(); i++) {
        int column = i;
        if (section.columns().get(i).media().contains(Section.Medium.PDF)) {
          section.rows().stream()
              .map(r -> r.cells().get(column))
              .filter(c -> !(c instanceof Cell.Gap))
              .forEach(c -> facts.add(words.of(c)));
        }
      }
    }
    return facts;
  }

  @Test
  void eachPageHasWordsOfItsOwnAndItsNumber() throws IOException {
    SeasonReport report = ReportFixture.season();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.Result result = CalendarPdf.write(report, out);
    try (PdfProbe pdf = PdfProbe.of(report)) {
      assertEquals(result.pages(), pdf.pages());
      for (int page = 1; page <= pdf.pages(); page++) {
        String text = pdf.text(page);
        assertTrue(text.contains("Page " + page + " of " + pdf.pages()), text);
        assertTrue(text.contains(report.title()), text);
        String own =
            text.replace(report.title(), "")
                .replace(report.subtitle(), "")
                .replace(report.pageFooter(), "");
        assertTrue(own.length() > 60, "page " + page + " is nearly empty: " + text);
      }
    }
  }

  @Test
  void headingsStandOnEachPageOfALongTable() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(ReportFixture.season())) {
      int first = pdf.pageWith("Black pine 1 Pinus thunbergii");
      int last = pdf.pageWith("Pomegranate 5 Punica granatum");
      assertTrue(last > first);
      for (int page = first; page <= last; page++) {
        assertTrue(
            PdfProbe.squeezed(pdf.text(page))
                .contains("PlantSpeciesMovedownMoveinBackhomeMarginKStatus"),
            "page " + page);
      }
    }
  }

  @Test
  void aPlantIsNeverPartedFromItsReason() throws IOException {
    SeasonReport report = ReportFixture.season();
    Section plants = report.section("season-plan");
    CellText words = new CellText(report.language());
    try (PdfProbe pdf = PdfProbe.of(report)) {
      for (Section.Row row : plants.rows()) {
        StringBuilder block = new StringBuilder();
        for (int i = 0; i < row.cells().size(); i++) {
          if (plants.columns().get(i).media().contains(Section.Medium.PDF)) {
            block.append(words.of(row.cells().get(i)));
          }
        }
        assertTrue(pdf.pageWith(block.toString()) > 0, block.toString());
      }
    }
  }

  @Test
  void bothFacesAreEmbeddedInPart() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(ReportFixture.season())) {
      Set<String> names = new TreeSet<>();
      for (var page : pdf.document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          names.add(font.getName());
        }
      }
      assertEquals(Set.of("AAAAAA+DejaVuSansCondensed", "BBBBBB+DejaVuSansCondensed-Bold"), names);
    }
    int whole = 1_300_000;
    assertTrue(PdfProbe.bytes(ReportFixture.season()).length < whole / 5, "only the used letters");
  }

  @Test
  void bookmarksLeadToEachPartAndMonth() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(ReportFixture.season())) {
      List<String> titles = pdf.bookmarks().stream().map(b -> b.replaceAll(" -> .*", "")).toList();
      assertEquals(
          List.of(
              "Overview",
              "Plants A to Z",
              "Calendar",
              "  September 2026",
              "  October 2026",
              "  November 2026",
              "  December 2026",
              "  January 2027",
              "  February 2027",
              "  March 2027",
              "  April 2027",
              "Moving days",
              "Places",
              "Tasks",
              "Winters on file",
              "For whoever looks after the plants",
              "Notes",
              "Cautions"),
          titles);
      for (String bookmark : pdf.bookmarks()) {
        String title = bookmark.strip().replaceAll(" -> .*", "");
        int page = Integer.parseInt(bookmark.replaceAll(".* -> ", ""));
        if (!title.equals("Overview") && !title.equals("Calendar")) {
          assertTrue(pdf.text(page).contains(title), bookmark);
        }
      }
    }
  }

  @Test
  void tellsReadersTitleLanguageAndOrigin() throws IOException {
    SeasonReport report = ReportFixture.season();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      var info = pdf.document.getDocumentInformation();
      PDDocumentCatalog catalog = pdf.document.getDocumentCatalog();
      assertEquals(report.title(), info.getTitle());
      assertEquals(report.subtitle(), info.getSubject());
      assertEquals("Hibernacle", info.getProducer());
      assertEquals("2026-09-01T00:00:00Z", info.getCreationDate().toInstant().toString());
      assertEquals("en", catalog.getLanguage());
      assertEquals(PageMode.USE_OUTLINES, catalog.getPageMode());
      assertTrue(catalog.getViewerPreferences().displayDocTitle());
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertTrue(xmp.contains(report.title()) && xmp.contains("2026-09-01"), xmp);
    }
  }

  @Test
  void equalReportsGiveEqualBytesOnAnyMachine() throws IOException {
    SeasonReport report = ReportFixture.season();
    byte[] expected = PdfProbe.bytes(report);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String machine : List.of("en Asia/Tokyo", "de UTC", "tr Asia/Tokyo")) {
        String[] parts = machine.split(" ");
        Locale.setDefault(Locale.forLanguageTag(parts[0]));
        TimeZone.setDefault(TimeZone.getTimeZone(parts[1]));
        assertArrayEquals(expected, PdfProbe.bytes(report), machine);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void anotherDigestGivesAnotherFileIdentity() throws IOException {
    SeasonReport one = ReportFixture.season();
    SeasonReport other = ReportFixture.withDigest(one, "0000");
    try (PdfProbe a = PdfProbe.of(one);
        PdfProbe b = PdfProbe.of(other)) {
      String idA = a.document.getDocument().getDocumentID().toString();
      assertFalse(idA.equals(b.document.getDocument().getDocumentID().toString()), idA);
    }
  }

  @Test
  void namesCharactersThatTheFontsLackAndMarksTheirPlace() throws IOException {
    SeasonReport report =
        ReportFixture.report(
            ReportFixture.months(),
            "Winter \u76c6\u683d, \ud83c\udf32 Ahorn \u2610 \u2713 \u2744 cafe\u0301",
            DayOfWeek.MONDAY,
            Locale.ENGLISH,
            false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.Result result = CalendarPdf.write(report, out);
    assertEquals(
        List.of("\u683d (U+683D)", "\u76c6 (U+76C6)", "\ud83c\udf32 (U+1F332)"),
        result.missingCharacters());
    try (PdfProbe pdf = PdfProbe.of(report)) {
      assertTrue(
          pdf.text(1).contains("Winter \ufffd\ufffd, \ufffd Ahorn \u2610 \u2713 \u2744 caf\u00e9"),
          pdf.text(1));
    }
  }

  @Test
  void aReportWithLittleToSayHasNoEmptyPages() throws IOException {
    SeasonReport bare =
        new SeasonReport(
            "Bare",
            "",
            List.of(),
            List.of(
                new Section(
                    "season-plan", "Plants", ReportFixture.BOTH, List.of(), List.of(), List.of())),
            List.of(new MonthPage(YearMonth.of(2026, 7), "July 2026", List.of())),
            List.of(),
            new TemperatureChart("", "", List.of(), List.of()),
            List.of(),
            List.of(),
            "",
            "",
            true,
            DayOfWeek.SUNDAY,
            Locale.ENGLISH);
    try (PdfProbe pdf = PdfProbe.of(bare)) {
      assertEquals(1, pdf.pages());
      assertEquals(612, pdf.document.getPage(0).getMediaBox().getWidth(), "Letter");
    }
  }

  @Test
  void aHandOutHasItsPageToItself() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(ReportFixture.season())) {
      int page = pdf.pageWith("For whoever looks after the plants");
      assertTrue(page > pdf.pageWith("Winters on file"));
      assertTrue(page < pdf.pageWith("Root limits of this report are invented"));
    }
  }

  @Test
  void onlyIdleMonthsBetweenBusyOnesAreNamed() throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    MonthPage.Line line = new MonthPage.Line(StyleRole.TASK, "DO", "Water");
    ReportFixture.put(days, LocalDate.of(2026, 10, 3), line);
    ReportFixture.put(days, LocalDate.of(2027, 1, 9), line);
    List<MonthPage> months =
        IntStream.range(0, 8)
            .mapToObj(i -> ReportFixture.month(YearMonth.of(2026, 9).plusMonths(i), days))
            .toList();
    SeasonReport report =
        ReportFixture.report(months, "Few", DayOfWeek.MONDAY, Locale.ENGLISH, false);
    try (PdfProbe pdf = PdfProbe.of(report)) {
      int january = pdf.pageWith("January 2027 Monday");
      assertEquals(january, 1 + pdf.pageWith("October 2026 Monday"));
      assertTrue(pdf.text(january).contains("November 2026: nothing to do"));
      assertTrue(pdf.text(january).contains("December 2026: nothing to do"));
      assertEquals(0, pdf.pageWith("September 2026: nothing"));
      assertEquals(0, pdf.pageWith("February 2027"));
    }
  }
}
