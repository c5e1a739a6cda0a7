package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.PdfPCell;
import java.util.List;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Entry;
import org.hibernacle.report.StyleRole;

/** How each kind of cell stands in a table, and how wide it wants to be. */
final class CellBoxes {
  /** Left and right of the words, in points. */
  static final float ACROSS = 4;

  /** Above and below the words, in points. */
  static final float DOWN = 2.5f;

  /** Keeps a number at the right from running into the words that follow, in points. */
  static final float AFTER_NUMBER = 7;

  /** Height of capital letters and accents as a share of the size. */
  private static final float ASCENT = 0.93f;

  /** U+2610, an empty box to be ticked. */
  static final String TICK_BOX = "\u2610";

  private final Typefaces type;
  private final Display display;

  CellBoxes(Typefaces type, Display display) {
    this.type = type;
    this.display = display;
  }

  /** As printed; nothing for a gap. */
  String text(Cell cell) {
    return display.text(cell);
  }

  /**
   * A cell of a table.
   *
   * @param column that it stands in
   * @param weight of its words
   */
  PdfPCell box(Column column, Cell cell, Weight weight) {
    if (column.entry().equals(Entry.TICK) && cell instanceof Cell.Gap) {
      PdfPCell tick = padded(TICK_BOX, Style.STRONG);
      tick.setHorizontalAlignment(Element.ALIGN_CENTER);
      return tick;
    }
    PdfPCell box = padded(text(cell), style(cell, weight));
    if (cell instanceof Cell.Level level) {
      Cells.filled(box, type.palette().look(level.role()));
    } else if (cell instanceof Cell.Quantity quantity && quantity.role() != StyleRole.PLAIN) {
      Cells.filled(box, type.palette().look(quantity.role()));
    } else if (cell instanceof Cell.Day && column.role() != StyleRole.PLAIN) {
      Cells.filled(box, type.palette().look(column.role()));
    }
    return cell instanceof Cell.Quantity ? number(box) : box;
  }

  private PdfPCell padded(String text, Style style) {
    PdfPCell box = Cells.padded(Cells.of(type.phrase(text, style)), ACROSS, DOWN);
    // Letters of all sizes stand on one line.
    box.setPaddingTop(DOWN + (Style.STRONG.sizePt() - style.sizePt()) * ASCENT);
    return box;
  }

  /** Moves a number, or the heading of numbers, to the right. */
  static PdfPCell number(PdfPCell box) {
    box.setPaddingRight(AFTER_NUMBER);
    return Cells.right(box);
  }

  /** Width on one line, in points. */
  float oneLine(Cell cell, Weight weight) {
    float across = cell instanceof Cell.Quantity ? ACROSS + AFTER_NUMBER : 2 * ACROSS;
    return type.width(text(cell), style(cell, weight)) + across;
  }

  /** Width below which a word would be broken; numbers and days stand on one line. */
  float narrowest(Cell cell, Weight weight) {
    return cell instanceof Cell.Text || cell instanceof Cell.Level
        ? widestWord(text(cell), style(cell, weight)) + 2 * ACROSS
        : oneLine(cell, weight);
  }

  /** Widths of the words, each with the blank that follows, in points; a number is one word. */
  float[] words(Cell cell, Weight weight) {
    return cell instanceof Cell.Text || cell instanceof Cell.Level
        ? words(text(cell), style(cell, weight))
        : new float[] {oneLine(cell, weight)};
  }

  /** The same of a heading. */
  float[] words(String text, Style style) {
    float blank = type.width(" ", style);
    List<String> words = LineEnds.BETWEEN_WORDS.splitAsStream(text).toList();
    float[] widths = new float[words.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = type.width(words.get(i), style) + blank;
    }
    return widths;
  }

  /** Width of the widest word, in points. */
  float widestWord(String text, Style style) {
    return (float)
        LineEnds.BETWEEN_WORDS
            .splitAsStream(text)
            .mapToDouble(word -> type.width(word, style))
            .max()
            .orElse(0);
  }

  private Style style(Cell cell, Weight weight) {
    if (weight == Weight.AGAIN) {
      return Style.SUBTLE;
    } else if (cell instanceof Cell.Level level) {
      boolean bold = type.palette().look(level.role()).bold();
      return (bold ? Style.BODY.asBold() : Style.BODY).in(level.role());
    }
    return weight == Weight.NAME ? Style.STRONG : Style.BODY;
  }

  /** How much a cell's words weigh. */
  enum Weight {
    /** Names its row. */
    NAME,
    ORDINARY,
    /** Says what the row above says too. */
    AGAIN
  }
}
