package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hibernacle.report.Display;
import org.hibernacle.report.ForScreen;
import org.hibernacle.report.Paper;
import org.hibernacle.report.PlacePage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Strips;
import org.hibernacle.report.TemperatureChart;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;

/** Strips and place pages as they stand on paper. */
class PaperPagesPdfTest {
  private static final Strips STRIPS = PaperReports.season().paper().strips().orElseThrow();

  private static SeasonReport only(Strips strips, List<PlacePage> places) {
    return new SeasonReport(
        "Title",
        "site",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new TemperatureChart("", "", List.of(), List.of()),
        List.of(),
        "footer",
        "digest",
        true,
        DayOfWeek.MONDAY,
        Locale.UK,
        List.of(),
        ForScreen.NOTHING,
        new Paper(LocalDate.of(2026, 7, 1), Optional.of(strips), places));
  }

  private static Strips with(List<Strips.Strip> plants) {
    return new Strips(
        STRIPS.title(),
        STRIPS.intro(),
        STRIPS.from(),
        STRIPS.toExclusive(),
        STRIPS.samples(),
        STRIPS.ownDays(),
        plants);
  }

  @Test
  void twoHundredPlantsStandSeveralToAPageWithPatternsNamedOnEach() throws IOException {
    String longName =
        "Old man of the windy corner, with the broken saucer, on the left of the gate, ";
    List<Strips.Strip> plants =
        IntStream.range(0, 200)
            .mapToObj(
                i -> {
                  Strips.Strip s = STRIPS.plants().get(i % STRIPS.plants().size());
                  return new Strips.Strip(
                      "T" + i,
                      longName + "no " + i + ".",
                      s.role(),
                      s.bars(),
                      s.moves(),
                      s.words());
                })
            .toList();
    try (PdfProbe pdf = PdfProbe.of(only(with(plants), List.of()))) {
      int first = pdf.pageWith(STRIPS.title());
      assertTrue(pdf.pages() - first + 1 <= 200 / 7, pdf.pages() + " pages");
      String paper = PdfProbe.squeezed(pdf.text());
      for (Strips.Strip strip : plants) {
        String told = strip.id() + strip.name() + "";
        assertTrue(paper.contains(PdfProbe.squeezed(told)), told);
        assertTrue(paper.contains(PdfProbe.squeezed(strip.words())), strip.words());
      }
      for (int page = first; page <= pdf.pages(); page++) {
        String text = PdfProbe.squeezed(pdf.text(page));
        for (Strips.Sample sample : STRIPS.samples()) {
          assertTrue(text.contains(PdfProbe.squeezed(sample.word())), page + ": " + sample);
        }
        assertTrue(text.contains("Nov") && text.contains("Feb"), "months on page " + page);
      }
      PageGeometryTest.assertWithinMargins(pdf);
    }
  }

  /** A name and what follows it are read together, not torn apart by the drawing. */
  @Test
  void eachStripIsReadInOrder() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(PaperReports.season())) {
      String paper = PdfProbe.squeezed(pdf.text());
      int at = paper.indexOf(PdfProbe.squeezed(STRIPS.intro().get(0)));
      for (Strips.Strip strip : STRIPS.plants()) {
        int name = paper.indexOf(PdfProbe.squeezed(strip.id() + strip.name()), at);
        int words = paper.indexOf(PdfProbe.squeezed(strip.words()), at);
        assertTrue(name >= at && words > name, strip.id());
        at = words;
      }
    }
  }

  @Test
  void aPageForEachPlaceHoldsItsFactsAndTables() throws IOException {
    SeasonReport report = PaperReports.season();
    Display display = new Display(Words.of(report.language()));
    try (PdfProbe pdf = PdfProbe.of(report)) {
      for (PlacePage place : report.paper().places()) {
        int page = pdf.pageWith(place.title() + place.subtitle() + place.facts().get(0).label());
        assertTrue(page > 0, place.title());
        String text = PdfProbe.squeezed(pdf.text(page) + pdf.text(Math.min(page + 1, pdf.pages())));
        place
            .facts()
            .forEach(f -> assertTrue(text.contains(PdfProbe.squeezed(f.text())), f.text()));
        assertTrue(text.contains(PdfProbe.squeezed(place.room().title())));
        for (Section table : place.tables()) {
          for (Section.Row row : table.rows()) {
            row.cells()
                .forEach(
                    c ->
                        assertTrue(
                            text.contains(PdfProbe.squeezed(display.text(c))), c.toString()));
          }
        }
      }
    }
  }

  @Test
  void aPlaceOfManyPlantsStaysOnThePaper() throws IOException {
    PlacePage bench = PaperReports.season().paper().places().get(0);
    Section stays = bench.tables().get(bench.tables().size() - 1);
    List<Section.Row> rows =
        IntStream.range(0, 150).mapToObj(i -> stays.rows().get(i % stays.rows().size())).toList();
    Section many =
        new Section(stays.id(), stays.title(), stays.media(), stays.intro(), stays.columns(), rows);
    PlacePage place =
        new PlacePage(bench.title(), bench.subtitle(), bench.facts(), bench.room(), List.of(many));
    try (PdfProbe pdf = PdfProbe.of(only(with(List.of()), List.of(place)))) {
      PageGeometryTest.assertWithinMargins(pdf);
      assertTrue(pdf.pages() > 3, "goes on over pages");
    }
  }

  /** Days lie along the axis in proportion; days outside stand at its ends. */
  @Test
  void daysHaveTheirPlaceOnTheAxis() {
    LocalDate from = LocalDate.of(2026, 10, 1);
    TimeAxis axis = new TimeAxis(from, LocalDate.of(2027, 1, 9), 10, 200);
    assertEquals(10, axis.x(from), 1e-4);
    assertEquals(110, axis.x(LocalDate.of(2026, 11, 20)), 1e-4, "50 of 100 days");
    assertEquals(210, axis.x(LocalDate.of(2028, 1, 1)), 1e-4);
    assertEquals(10, axis.x(LocalDate.of(2020, 1, 1)), 1e-4);
    assertEquals(4, axis.months().size());
  }
}
