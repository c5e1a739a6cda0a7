package org.hibernacle.report.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;

/** The first page: what the season asks for, in short. */
final class Overview {
  private static final float GAP = 14;
  private static final float LOWEST_CHART = 150;
  private static final float TALLEST_CHART = 280;

  /** Title, axis and names of lines of the chart, in points. */
  private static final float AROUND_CHART = 80;

  private final Pages pages;
  private final Typefaces type;
  private final Labels labels;

  Overview(Pages pages, Typefaces type, Labels labels) {
    this.pages = pages;
    this.type = type;
    this.labels = labels;
  }

  void add(SeasonReport report) {
    pages.bookmark(pages.root(), labels.of("overview"));
    pages.add(title(report));
    pages.add(facts(report.overview()));
    if (TemperatureDrawing.worthDrawing(report.chart())) {
      pages.addGap(GAP);
      float legend = legend(report.legend()).getTotalHeight() + GAP;
      float height = pages.spaceLeft() - legend - AROUND_CHART;
      pages.add(
          new TemperatureDrawing(report.chart(), type, report.language())
              .table(
                  pages.writer(),
                  pages.width(),
                  Math.max(LOWEST_CHART, Math.min(height, TALLEST_CHART))));
    }
    if (!report.legend().isEmpty()) {
      pages.addGap(GAP);
      pages.add(legend(report.legend()));
    }
    pages.full();
  }

  private PdfPTable title(SeasonReport report) {
    PdfPTable table = Cells.table(1);
    PdfPCell title = Cells.padded(Cells.of(type.phrase(report.title(), Style.TITLE)), 0, 10);
    table.addCell(Cells.ruled(title, Rectangle.TOP, 4, Looks.of(StyleRole.TITLE).text()));
    PdfPCell subtitle = Cells.of(type.phrase(report.subtitle(), Style.SUBTITLE));
    subtitle.setPaddingBottom(14);
    table.addCell(subtitle);
    return table;
  }

  private PdfPTable facts(List<SeasonReport.Fact> facts) {
    PdfPTable table = Cells.table(3, 7);
    table.setSplitRows(false);
    for (SeasonReport.Fact fact : facts) {
      Look look = Looks.of(fact.role());
      boolean plain = fact.role() == StyleRole.PLAIN;
      PdfPCell label =
          Cells.padded(Cells.of(type.phrase(fact.label(), Style.SUBTLE.at(10))), 6, 3.5f);
      PdfPCell text =
          Cells.padded(
              Cells.of(
                  type.phrase(
                      fact.text(),
                      plain ? Style.BODY.at(10) : Style.BODY.at(10).asBold().in(look.text()))),
              6,
              3.5f);
      if (!plain) {
        text.setBackgroundColor(look.fill());
      }
      table.addCell(Cells.ruled(label, Rectangle.BOTTOM, 0.5f, Looks.HAIRLINE));
      table.addCell(Cells.ruled(text, Rectangle.BOTTOM, 0.5f, Looks.HAIRLINE));
    }
    return table;
  }

  private PdfPTable legend(List<MonthPage.Line> marks) {
    PdfPTable table = Cells.table(3, 7);
    table.setTotalWidth(pages.width());
    table.setSplitRows(false);
    PdfPCell heading =
        Cells.padded(Cells.of(type.phrase(labels.of("marks"), Style.COLUMN_HEADING.at(11))), 0, 4);
    heading.setColspan(2);
    table.addCell(heading);
    table.setHeaderRows(1);
    for (MonthPage.Line mark : marks) {
      Look look = Looks.of(mark.role());
      table.addCell(
          Cells.dressed(
              Cells.padded(
                  Cells.of(type.phrase(mark.mark(), Style.STRONG.at(10).in(look.text()))), 6, 3),
              look));
      table.addCell(Cells.padded(Cells.of(type.phrase(mark.text(), Style.BODY.at(10))), 6, 3));
      PdfPCell gap = Cells.gap(2);
      gap.setColspan(2);
      table.addCell(gap);
    }
    return table;
  }
}
