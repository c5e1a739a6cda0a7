package org.hibernacle.report.pdf;

import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.hibernacle.report.HandOut;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Words;

/** Draws the hand-out in large letters, with boxes to tick and lines to write on. */
public final class HandOutPdf {
  private static final float SIZE_PT = 12;
  private static final Style TEXT = Style.BODY.at(SIZE_PT);
  private static final Style LABEL = TEXT.asBold();
  private static final Style TITLE = Style.TITLE.at(22);
  private static final Style FRAME = Style.FRAME.at(SIZE_PT);
  private static final float MARK_WIDTH = 20;
  private static final float DOWN = 2;
  private static final float WRITING_LINE = 22;

  private final HandOut handOut;
  private final Typefaces type;

  private HandOutPdf(HandOut handOut, Typefaces type) {
    this.handOut = handOut;
    this.type = type;
  }

  /**
   * Writes the first edition that fits {@link HandOut#MOST_PAGES}, or the last one. The stream
   * stays open; nothing reaches it unless the whole file could be laid out.
   *
   * @param editions the fullest first; never empty
   * @param palette colours of all pages
   * @param font for characters that the program's own fonts lack
   */
  public static CalendarPdf.Result write(
      List<HandOut> editions, Palette palette, Optional<PaperFont> font, OutputStream out)
      throws IOException {
    int pages = Integer.MAX_VALUE;
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    Typefaces type = new Typefaces(palette, font);
    for (HandOut edition : editions) {
      type = new Typefaces(palette, font);
      HandOutPdf pdf = new HandOutPdf(edition, type);
      file.reset();
      pages = pdf.layOut(file);
      if (pages <= HandOut.MOST_PAGES) {
        break;
      }
    }
    file.writeTo(out);
    return new CalendarPdf.Result(type.missing(), pages);
  }

  private int layOut(OutputStream out) {
    Imprint imprint = Imprint.of(handOut);
    Words words = Words.of(handOut.language());
    Pages pages = new Pages(imprint, new PageFrame(imprint, type, words, FRAME), type, out);
    pages.add(title());
    for (HandOut.Part part : handOut.parts()) {
      pages.addGap(8);
      PdfPTable table = table(part, pages.width());
      pages.room(false, table.getRowHeight(0) + DOWN);
      pages.bookmark(pages.root(), part.title());
      pages.add(table);
    }
    return pages.close();
  }

  private PdfPTable title() {
    PdfPTable table = Cells.table(1);
    PdfPCell title = Cells.padded(Cells.of(type.phrase(handOut.title(), TITLE)), 0, 8);
    table.addCell(Cells.ruled(title, Rectangle.TOP, 4, type.ink(TITLE)));
    table.addCell(Cells.of(type.phrase(handOut.subtitle(), Style.SUBTITLE)));
    return table;
  }

  private PdfPTable table(HandOut.Part part, float width) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width);
    table.setSplitRows(false);
    PdfPCell heading =
        Cells.padded(
            Cells.of(type.phrase(part.title(), Style.HEADING.at(14).in(part.role()))), 4, 3);
    PdfPTable block = new PdfPTable(1);
    block.addCell(Cells.filled(heading, type.palette().look(part.role())));
    for (HandOut.Item item : part.items()) {
      block.addCell(Cells.of(row(item, width)));
      // What heads others is not parted from the first of them.
      if (item.kind() != HandOut.Kind.LEAD) {
        table.addCell(Cells.of(block));
        block = new PdfPTable(1);
      }
    }
    return table;
  }

  private PdfPTable row(HandOut.Item item, float width) {
    if (item.kind() == HandOut.Kind.BLANK) {
      return blank(item, width);
    }
    PdfPTable row = new PdfPTable(new float[] {MARK_WIDTH, width - MARK_WIDTH});
    PdfPCell words = Cells.padded(Cells.of(words(item)), 0, DOWN);
    if (item.kind() == HandOut.Kind.LEAD) {
      words.setPaddingLeft(4);
      words.setPaddingTop(3 * DOWN);
      words.setColspan(2);
      row.addCell(words);
      return row;
    }
    String mark = item.kind() == HandOut.Kind.TICK ? CellBoxes.TICK_BOX : "\u2022";
    PdfPCell box = Cells.padded(Cells.of(type.phrase(mark, LABEL)), 4, DOWN);
    row.addCell(box);
    row.addCell(words);
    return row;
  }

  private Phrase words(HandOut.Item item) {
    if (item.label().isEmpty()) {
      return type.phrase(item.text(), TEXT);
    }
    Phrase phrase = type.phrase(item.label(), LABEL);
    if (!item.text().isEmpty()) {
      phrase.addAll(type.phrase(" " + item.text(), TEXT));
    }
    return phrase;
  }

  private PdfPTable blank(HandOut.Item item, float width) {
    PdfPTable row = new PdfPTable(new float[] {width * 0.4f, width * 0.6f});
    PdfPCell label = Cells.padded(Cells.of(words(item)), 4, 5);
    label.setMinimumHeight(WRITING_LINE);
    row.addCell(label);
    PdfPCell line = Cells.gap(WRITING_LINE);
    row.addCell(Cells.ruled(line, Rectangle.BOTTOM, 0.8f, type.palette().line()));
    return row;
  }
}
