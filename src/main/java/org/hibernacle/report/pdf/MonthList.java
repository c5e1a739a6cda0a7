package org.hibernacle.report.pdf;

import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfPTable;
import java.time.LocalDate;
import java.util.List;
import org.hibernacle.report.Display;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Words;

/** Lines that found no room in a month's grid: by day, in columns over as many pages as needed. */
final class MonthList {
  private static final int COLUMNS = 3;
  private static final float GUTTER = 18;
  private static final float SIZE_PT = 10;

  private final Pages pages;
  private final Typefaces type;
  private final Words words;

  MonthList(Pages pages, Typefaces type, Words words) {
    this.pages = pages;
    this.type = type;
    this.words = words;
  }

  void add(MonthPage month, MonthLayout layout) {
    MarkedLines fields = new MarkedLines(type, SIZE_PT);
    ColumnText column = new ColumnText(pages.writer().getDirectContent());
    for (LocalDate date : layout.overfull()) {
      List<MonthPage.Line> lines = layout.lines(date);
      PdfPTable table = Cells.table(1);
      table.setSpacingAfter(10);
      String heading = words.text("paper.continued", new Display(words).day(date));
      table.addCell(Cells.padded(Cells.of(type.phrase(heading, Style.STRONG)), 0, 3));
      table.setHeaderRows(1);
      for (MonthPage.Line line : lines.subList(layout.shown(date), lines.size())) {
        // One field each: a column may end anywhere, and the next one must name the kind again.
        fields.add(table, List.of(line), width());
      }
      column.addElement(table);
    }
    boolean more = true;
    while (more) {
      pages.newPage(true);
      pages.add(pages.heading(words.text("paper.continued", month.title()), Style.HEADING));
      pages.addGap(6);
      more = fill(column);
      pages.full();
    }
  }

  private float width() {
    return (pages.width() - (COLUMNS - 1) * GUTTER) / COLUMNS;
  }

  /** Fills the rest of the page, column by column; tells whether there is more. */
  private boolean fill(ColumnText column) {
    for (int i = 0; i < COLUMNS; i++) {
      float left = Pages.SIDE + i * (width() + GUTTER);
      column.setSimpleColumn(
          left, pages.bottom(), left + width(), pages.bottom() + pages.spaceLeft());
      if (!ColumnText.hasMoreText(column.go())) {
        return false;
      }
    }
    return true;
  }
}
