package org.hibernacle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.pdf.CalendarPdf;
import org.hibernacle.report.xlsx.WorkbookWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What one file says, the other says too, in the same digits and words. */
class SameStoryTest {
  /** What is for information only, or told in another way, is not repeated on paper. */
  private static final Set<String> WORKBOOK_ALONE =
      Set.of(
          "leave-early",
          "leave-typical",
          "leave-late",
          "back-early",
          "back-typical",
          "back-late",
          "early",
          "typical",
          "late",
          "days-on-file",
          "count",
          "when",
          "value",
          "room-share",
          "model-rms",
          "model-largest",
          "model-largest-day");

  static List<SeasonReport> reports() {
    Words words = Words.of(Locale.UK);
    return List.of(
        ReportAuthor.write(
            Fixtures.inSeason(Fixtures.plan(), OptionalDouble.of(-6.5)),
            Fixtures.afterAnotherPlan(Fixtures.plan()),
            words),
        ReviewAuthor.write(ReviewFixtures.review(), Fixtures.facts(), words));
  }

  @ParameterizedTest
  @MethodSource("reports")
  void eachFactOfTheWorkbookStandsOnPaper(SeasonReport report) throws IOException {
    String paper = paper(report);
    for (String fact : facts(report, Medium.WORKBOOK)) {
      assertTrue(paper.contains(squeezed(fact)), fact);
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void eachFactOnPaperStandsInTheWorkbook(SeasonReport report) throws IOException {
    String workbook = workbook(report);
    for (String fact : facts(report, Medium.PDF)) {
      assertTrue(workbook.contains(squeezed(fact)), fact);
    }
  }

  /** What paper alone draws is told in the workbook too, day by day and plant by plant. */
  @ParameterizedTest
  @MethodSource("reports")
  void whatPaperAloneShowsFollowsFromTheWorkbook(SeasonReport report) throws IOException {
    Display display = new Display(Words.of(Locale.UK));
    String workbook = workbook(report);
    List<String> facts = new ArrayList<>();
    report.paper().strips().stream()
        .flatMap(strips -> strips.plants().stream())
        .forEach(
            strip -> {
              facts.add(strip.id());
              strip.bars().forEach(bar -> facts.add(bar.words().get(0).replace(", wrapped", "")));
              strip.moves().forEach(move -> facts.add(display.day(move.date())));
              strip.moves().stream()
                  .flatMap(move -> move.own().stream())
                  .forEach(
                      own ->
                          facts.addAll(
                              List.of(
                                  display.day(own.early()),
                                  display.day(own.typical()),
                                  display.day(own.late()))));
            });
    for (PlacePage place : report.paper().places()) {
      facts.addAll(List.of(place.title(), place.subtitle()));
      for (Section table : place.tables()) {
        table.rows().stream()
            .flatMap(row -> row.cells().stream())
            .filter(cell -> cell instanceof Cell.Day || table.id().equals("place-tasks"))
            .forEach(cell -> facts.add(display.text(cell)));
      }
    }
    for (String fact : facts) {
      assertTrue(workbook.contains(squeezed(fact)), fact);
    }
    assertEquals(report.months().isEmpty(), facts.isEmpty());
  }

  private static List<String> facts(SeasonReport report, Medium medium) {
    Display display = new Display(Words.of(Locale.UK));
    List<String> facts = new ArrayList<>(List.of(report.title(), report.subtitle()));
    report.overview().forEach(fact -> facts.addAll(List.of(fact.label(), fact.text())));
    report.legend().forEach(line -> facts.addAll(List.of(line.mark(), line.text())));
    report.chart().lines().forEach(line -> facts.add(line.name()));
    for (Section section : report.sections()) {
      if (section.media().containsAll(Table.EVERYWHERE)) {
        for (int i = 0; i < section.columns().size(); i++) {
          Section.Column column = section.columns().get(i);
          if (column.media().contains(medium) && !WORKBOOK_ALONE.contains(column.id())) {
            int index = i;
            section.rows().forEach(row -> facts.add(display.text(row.cells().get(index))));
          }
        }
      }
    }
    return facts;
  }

  private static String paper(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CalendarPdf.write(report, Palette.standard(), out);
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      return squeezed(new PDFTextStripper().getText(document));
    }
  }

  private static String workbook(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(report, out);
    DataFormatter formatter = new DataFormatter(Locale.UK);
    formatter.setUseCachedValuesForFormulaCells(true);
    StringBuilder text = new StringBuilder();
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
      workbook.forEach(
          sheet ->
              sheet.forEach(
                  row -> row.forEach(cell -> text.append(formatter.formatCellValue(cell)))));
    }
    return squeezed(text.toString());
  }

  private static String squeezed(String text) {
    return text.replaceAll("\\s+", "");
  }
}
