package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.awt.Color;
import org.hibernacle.report.Palette;

/** Table cells with our defaults: no border, generous leading, ink centred in the box. */
final class Cells {
  /** Leading as a multiple of the size of the letters. */
  static final float LEADING = 1.2f;

  private Cells() {}

  static PdfPCell of(Phrase words) {
    PdfPCell cell = new PdfPCell(words);
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(0);
    cell.setLeading(0, LEADING);
    cell.setUseAscender(true);
    cell.setUseDescender(true);
    return cell;
  }

  static PdfPCell of(PdfPTable inner) {
    PdfPCell cell = new PdfPCell(inner);
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(0);
    return cell;
  }

  static PdfPCell padded(PdfPCell cell, float across, float down) {
    cell.setPaddingLeft(across);
    cell.setPaddingRight(across);
    cell.setPaddingTop(down);
    cell.setPaddingBottom(down);
    return cell;
  }

  static PdfPCell right(PdfPCell cell) {
    cell.setHorizontalAlignment(Element.ALIGN_RIGHT);
    return cell;
  }

  static PdfPCell ruled(PdfPCell cell, int sides, float width, int rgb) {
    Color color = new Color(rgb);
    cell.setBorder(cell.getBorder() | sides);
    if ((sides & Rectangle.TOP) != 0) {
      cell.setBorderWidthTop(width);
      cell.setBorderColorTop(color);
    }
    if ((sides & Rectangle.BOTTOM) != 0) {
      cell.setBorderWidthBottom(width);
      cell.setBorderColorBottom(color);
    }
    if ((sides & Rectangle.LEFT) != 0) {
      cell.setBorderWidthLeft(width);
      cell.setBorderColorLeft(color);
    }
    return cell;
  }

  /** A role's pale fill. */
  static PdfPCell filled(PdfPCell cell, Palette.Look look) {
    cell.setBackgroundColor(new Color(look.fill()));
    return cell;
  }

  /** A role's pale fill with its dark bar at the left. */
  static PdfPCell dressed(PdfPCell cell, Palette.Look look) {
    filled(cell, look);
    return ruled(cell, Rectangle.LEFT, 2.5f, look.ink());
  }

  static PdfPCell gap(float height) {
    PdfPCell cell = of(new Phrase());
    cell.setFixedHeight(height);
    return cell;
  }

  /** A table over the whole width. */
  static PdfPTable table(float... widths) {
    PdfPTable table = new PdfPTable(widths);
    table.setWidthPercentage(100);
    return table;
  }
}
