package org.hibernacle.report.pdf;

import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;

/**
 * The calendar, to be hung on the wall: a landscape page a month, or two quiet months on a portrait
 * page.
 */
final class MonthPages {
  private static final float BETWEEN = 18;

  private final Pages pages;
  private final Typefaces type;
  private final Words words;
  private final SeasonReport report;

  MonthPages(Pages pages, Typefaces type, Words words, SeasonReport report) {
    this.pages = pages;
    this.type = type;
    this.words = words;
    this.report = report;
  }

  /**
   * A month with work.
   *
   * @param month to draw
   * @param idle months without work between the one before and this one
   */
  private record Busy(MonthPage month, List<MonthPage> idle) {}

  /** Adds the months from the first to the last with work; idle ones between are only named. */
  void add() {
    List<Busy> busy = busy();
    if (busy.isEmpty()) {
      return;
    }
    boolean firstTwo = quiet(busy, 0);
    pages.newPage(!firstTwo);
    PdfOutline calendar = pages.bookmark(pages.root(), words.text("paper.calendar"));
    int next = 0;
    while (next < busy.size()) {
      boolean two = quiet(busy, next);
      pages.newPage(!two);
      float height = two ? half() : pages.height(true);
      add(calendar, busy.get(next++), height);
      if (two) {
        pages.addGap(BETWEEN);
        add(calendar, busy.get(next++), height);
        pages.full();
      }
    }
  }

  private float half() {
    return (pages.height(false) - BETWEEN) / 2 - 2;
  }

  private List<Busy> busy() {
    List<Busy> busy = new ArrayList<>();
    List<MonthPage> idle = new ArrayList<>();
    for (MonthPage month : report.months()) {
      if (month.entries().stream().anyMatch(e -> !e.lines().isEmpty())) {
        busy.add(new Busy(month, List.copyOf(idle)));
        idle.clear();
      } else if (!busy.isEmpty()) {
        idle.add(month);
      }
    }
    return busy;
  }

  /** Whether this month and the next have so little to do that half a page is enough for each. */
  private boolean quiet(List<Busy> busy, int index) {
    return index + 1 < busy.size()
        && layout(busy.get(index), pages.portraitWidth(), half()).isRoomy()
        && layout(busy.get(index + 1), pages.portraitWidth(), half()).isRoomy();
  }

  private MonthLayout layout(Busy busy, float width, float height) {
    float above = above(busy, width).getTotalHeight() + grid().headingHeight() + 2;
    return new MonthLayout(busy.month(), report.weekStart(), type, words, width, height - above);
  }

  private MonthGrid grid() {
    return new MonthGrid(type, report.language());
  }

  private PdfPTable above(Busy busy, float width) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width);
    if (!busy.idle().isEmpty()) {
      String idle = busy.idle().stream().map(MonthPage::title).collect(words.listing());
      String nothing = words.text("paper.nothing", idle);
      table.addCell(Cells.padded(Cells.of(type.phrase(nothing, Style.SUBTLE.at(10))), 0, 4));
    }
    table.addCell(Cells.padded(Cells.of(type.phrase(busy.month().title(), Style.MONTH)), 0, 4));
    return table;
  }

  private void add(PdfOutline calendar, Busy busy, float height) {
    busy.idle().forEach(month -> pages.bookmark(calendar, month.title()));
    pages.bookmark(calendar, busy.month().title());
    pages.add(above(busy, pages.width()));
    MonthLayout layout = layout(busy, pages.width(), height);
    pages.add(grid().draw(busy.month().month(), layout));
    if (!layout.overfull().isEmpty()) {
      new MonthList(pages, type, words).add(busy.month(), layout);
    }
  }
}
