package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.hibernacle.report.Cell;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nothing leaves the paper, nothing is too small to read, and no words are lost for their length.
 */
class PageGeometryTest {
  private static final double ROUNDING = 0.5;

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void allLettersStandWithinTheMargins(boolean letter) throws IOException {
    SeasonReport report =
        PaperReports.of(PaperReports.longSeason().months(), "Margins", DayOfWeek.MONDAY, letter);
    try (PdfProbe pdf = PdfProbe.of(report)) {
      assertWithinMargins(pdf);
      PDRectangle first = pdf.document.getPage(0).getMediaBox();
      // ISO 216 A4 is 210 x 297 mm, Letter 8.5 x 11 in; a point is 1/72 in.
      assertEquals(letter ? 612 : 210 / 25.4 * 72, first.getWidth(), 0.5);
      assertEquals(letter ? 792 : 297 / 25.4 * 72, first.getHeight(), 0.5);
    }
  }

  @Test
  void calendarPagesAreTrulyLandscape() throws IOException {
    try (PdfProbe pdf = PdfProbe.of(PaperReports.longSeason())) {
      int landscape = 0;
      for (var page : pdf.document.getPages()) {
        assertEquals(0, page.getRotation());
        landscape += page.getMediaBox().getWidth() > page.getMediaBox().getHeight() ? 1 : 0;
      }
      assertTrue(landscape > 0);
    }
  }

  @Test
  void noLetterIsTooSmall() throws IOException {
    SeasonReport report = PaperReports.longSeason();
    try (PdfProbe pdf = PdfProbe.of(report)) {
      for (int page = 1; page <= pdf.pages(); page++) {
        for (PdfProbe.Letter letter : pdf.letters(page)) {
          assertTrue(letter.sizePt() >= 9, page + ": " + letter);
        }
      }
    }
  }

  @Test
  void aRowTallerThanAPageIsContinuedOnTheNext() throws IOException {
    String endless =
        IntStream.range(0, 1500).mapToObj(i -> "word" + i).reduce((a, b) -> a + " " + b).get();
    Section section =
        PaperReports.section(
            "long",
            List.of("note"),
            List.of(List.of(new Cell.Text(endless)), List.of(PaperReports.text("end"))));
    try (PdfProbe pdf = PdfProbe.of(PaperReports.only(section))) {
      assertTrue(withoutFrame(pdf).contains(PdfProbe.squeezed(endless)));
      assertWithinMargins(pdf);
    }
  }

  @Test
  void aReasonTallerThanAPageIsContinuedOnTheNext() throws IOException {
    String endless =
        IntStream.range(0, 2000).mapToObj(i -> "reason" + i).reduce((a, b) -> a + " " + b).get();
    Section section =
        PaperReports.section(
            "long",
            List.of("plant", "why"),
            List.of(
                List.of(PaperReports.text("Larch"), PaperReports.text("short")),
                List.of(PaperReports.text("Maple"), PaperReports.text(endless))));
    try (PdfProbe pdf = PdfProbe.of(PaperReports.only(section))) {
      assertTrue(withoutFrame(pdf).contains(PdfProbe.squeezed("Maple" + endless)));
      assertWithinMargins(pdf);
    }
  }

  @Test
  void aTableOfManyColumnsStaysOnThePaper() throws IOException {
    List<String> columns = IntStream.range(0, 24).mapToObj(i -> "Heading" + i).toList();
    List<Cell> cells = new ArrayList<>();
    columns.forEach(c -> cells.add(PaperReports.text("content-of-" + c)));
    Section section = PaperReports.section("long", columns, List.of(cells));
    try (PdfProbe pdf = PdfProbe.of(PaperReports.only(section))) {
      String paper = PdfProbe.squeezed(pdf.text());
      columns.forEach(c -> assertTrue(paper.contains("content-of-" + c), c));
      assertWithinMargins(pdf);
    }
  }

  @Test
  void aLongTitleAndProvenanceTakeTheLinesTheyNeed() throws IOException {
    String title =
        "The winter of the collection on the hill behind the old mill ".repeat(4).strip();
    String footer = "made from inventory 3f9a1c27 and temperatures 77b0de41, ".repeat(6).strip();
    SeasonReport plain = PaperReports.longSeason();
    SeasonReport report =
        new SeasonReport(
            title,
            plain.subtitle(),
            plain.overview(),
            plain.sections(),
            plain.months(),
            plain.legend(),
            plain.chart(),
            List.of(),
            footer,
            plain.digest(),
            false,
            plain.weekStart(),
            plain.language());
    try (PdfProbe pdf = PdfProbe.of(report)) {
      for (int page = 1; page <= pdf.pages(); page++) {
        assertTrue(PdfProbe.squeezed(pdf.text(page)).contains(PdfProbe.squeezed(footer)));
        assertTrue(PdfProbe.squeezed(pdf.text(page)).contains(PdfProbe.squeezed(title)));
      }
      assertWithinMargins(pdf);
    }
  }

  static void assertWithinMargins(PdfProbe pdf) throws IOException {
    for (int page = 1; page <= pdf.pages(); page++) {
      PDRectangle paper = pdf.document.getPage(page - 1).getMediaBox();
      for (PdfProbe.Letter letter : pdf.letters(page)) {
        var box = letter.box();
        assertTrue(
            box.getX() >= Pages.SIDE - ROUNDING
                && box.getMaxX() <= paper.getWidth() - Pages.SIDE + ROUNDING
                && box.getY() >= PageFrame.EDGE - ROUNDING
                && box.getMaxY() <= paper.getHeight() - PageFrame.EDGE + ROUNDING,
            "page " + page + ": " + letter);
      }
    }
  }

  /** All words without white space and without what repeats on each page. */
  private static String withoutFrame(PdfProbe pdf) throws IOException {
    StringBuilder words = new StringBuilder();
    for (int page = 1; page <= pdf.pages(); page++) {
      words.append(
          PdfProbe.squeezed(pdf.text(page))
              .replaceAll("Longsitefooter.*$", "")
              .replaceFirst("^(note|plant)", ""));
    }
    return words.toString();
  }
}
