package org.hibernacle.report.pdf;

import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.MonthPage;

/**
 * Lines of the calendar in coloured fields. Lines of one kind that follow each other share a field;
 * each field begins with the mark, so that it reads without colour.
 */
final class MarkedLines {
  /** From this width on the mark stands beside the lines, in points. */
  private static final float WIDE = 120;

  private static final float ACROSS = 5;
  private static final float DOWN = 2.5f;
  private static final float BAR = 2.5f;
  private static final float BETWEEN = 3;

  private final Typefaces type;
  private final float sizePt;

  MarkedLines(Typefaces type, float sizePt) {
    this.type = type;
    this.sizePt = sizePt;
  }

  /**
   * Adds the fields to a table of one column.
   *
   * @param width of that column, in points
   */
  void add(PdfPTable table, List<MonthPage.Line> lines, float width) {
    add(table, lines, width, width >= WIDE);
  }

  /**
   * The same with the mark beside the lines, if it is not too wide, or before and above them, which
   * leaves them all the width.
   */
  void add(PdfPTable table, List<MonthPage.Line> lines, float width, boolean beside) {
    int from = 0;
    while (from < lines.size()) {
      int to = from + 1;
      while (to < lines.size() && alike(lines.get(from), lines.get(to))) {
        to++;
      }
      List<MonthPage.Line> run = lines.subList(from, to);
      float mark = markWidth(run.get(0));
      if (beside && mark <= width / 3) {
        addBeside(table, run, mark, width - mark);
      } else {
        addBelow(table, run);
      }
      table.addCell(Cells.gap(BETWEEN));
      from = to;
    }
  }

  /** Width at which no word is broken where the mark stands above the lines, in points. */
  float narrowest(List<MonthPage.Line> lines) {
    float widest = 0;
    for (MonthPage.Line line : lines) {
      widest = Math.max(widest, type.width(line.mark(), text().asBold()));
      widest = Math.max(widest, widestWord(line.text()));
    }
    return widest + 3 * ACROSS + BAR + 1;
  }

  private float widestWord(String words) {
    return (float)
        LineEnds.BETWEEN_WORDS
            .splitAsStream(words)
            .mapToDouble(word -> type.width(word, text()))
            .max()
            .orElse(0);
  }

  /** The mark at the left, the lines at the right; one row each, so that a page may end between. */
  private void addBeside(PdfPTable table, List<MonthPage.Line> run, float mark, float text) {
    for (int i = 0; i < run.size(); i++) {
      PdfPTable row = new PdfPTable(new float[] {mark, text});
      row.addCell(field(i == 0 ? markOf(run.get(0)) : new Phrase(), run.get(0)));
      PdfPCell cell = Cells.padded(Cells.of(words(run.get(i))), ACROSS, DOWN);
      row.addCell(Cells.filled(cell, type.palette().look(run.get(0).role())));
      table.addCell(Cells.of(row));
    }
  }

  /** The mark before a single line, or above several. */
  private void addBelow(PdfPTable table, List<MonthPage.Line> run) {
    MonthPage.Line first = run.get(0);
    Phrase mark = markOf(first);
    if (run.size() == 1) {
      mark.addAll(type.phrase(" ", text()));
      mark.addAll(words(first));
      table.addCell(field(mark, first));
      return;
    }
    table.addCell(field(mark, first));
    for (MonthPage.Line line : run) {
      PdfPCell cell = field(words(line), first);
      cell.setPaddingLeft(2 * ACROSS + BAR);
      table.addCell(cell);
    }
  }

  private PdfPCell field(Phrase words, MonthPage.Line line) {
    PdfPCell cell = Cells.padded(Cells.of(words), ACROSS, DOWN);
    cell.setPaddingLeft(ACROSS + BAR);
    return Cells.dressed(cell, type.palette().look(line.role()));
  }

  private Phrase markOf(MonthPage.Line line) {
    return type.phrase(line.mark(), text().asBold().in(line.role()));
  }

  private Phrase words(MonthPage.Line line) {
    return type.phrase(line.text(), text());
  }

  private float markWidth(MonthPage.Line line) {
    return type.width(line.mark(), text().asBold()) + BAR + 2 * ACROSS + 1;
  }

  private Style text() {
    return Style.BODY.at(sizePt);
  }

  private static boolean alike(MonthPage.Line one, MonthPage.Line other) {
    return one.role() == other.role() && one.mark().equals(other.mark());
  }
}
