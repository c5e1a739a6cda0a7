package org.hibernacle.report.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/**
 * The first page: what the season asks for, in short; a report without a calendar goes on below.
 */
final class FrontPage {
  private static final float GAP = 14;
  private static final float LOWEST_CHART = 150;
  private static final float TALLEST_CHART = 280;

  /** Title, axis and names of lines of the chart, in points. */
  private static final float AROUND_CHART = 80;

  private final Pages pages;
  private final Typefaces type;
  private final Words words;

  FrontPage(Pages pages, Typefaces type, Words words) {
    this.pages = pages;
    this.type = type;
    this.words = words;
  }

  void add(SeasonReport report) {
    pages.bookmark(pages.root(), words.text("paper.overview"));
    pages.add(title(report));
    pages.add(facts(report.overview()));
    boolean chart = TemperatureDrawing.worthDrawing(report.chart());
    float legend = report.legend().isEmpty() ? 0 : legend(report.legend()).getTotalHeight() + GAP;
    float left = pages.spaceLeft() - GAP - legend - AROUND_CHART;
    boolean besideChart = left >= LOWEST_CHART;
    if (chart && besideChart) {
      chart(report, left);
    }
    if (!report.legend().isEmpty()) {
      pages.addGap(GAP);
      pages.add(legend(report.legend()));
    }
    if (!report.months().isEmpty()) {
      pages.full();
    }
    if (chart && !besideChart) {
      pages.room(false, TALLEST_CHART + AROUND_CHART);
      chart(report, TALLEST_CHART);
    }
  }

  private void chart(SeasonReport report, float height) {
    pages.addGap(GAP);
    pages.add(
        new TemperatureDrawing(report.chart(), type, words)
            .table(pages.writer(), pages.width(), Math.min(height, TALLEST_CHART)));
  }

  private PdfPTable title(SeasonReport report) {
    PdfPTable table = Cells.table(1);
    PdfPCell title = Cells.padded(Cells.of(type.phrase(report.title(), Style.TITLE)), 0, 10);
    table.addCell(Cells.ruled(title, Rectangle.TOP, 4, type.ink(Style.TITLE)));
    PdfPCell subtitle = Cells.of(type.phrase(report.subtitle(), Style.SUBTITLE));
    subtitle.setPaddingBottom(14);
    table.addCell(subtitle);
    return table;
  }

  private PdfPTable facts(List<SeasonReport.Fact> facts) {
    PdfPTable table = Cells.table(3, 7);
    table.setSplitRows(false);
    for (SeasonReport.Fact fact : facts) {
      Palette.Look look = type.palette().look(fact.role());
      boolean plain = fact.role() == StyleRole.PLAIN;
      PdfPCell label =
          Cells.padded(Cells.of(type.phrase(fact.label(), Style.SUBTLE.at(10))), 6, 3.5f);
      PdfPCell text =
          Cells.padded(
              Cells.of(
                  type.phrase(
                      fact.text(),
                      plain ? Style.BODY.at(10) : Style.BODY.at(10).asBold().in(fact.role()))),
              6,
              3.5f);
      if (!plain) {
        Cells.filled(text, look);
      }
      table.addCell(Cells.ruled(label, Rectangle.BOTTOM, 0.5f, type.palette().rule()));
      table.addCell(Cells.ruled(text, Rectangle.BOTTOM, 0.5f, type.palette().rule()));
    }
    return table;
  }

  private PdfPTable legend(List<MonthPage.Line> marks) {
    PdfPTable table = Cells.table(3, 11, 3, 11);
    table.setTotalWidth(pages.width());
    table.setSplitRows(false);
    PdfPCell heading =
        Cells.padded(
            Cells.of(type.phrase(words.text("paper.marks"), Style.COLUMN_HEADING.at(11))), 0, 4);
    heading.setColspan(4);
    table.addCell(heading);
    table.setHeaderRows(1);
    for (MonthPage.Line mark : marks) {
      Palette.Look look = type.palette().look(mark.role());
      table.addCell(
          Cells.dressed(
              Cells.padded(
                  Cells.of(type.phrase(mark.mark(), Style.STRONG.at(10).in(mark.role()))), 6, 3),
              look));
      table.addCell(Cells.padded(Cells.of(type.phrase(mark.text(), Style.BODY.at(10))), 6, 3));
    }
    if (marks.size() % 2 == 1) {
      PdfPCell blank = Cells.gap(2);
      blank.setColspan(2);
      table.addCell(blank);
    }
    return table;
  }
}
