package org.hibernacle.report.pdf;

import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.PdfPCell;
import java.util.Locale;
import java.util.regex.Pattern;
import org.hibernacle.report.Cell;

/** How each kind of cell stands in a table, and how wide it wants to be. */
final class CellBoxes {
  /** Left and right of the words, in points. */
  static final float ACROSS = 4;

  /** Above and below the words, in points. */
  static final float DOWN = 3;

  /** Keeps a number at the right from running into the words that follow, in points. */
  static final float AFTER_NUMBER = 12;

  /** Height of capital letters and accents as a share of the size. */
  private static final float ASCENT = 0.93f;

  private static final Pattern SPACE = Pattern.compile("\\s+");

  private final Typefaces type;
  private final CellText words;

  CellBoxes(Typefaces type, Locale language) {
    this.type = type;
    words = new CellText(language);
  }

  /** As printed. */
  String text(Cell cell) {
    return words.of(cell);
  }

  /**
   * A cell of a table.
   *
   * @param first whether it names its row
   * @param width of the column, in points
   */
  PdfPCell box(Cell cell, boolean first, float width) {
    Style style = style(cell, first);
    String text = words.of(cell);
    boolean noRoom = cell instanceof Cell.Gap && oneLine(cell, first) > width;
    PdfPCell box =
        Cells.padded(Cells.of(noRoom ? new Phrase() : type.phrase(text, style)), ACROSS, DOWN);
    // Letters of all sizes stand on one line.
    box.setPaddingTop(DOWN + (Style.STRONG.sizePt() - style.sizePt()) * ASCENT);
    if (cell instanceof Cell.Level level) {
      box.setBackgroundColor(Looks.of(level.role()).fill());
    }
    return cell instanceof Cell.Quantity ? number(box) : box;
  }

  /** Moves a number, or the heading of numbers, to the right. */
  static PdfPCell number(PdfPCell box) {
    box.setPaddingRight(AFTER_NUMBER);
    return Cells.right(box);
  }

  /** Width on one line, in points. */
  float oneLine(Cell cell, boolean first) {
    float across = cell instanceof Cell.Quantity ? ACROSS + AFTER_NUMBER : 2 * ACROSS;
    return type.width(words.of(cell), style(cell, first)) + across;
  }

  /** Width below which a word would be broken; only running words may go on several lines. */
  float narrowest(Cell cell, boolean first) {
    return cell instanceof Cell.Text text
        ? widestWord(text.text(), style(cell, first)) + 2 * ACROSS
        : oneLine(cell, first);
  }

  /** Width of the widest word, in points. */
  float widestWord(String text, Style style) {
    return (float)
        SPACE.splitAsStream(text).mapToDouble(word -> type.width(word, style)).max().orElse(0);
  }

  private static Style style(Cell cell, boolean first) {
    if (cell instanceof Cell.Level level) {
      return Style.BODY.asBold().in(Looks.of(level.role()).text());
    } else if (cell instanceof Cell.Gap) {
      return Style.SUBTLE;
    }
    return first || cell instanceof Cell.Day ? Style.STRONG : Style.BODY;
  }
}
