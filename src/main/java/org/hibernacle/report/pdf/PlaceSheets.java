package org.hibernacle.report.pdf;

import com.lowagie.text.Image;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import org.hibernacle.report.PlacePage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/** A page for each place, to be hung up there. */
final class PlaceSheets {
  private static final float CHART = 96;
  private static final float SIZE_PT = 11;

  private final Pages pages;
  private final Typefaces type;
  private final CellBoxes boxes;
  private final Words words;

  PlaceSheets(Pages pages, Typefaces type, CellBoxes boxes, Words words) {
    this.pages = pages;
    this.type = type;
    this.boxes = boxes;
    this.words = words;
  }

  void add(List<PlacePage> places) {
    if (places.isEmpty()) {
      return;
    }
    pages.newPage(false);
    PdfOutline all = pages.bookmark(pages.root(), words.text("paper.places"));
    for (PlacePage place : places) {
      pages.newPage(false);
      pages.bookmark(all, place.title());
      add(place);
      pages.full();
    }
  }

  private void add(PlacePage place) {
    PdfPTable head = pages.heading(place.title(), Style.MONTH);
    PdfPCell kind = Cells.of(type.phrase(place.subtitle(), Style.SUBTITLE));
    kind.setPaddingBottom(6);
    head.addCell(kind);
    pages.add(head);
    pages.add(facts(place.facts()));
    pages.add(chart(place.room()));
    for (Section table : place.tables()) {
      new SectionTable(pages, type, boxes, table).addWithoutBookmark();
    }
  }

  private PdfPTable facts(List<SeasonReport.Fact> facts) {
    PdfPTable table = Cells.table(3, 7);
    table.setSplitRows(false);
    for (SeasonReport.Fact fact : facts) {
      boolean plain = fact.role() == StyleRole.PLAIN;
      Style style = Style.BODY.at(SIZE_PT);
      PdfPCell label =
          Cells.padded(Cells.of(type.phrase(fact.label(), Style.SUBTLE.at(SIZE_PT))), 4, 3);
      PdfPCell text =
          Cells.padded(
              Cells.of(type.phrase(fact.text(), plain ? style : style.asBold().in(fact.role()))),
              4,
              3);
      if (!plain) {
        Cells.filled(text, type.palette().look(fact.role()));
      }
      table.addCell(Cells.ruled(label, Rectangle.BOTTOM, 0.5f, type.palette().rule()));
      table.addCell(Cells.ruled(text, Rectangle.BOTTOM, 0.5f, type.palette().rule()));
    }
    return table;
  }

  private PdfPTable chart(PlacePage.RoomChart chart) {
    PdfPTable table = Cells.table(1);
    table.setKeepTogether(true);
    table.addCell(Cells.gap(10));
    table.addCell(Cells.padded(Cells.of(type.phrase(chart.title(), Style.COLUMN_HEADING)), 0, 2));
    PdfPCell picture =
        new PdfPCell(
            Image.getInstance(
                new RoomDrawing(type, words).draw(pages.writer(), chart, pages.width(), CHART)),
            false);
    picture.setBorder(0);
    picture.setPadding(0);
    table.addCell(picture);
    return table;
  }
}
