package org.hibernacle.report.pdf;

import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.report.Cell;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;

/** The calendar: one page a month, to be hung on the wall. */
final class MonthPages {
  private static final int LIST_COLUMNS = 3;
  private static final float LIST_GUTTER = 18;
  private static final float LIST_SIZE_PT = 10;

  private final Pages pages;
  private final Typefaces type;
  private final Labels labels;
  private final SeasonReport report;

  MonthPages(Pages pages, Typefaces type, Labels labels, SeasonReport report) {
    this.pages = pages;
    this.type = type;
    this.labels = labels;
    this.report = report;
  }

  /** Adds the months from the first to the last with work; idle ones between are only named. */
  void add() {
    List<MonthPage> busy = report.months().stream().filter(MonthPages::isBusy).toList();
    if (busy.isEmpty()) {
      return;
    }
    pages.newPage(true);
    PdfOutline calendar = pages.bookmark(pages.root(), labels.of("calendar"));
    int from = report.months().indexOf(busy.get(0));
    List<MonthPage> idle = new ArrayList<>();
    for (MonthPage month : report.months().subList(from, report.months().size())) {
      if (isBusy(month)) {
        addMonth(calendar, idle, month);
        idle.clear();
      } else {
        idle.add(month);
      }
    }
  }

  private static boolean isBusy(MonthPage month) {
    return month.entries().stream().anyMatch(e -> !e.lines().isEmpty());
  }

  private void addMonth(PdfOutline calendar, List<MonthPage> idle, MonthPage month) {
    pages.newPage(true);
    for (MonthPage each : idle) {
      pages.bookmark(calendar, each.title());
      pages.add(pages.heading(labels.of("nothing", each.title()), Style.SUBTLE.at(10)));
    }
    pages.bookmark(calendar, month.title());
    pages.add(pages.heading(month.title(), Style.MONTH));
    PdfPTable legend = legend(month);
    MonthGrid grid = new MonthGrid(type, report.language());
    float height = pages.spaceLeft() - grid.headingHeight() - legend.getTotalHeight() - 2;
    MonthLayout layout =
        new MonthLayout(month, report.weekStart(), type, labels, pages.width(), height);
    pages.add(grid.draw(month.month(), layout));
    pages.add(legend);
    if (!layout.overfull().isEmpty()) {
      addList(month, layout);
    }
  }

  /** What the marks of this month mean; a loose page explains itself. */
  private PdfPTable legend(MonthPage month) {
    List<MonthPage.Line> used =
        report.legend().stream()
            .filter(
                mark ->
                    month.entries().stream()
                        .flatMap(e -> e.lines().stream())
                        .anyMatch(l -> l.role() == mark.role() && l.mark().equals(mark.mark())))
            .toList();
    Phrase words = new Phrase();
    for (MonthPage.Line mark : used) {
      words.addAll(
          type.phrase(mark.mark(), Style.SUBTLE.asBold().in(Looks.of(mark.role()).text())));
      words.addAll(type.phrase(" " + mark.text() + "    ", Style.SUBTLE));
    }
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(pages.width());
    PdfPCell cell = Cells.of(words);
    cell.setPaddingTop(used.isEmpty() ? 0 : 6);
    table.addCell(cell);
    return table;
  }

  /** The lines that found no room in the grid, by day, in columns over as many pages as needed. */
  private void addList(MonthPage month, MonthLayout layout) {
    MarkedLines fields = new MarkedLines(type, LIST_SIZE_PT);
    CellText words = new CellText(report.language());
    ColumnText column = new ColumnText(pages.writer().getDirectContent());
    for (LocalDate date : layout.overfull()) {
      List<MonthPage.Line> lines = layout.lines(date);
      PdfPTable table = Cells.table(1);
      table.setSpacingAfter(10);
      table.addCell(
          Cells.padded(
              Cells.of(
                  type.phrase(labels.of("continued", words.of(new Cell.Day(date))), Style.STRONG)),
              0,
              3));
      table.setHeaderRows(1);
      for (MonthPage.Line line : lines.subList(layout.shown(date), lines.size())) {
        // One field each: a column may end anywhere, and the next one must name the kind again.
        fields.add(table, List.of(line), listWidth());
      }
      column.addElement(table);
    }
    boolean more = true;
    while (more) {
      pages.newPage(true);
      pages.add(pages.heading(labels.of("continued", month.title()), Style.HEADING));
      pages.addGap(6);
      more = fill(column);
      pages.full();
    }
  }

  private float listWidth() {
    return (pages.width() - (LIST_COLUMNS - 1) * LIST_GUTTER) / LIST_COLUMNS;
  }

  /** Fills the rest of the page, column by column; tells whether there is more. */
  private boolean fill(ColumnText column) {
    float width = listWidth();
    for (int i = 0; i < LIST_COLUMNS; i++) {
      float left = Pages.SIDE + i * (width + LIST_GUTTER);
      column.setSimpleColumn(
          left, pages.bottom(), left + width, pages.bottom() + pages.spaceLeft());
      if (!ColumnText.hasMoreText(column.go())) {
        return false;
      }
    }
    return true;
  }
}
