package org.hibernacle.report.pdf;

import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.Words;

/** What stands in one day's box of the calendar: its number and what there is to do. */
final class DayBox {
  /** Between the box's edge and what stands in it, in points. */
  static final float INSET = 3;

  private static final float NUMBER_WIDTH = 27;
  private static final Style BUSY_NUMBER = Style.STRONG.at(16);
  private static final Style IDLE_NUMBER = Style.BODY.at(12).in(Style.SUBTLE.role());

  private final Typefaces type;
  private final Words words;
  private final MarkedLines fields;
  private final float sizePt;

  DayBox(Typefaces type, Words words, float sizePt) {
    this.type = type;
    this.words = words;
    this.sizePt = sizePt;
    fields = new MarkedLines(type, sizePt);
  }

  float sizePt() {
    return sizePt;
  }

  /**
   * The content of a day's box: its number, and below it the lines, each kind below its mark, the
   * same in wide boxes and in narrow ones.
   *
   * @param shown how many of the lines; the rest is counted in words
   * @param width of the box without its inset, in points
   */
  PdfPTable of(int day, List<MonthPage.Line> lines, int shown, float width) {
    PdfPTable table = new PdfPTable(1);
    table.setTotalWidth(width);
    Style number = lines.isEmpty() ? IDLE_NUMBER : BUSY_NUMBER;
    table.addCell(Cells.of(type.phrase(Integer.toString(day), number)));
    table.addCell(Cells.gap(lines.isEmpty() ? 0.1f : 2));
    table.addCell(Cells.of(content(lines, shown, width)));
    return table;
  }

  private PdfPTable content(List<MonthPage.Line> lines, int shown, float width) {
    PdfPTable table = new PdfPTable(1);
    table.setTotalWidth(width);
    fields.add(table, lines.subList(0, shown), width, false);
    if (shown < lines.size()) {
      Phrase more =
          type.phrase(
              words.text("paper.more", lines.size() - shown), Style.BODY.at(sizePt).asBold());
      table.addCell(Cells.of(more));
    }
    // The last row takes up what is left of the box; it must not be a coloured one.
    table.addCell(Cells.gap(0.1f));
    return table;
  }

  /** Width without the inset below which a word would be broken, in points. */
  float narrowest(List<MonthPage.Line> lines) {
    return lines.isEmpty() ? NUMBER_WIDTH : Math.max(NUMBER_WIDTH, fields.narrowest(lines));
  }

  /** Height of the whole box with all lines, in points. */
  float height(int day, List<MonthPage.Line> lines, float width) {
    return height(day, lines, lines.size(), width);
  }

  /** How many lines can be shown in a box of that height. */
  int fitting(int day, List<MonthPage.Line> lines, float width, float height) {
    int shown = lines.size();
    while (shown > 0 && height(day, lines, shown, width) > height) {
      shown--;
    }
    return shown;
  }

  private float height(int day, List<MonthPage.Line> lines, int shown, float width) {
    return of(day, lines, shown, width).getTotalHeight() + 2 * INSET;
  }
}
