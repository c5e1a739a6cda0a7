package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Image;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Color;
import java.time.LocalDate;
import java.util.Locale;
import org.hibernacle.report.Strips;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/** The strips of all plants, several to a page; patterns and months are named on each page. */
final class StripTable {
  private static final float EDGE = 2;
  private static final float SAMPLE_WIDTH = 26;
  private static final float SAMPLE_HEIGHT = 11;
  private static final Style MONTH = Style.COLUMN_HEADING;

  private final Pages pages;
  private final Typefaces type;
  private final Locale language;

  StripTable(Pages pages, Typefaces type, Words words) {
    this.pages = pages;
    this.type = type;
    this.language = words.locale();
  }

  void add(Strips strips) {
    pages.newPage(false);
    pages.bookmark(pages.root(), strips.title());
    PdfPTable head = pages.heading(strips.title(), Style.HEADING);
    for (String line : strips.intro()) {
      head.addCell(Cells.padded(Cells.of(type.phrase(line, Style.BODY)), 0, 2));
    }
    head.addCell(Cells.gap(4));
    pages.add(head);
    TimeAxis axis =
        new TimeAxis(strips.from(), strips.toExclusive(), EDGE, pages.width() - 2 * EDGE);
    StripDrawing drawing = new StripDrawing(type, axis);
    PdfPTable table = Cells.table(1);
    table.setSplitRows(false);
    table.addCell(Cells.of(samples(strips)));
    table.addCell(picture(months(axis)));
    table.setHeaderRows(2);
    for (Strips.Strip strip : strips.plants()) {
      PdfPTable block = new PdfPTable(1);
      block.addCell(Cells.padded(Cells.of(name(strip)), EDGE, 2));
      block.addCell(picture(drawing.draw(pages.writer(), strip)));
      block.addCell(Cells.padded(Cells.of(type.phrase(strip.words(), Style.SUBTLE)), EDGE, 1));
      PdfPCell cell = Cells.of(block);
      cell.setPaddingBottom(5);
      table.addCell(cell);
    }
    pages.add(table);
    pages.full();
  }

  private Phrase name(Strips.Strip strip) {
    Style style =
        strip.role() == StyleRole.PLAIN ? Style.STRONG : Style.STRONG.in(strip.role()).asBold();
    return type.phrase(strip.id() + "  " + strip.name(), style);
  }

  private PdfPTable samples(Strips strips) {
    int count = strips.samples().size() + 1;
    float[] widths = new float[2 * count];
    float words = (pages.width() - count * SAMPLE_WIDTH) / (count + 1.6f);
    for (int i = 0; i < count; i++) {
      widths[2 * i] = SAMPLE_WIDTH + 5;
      widths[2 * i + 1] = i == count - 1 ? 2.6f * words - 5 * count : words;
    }
    PdfPTable table = new PdfPTable(widths);
    for (Strips.Sample sample : strips.samples()) {
      PdfTemplate canvas = PdfTemplate.createTemplate(pages.writer(), SAMPLE_WIDTH, SAMPLE_HEIGHT);
      StandPattern.draw(
          canvas,
          type.palette().look(sample.role()),
          sample.stand(),
          0.5f,
          0.5f,
          SAMPLE_WIDTH - 1,
          SAMPLE_HEIGHT - 1);
      sample(table, canvas, sample.word());
    }
    sample(table, ownDays(), strips.ownDays());
    return table;
  }

  private PdfTemplate ownDays() {
    PdfTemplate canvas = PdfTemplate.createTemplate(pages.writer(), SAMPLE_WIDTH, SAMPLE_HEIGHT);
    Color ink = new Color(type.ink(Style.BODY));
    canvas.setColorStroke(ink);
    canvas.setColorFill(ink);
    canvas.setLineWidth(0.8f);
    float y = SAMPLE_HEIGHT / 2;
    canvas.moveTo(2, y);
    canvas.lineTo(SAMPLE_WIDTH - 2, y);
    for (float end : new float[] {2, SAMPLE_WIDTH - 2}) {
      canvas.moveTo(end, y - 2);
      canvas.lineTo(end, y + 2);
    }
    canvas.stroke();
    canvas.circle(SAMPLE_WIDTH / 2, y, 2);
    canvas.fill();
    return canvas;
  }

  private void sample(PdfPTable table, PdfTemplate canvas, String word) {
    table.addCell(picture(canvas));
    PdfPCell cell = Cells.of(type.phrase(word, Style.SUBTLE));
    cell.setPaddingBottom(3);
    table.addCell(cell);
  }

  private PdfTemplate months(TimeAxis axis) {
    float height = 16;
    PdfTemplate canvas =
        PdfTemplate.createTemplate(pages.writer(), axis.width() + 2 * EDGE, height);
    for (LocalDate month : axis.months()) {
      String name = axis.name(month, type, MONTH, language);
      ColumnText.showTextAligned(
          canvas, Element.ALIGN_LEFT, type.phrase(name, MONTH), axis.x(month) + 1, 5, 0);
    }
    canvas.setLineWidth(1.2f);
    canvas.setColorStroke(new Color(type.ink(Style.HEADING)));
    canvas.moveTo(axis.left(), 0.6f);
    canvas.lineTo(axis.left() + axis.width(), 0.6f);
    canvas.stroke();
    return canvas;
  }

  private static PdfPCell picture(PdfTemplate drawing) {
    PdfPCell cell = new PdfPCell(Image.getInstance(drawing), false);
    cell.setBorder(0);
    cell.setPadding(0);
    return cell;
  }
}
