package org.hibernacle.report.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.report.Words;

/**
 * What stands at the head and foot of each page. How many pages there are is known only at the end,
 * so each foot keeps an empty box until then.
 */
final class PageFrame extends PdfPageEventHelper {
  /** From the edge of the paper; printers reach this far. */
  static final float EDGE = 28;

  private static final float GAP = 8;

  /** More pages than there will be. */
  private static final int MANY = 999;

  private final Imprint imprint;
  private final Typefaces type;
  private final Words words;
  private final Style style;
  private final float countWidth;
  private final List<PdfTemplate> counts = new ArrayList<>();

  PageFrame(Imprint imprint, Typefaces type, Words words) {
    this(imprint, type, words, Style.FRAME);
  }

  /** With words of another size. */
  PageFrame(Imprint imprint, Typefaces type, Words words, Style style) {
    this.style = style;
    this.imprint = imprint;
    this.type = type;
    this.words = words;
    this.countWidth = type.width(count(words, MANY, MANY), style.asBold()) + 1;
  }

  /** From the edge of the paper to the first line below the head, in points. */
  float topMargin(float width) {
    return EDGE + head(width).getTotalHeight() + GAP;
  }

  /** From the edge of the paper to the last line above the foot, in points. */
  float bottomMargin(float width) {
    return EDGE + foot(width).getTotalHeight() + GAP;
  }

  @Override
  public void onEndPage(PdfWriter writer, Document document) {
    float width = document.right() - document.left();
    int page = writer.getPageNumber();
    if (page > 1) {
      // The first page bears the title in large letters.
      head(width)
          .writeSelectedRows(
              0,
              -1,
              document.left(),
              document.getPageSize().getTop() - EDGE,
              writer.getDirectContent());
    }
    PdfPTable foot = foot(width);
    float height = foot.getTotalHeight();
    PdfContentByte content = writer.getDirectContent();
    foot.writeSelectedRows(0, -1, document.left(), EDGE + height, content);
    PdfTemplate count = content.createTemplate(countWidth, height);
    content.addTemplate(count, document.right() - countWidth, EDGE);
    counts.add(count);
  }

  @Override
  public void onCloseDocument(PdfWriter writer, Document document) {
    for (int page = 1; page <= counts.size(); page++) {
      PdfTemplate count = counts.get(page - 1);
      PdfPTable table = Cells.table(1);
      table.setTotalWidth(countWidth);
      table.addCell(Cells.right(line(count(words, page, counts.size()), style.asBold(), 0)));
      table.writeSelectedRows(0, -1, 0, count.getHeight(), count);
    }
  }

  private static String count(Words words, int page, int pages) {
    return words.text("paper.page", page, pages);
  }

  private PdfPTable head(float width) {
    PdfPTable table = Cells.table(1, 1);
    table.setTotalWidth(width);
    table.addCell(line(imprint.title(), style.asBold(), Rectangle.BOTTOM));
    table.addCell(Cells.right(line(imprint.subtitle(), style, Rectangle.BOTTOM)));
    return table;
  }

  private PdfPTable foot(float width) {
    PdfPTable table = Cells.table(width - countWidth, countWidth);
    table.setTotalWidth(width);
    table.addCell(line(imprint.pageFooter(), style, Rectangle.TOP));
    table.addCell(line("", style, Rectangle.TOP));
    return table;
  }

  private PdfPCell line(String text, Style weight, int side) {
    return Cells.ruled(
        Cells.padded(Cells.of(type.phrase(text, weight)), 0, 3), side, 0.5f, type.palette().line());
  }
}
