package org.hibernacle.report.pdf;

import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.MonthPage;

/**
 * What stands in one day's box of the calendar. Lines of one kind that follow each other share a
 * coloured field that begins with the mark in words.
 */
final class DayBox {
  /** Between the box's edge and what stands in it, in points. */
  static final float INSET = 3;

  private static final float BETWEEN = 3;

  private final Typefaces type;
  private final Labels labels;
  private final float sizePt;

  DayBox(Typefaces type, Labels labels, float sizePt) {
    this.type = type;
    this.labels = labels;
    this.sizePt = sizePt;
  }

  /**
   * The content of a day's box.
   *
   * @param shown how many of the lines; the rest is counted in words
   * @param width of the box without its inset
   */
  PdfPTable of(int day, List<MonthPage.Line> lines, int shown, float width) {
    PdfPTable table = new PdfPTable(1);
    table.setTotalWidth(width);
    table.addCell(dayNumber(day, !lines.isEmpty()));
    addLines(table, lines.subList(0, shown));
    if (shown < lines.size()) {
      Phrase more =
          type.phrase(labels.of("more", lines.size() - shown), Style.BODY.at(sizePt).asBold());
      table.addCell(Cells.padded(Cells.of(more), 0, 2));
    }
    return table;
  }

  /** Height of the whole box with all lines, in points. */
  float height(int day, List<MonthPage.Line> lines, float width) {
    return of(day, lines, lines.size(), width).getTotalHeight() + 2 * INSET;
  }

  /** How many lines can be shown in a box of that height. */
  int fitting(int day, List<MonthPage.Line> lines, float width, float height) {
    int shown = lines.size();
    while (shown > 0 && of(day, lines, shown, width).getTotalHeight() + 2 * INSET > height) {
      shown--;
    }
    return shown;
  }

  /** Adds the coloured fields of those lines to a table of one column. */
  void addLines(PdfPTable table, List<MonthPage.Line> lines) {
    int from = 0;
    while (from < lines.size()) {
      MonthPage.Line first = lines.get(from);
      int to = from + 1;
      while (to < lines.size() && alike(first, lines.get(to))) {
        to++;
      }
      addField(table, lines.subList(from, to));
      from = to;
    }
  }

  private void addField(PdfPTable table, List<MonthPage.Line> lines) {
    MonthPage.Line first = lines.get(0);
    Look look = Looks.of(first.role());
    Style mark = Style.BODY.at(sizePt).asBold().in(look.text());
    Style text = Style.BODY.at(sizePt);
    table.addCell(Cells.gap(BETWEEN));
    if (lines.size() == 1) {
      Phrase words = type.phrase(first.mark(), mark);
      words.addAll(type.phrase(" " + first.text(), text));
      table.addCell(Cells.dressed(Cells.padded(Cells.of(words), 4, 2), look));
      return;
    }
    table.addCell(
        Cells.dressed(Cells.padded(Cells.of(type.phrase(first.mark(), mark)), 4, 1.5f), look));
    for (MonthPage.Line line : lines) {
      PdfPCell cell = Cells.padded(Cells.of(type.phrase(line.text(), text)), 8, 1.5f);
      cell.setPaddingRight(4);
      table.addCell(Cells.dressed(cell, look));
    }
  }

  private PdfPCell dayNumber(int day, boolean busy) {
    Style style = busy ? Style.STRONG.at(15) : Style.BODY.at(12).in(Style.SUBTLE.color());
    return Cells.of(type.phrase(Integer.toString(day), style));
  }

  private static boolean alike(MonthPage.Line one, MonthPage.Line other) {
    return one.role() == other.role() && one.mark().equals(other.mark());
  }
}
