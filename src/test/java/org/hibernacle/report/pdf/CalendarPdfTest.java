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
import java.util.Optional;
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
import org.hibernacle.report.Display;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Palette;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.TemperatureChart;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;

class CalendarPdfTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/season-calendar.txt");

  /** All words, bookmarks, page shapes and fonts; renewed by {@code -Dgolden.update=true}. */
  @Test
  void readsAsTheGoldenDump() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(PaperReports.season())) {
      if (Boolean.getBoolean("golden.update")) {
        Files.createDirectories(GOLDEN.getParent());
        Files.writeString(GOLDEN, pdf.dump());
      }
      assertEquals(Files.readString(GOLDEN), pdf.dump());
    }
  }

  @Test
  void everyWordOfTheReportIsOnPaper() throws IOException {
    SeasonReport report = PaperReports.season();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      String paper = PdfProbe.squeezed(pdf.text());
      for (String fact : facts(report)) {
        assertTrue(paper.contains(PdfProbe.squeezed(fact)), fact);
      }
      assertFalse(paper.contains(PdfProbe.squeezed("Earliest last safe day")), "workbook alone");
    }
  }

  /** Display texts, found by walking the report. */
  private static List<String> facts(SeasonReport report) {
    Display display = new Display(Words.of(report.language()));
    List<String> facts = new ArrayList<>();
    facts.addAll(List.of(report.title(), report.subtitle(), report.pageFooter()));
    report.overview().forEach(f -> facts.addAll(List.of(f.label(), f.text())));
    report.legend().forEach(l -> facts.addAll(List.of(l.mark(), l.text())));
    report.chart().lines().forEach(l -> facts.add(l.name()));
    report.months().stream()
        .flatMap(m -> m.entries().stream())
        .flatMap(e -> e.lines().stream())
        .forEach(l -> facts.addAll(List.of(l.mark(), l.text())));
    for (Section section : report.sections()) {
      if (!section.media().contains(Medium.PDF)) {
        continue;
      }
      facts.add(section.title());
      facts.addAll(section.intro());
      for (int i = 0; i < section.columns().size(); i++) {
        int column = i;
        Set<Medium> media = section.columns().get(i).media();
        if (media.contains(Medium.PDF) || media.contains(Medium.BELOW)) {
          section.rows().stream()
              .map(r -> display.text(r.cells().get(column)))
              .filter(text -> !text.isEmpty())
              .forEach(facts::add);
        }
      }
    }
    return facts;
  }

  /** Nor is a column narrower than its longest word: each word stands on one line. */
  @Test
  void noWordIsBroken() throws IOException {
    SeasonReport report = PaperReports.season();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      Set<String> onPaper = new TreeSet<>(List.of(pdf.text().split("\\s+")));
      for (String fact : facts(report)) {
        for (String word : fact.split("\\s+|(?<=\\p{L})-(?=\\p{L})")) {
          // The digest of a file is longer than any column.
          if (word.length() < 60) {
            assertTrue(onPaper.stream().anyMatch(w -> w.contains(word)), word + " in: " + fact);
          }
        }
      }
    }
  }

  @Test
  void doneIsTickedInAnEmptyBox() throws IOException {
    SeasonReport report = PaperReports.season();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      long boxes = pdf.text().chars().filter(c -> c == '\u2610').count();
      long rows =
          report.section("moving-days").rows().size()
              + report.section("tasks").rows().size()
              + report.paper().places().stream()
                  .flatMap(place -> place.tables().stream())
                  .filter(table -> table.id().equals("place-tasks"))
                  .mapToLong(table -> table.rows().size())
                  .sum();
      assertEquals(rows, boxes);
    }
  }

  @Test
  void aColumnWithoutWordsIsLeftOut() throws IOException {
    Section section =
        PaperReports.section(
            "gaps",
            List.of("plant", "nowhere"),
            List.of(List.of(PaperReports.text("Larch"), new Cell.Gap())));
    try (PdfProbe pdf = PdfProbe.of(PaperReports.only(section))) {
      assertTrue(pdf.text().contains("Larch"));
      assertFalse(pdf.text().contains("nowhere"));
    }
  }

  @Test
  void eachPageHasWordsOfItsOwnAndItsNumber() throws IOException {
    SeasonReport report = PaperReports.season();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.Result result = CalendarPdf.write(report, Palette.standard(), out);
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
    try (PdfProbe pdf = PdfProbe.of(PaperReports.longSeason())) {
      int first = pdf.pageWith("One entry a plant");
      int last = pdf.pageWith("Where each plant stands") - 1;
      assertTrue(last > first);
      for (int page = first; page <= last; page++) {
        assertTrue(
            PdfProbe.squeezed(pdf.text(page))
                .contains("IdNamePlaceMove-downMove-inStep-outReturn-to-benchStatus"),
            "page " + page);
      }
    }
  }

  @Test
  void aPlantIsNeverPartedFromItsReason() throws IOException {
    SeasonReport report = PaperReports.longSeason();
    Section plants = report.section("season-plan");
    Display display = new Display(Words.of(report.language()));
    try (PdfProbe pdf = PdfProbe.of(report)) {
      for (Section.Row row : plants.rows()) {
        StringBuilder block = new StringBuilder();
        for (int i = 0; i < row.cells().size(); i++) {
          if (!plants.columns().get(i).media().equals(Set.of(Medium.WORKBOOK))) {
            block.append(display.text(row.cells().get(i)));
          }
        }
        assertTrue(pdf.pageWith(block.toString()) > 0, block.toString());
      }
    }
  }

  @Test
  void bothFacesAreEmbeddedInPart() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(PaperReports.season())) {
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
    assertTrue(PdfProbe.bytes(PaperReports.season()).length < whole / 5, "only the used letters");
  }

  @Test
  void bookmarksLeadToEachPartAndMonth() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(PaperReports.longSeason())) {
      List<String> titles = pdf.bookmarks().stream().map(b -> b.replaceAll(" -> .*", "")).toList();
      assertEquals(
          List.of(
              "Overview",
              "Season plan",
              "Where each plant stands",
              "Calendar",
              "  September 2026",
              "  October 2026",
              "  November 2026",
              "  December 2026",
              "  January 2027",
              "  February 2027",
              "  March 2027",
              "  April 2027",
              "  May 2027",
              "  June 2027",
              "A page for each place",
              "  Bench",
              "  North bed",
              "  Shed",
              "  Glasshouse",
              "  Spare room",
              "  Hall",
              "Moving days",
              "Tasks",
              "Place forecast",
              "Winters",
              "Notes",
              "For whoever looks after the plants"),
          titles);
      for (String bookmark : pdf.bookmarks()) {
        String title = bookmark.strip().replaceAll(" -> .*", "");
        int page = Integer.parseInt(bookmark.replaceAll(".* -> ", ""));
        if (!title.matches("Overview|Calendar|A page for each place")) {
          assertTrue(pdf.text(page).contains(title), bookmark);
        }
      }
    }
  }

  @Test
  void tellsReadersTitleLanguageAndOrigin() throws IOException {
    SeasonReport report = PaperReports.season();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      var info = pdf.document.getDocumentInformation();
      PDDocumentCatalog catalog = pdf.document.getDocumentCatalog();
      assertEquals(report.title(), info.getTitle());
      assertEquals(report.subtitle(), info.getSubject());
      assertEquals("Hibernacle", info.getProducer());
      assertEquals("2026-09-01T00:00:00Z", info.getCreationDate().toInstant().toString());
      assertEquals("en-GB", catalog.getLanguage());
      assertEquals(PageMode.USE_OUTLINES, catalog.getPageMode());
      assertTrue(catalog.getViewerPreferences().displayDocTitle());
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertTrue(xmp.contains(report.title()) && xmp.contains("2026-09-01"), xmp);
    }
  }

  @Test
  void equalReportsGiveEqualBytesOnAnyMachine() throws IOException {
    SeasonReport report = PaperReports.season();
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
  void anotherRunGivesAnotherFileIdentity() throws IOException {
    RunFacts facts = Fixtures.facts();
    RunFacts other =
        new RunFacts(
            "0.1.1", facts.inputs(), List.of(), facts.options(), List.of(), Optional.empty());
    try (PdfProbe a = PdfProbe.of(PaperReports.season(facts));
        PdfProbe b = PdfProbe.of(PaperReports.season(other))) {
      String idA = a.document.getDocument().getDocumentID().toString();
      assertFalse(idA.equals(b.document.getDocument().getDocumentID().toString()), idA);
    }
  }

  @Test
  void namesCharactersThatTheFontsLackAndMarksTheirPlace() throws IOException {
    SeasonReport report =
        PaperReports.of(
            PaperReports.season().months(),
            "Winter \u76c6\u683d, \ud83c\udf32 Ahorn \u2610 \u2713 \u2744 cafe\u0301",
            DayOfWeek.MONDAY,
            false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.Result result = CalendarPdf.write(report, Palette.standard(), out);
    assertEquals(
        List.of("\u683d (U+683D)", "\u76c6 (U+76C6)", "\ud83c\udf32 (U+1F332)"),
        result.missing().stream().map(Missing::character).toList());
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
                    "season-plan", "Plants", PaperReports.BOTH, List.of(), List.of(), List.of())),
            List.of(new MonthPage(YearMonth.of(2026, 7), "July 2026", List.of())),
            List.of(),
            new TemperatureChart("", "", List.of(), List.of()),
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
    try (PdfProbe pdf = PdfProbe.of(PaperReports.longSeason())) {
      int page = pdf.pageWith("For whoever looks after the plants");
      assertEquals(pdf.pages(), page);
      assertFalse(pdf.text(page).contains("Input temperatures.csv"), "the notes end before it");
    }
  }

  @Test
  void onlyIdleMonthsBetweenBusyOnesAreNamed() throws IOException {
    TreeMap<LocalDate, List<MonthPage.Line>> days = new TreeMap<>();
    MonthPage.Line line = new MonthPage.Line(StyleRole.TASK, "DO", "Water");
    PaperReports.put(days, LocalDate.of(2026, 10, 3), line);
    PaperReports.put(days, LocalDate.of(2027, 1, 9), line);
    List<MonthPage> months =
        IntStream.range(0, 8)
            .mapToObj(i -> PaperReports.month(YearMonth.of(2026, 9).plusMonths(i), days))
            .toList();
    SeasonReport report = PaperReports.of(months, "Few", DayOfWeek.MONDAY, false);
    try (PdfProbe pdf = PdfProbe.of(report)) {
      int january = pdf.pageWith("January 2027 Mon");
      assertEquals(january, pdf.pageWith("October 2026 Mon"), "two quiet months on one page");
      String nothing = "November 2026, December 2026: nothing to do";
      assertTrue(pdf.text(january).contains(nothing), pdf.text(january));
      assertEquals(0, pdf.pageWith("September 2026 Mon"));
      assertEquals(0, pdf.pageWith("September 2026: nothing"));
      assertEquals(0, pdf.pageWith("February 2027 Mon"));
      assertEquals(0, pdf.pageWith("February 2027: nothing"));
    }
  }
}
