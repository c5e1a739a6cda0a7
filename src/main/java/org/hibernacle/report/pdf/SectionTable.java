package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Section;
import org.hibernacle.report.StyleRole;

/**
 * Any section as a table: headings on each page, no row over the edge of a page. A section for
 * paper alone is to be handed out, so it has its pages to itself.
 */
final class SectionTable {
  /** This column is long: it goes on a line of its own below the row. */
  private static final String REASON_COLUMN = "why";

  /** A longer word may be broken, in points. */
  private static final float LONGEST_WORD = 170;

  private static final float GAP_ABOVE = 16;
  private static final float SHORT_TABLE = 220;
  private static final int FIRST_ROWS = 3;

  private final Pages pages;
  private final Typefaces type;
  private final CellBoxes boxes;
  private final Section section;
  private final List<Integer> columns;
  private final List<Integer> reasons;

  SectionTable(Pages pages, Typefaces type, CellBoxes boxes, Section section) {
    this.pages = pages;
    this.type = type;
    this.boxes = boxes;
    this.section = section;
    columns = printed(false);
    reasons = printed(true);
  }

  private List<Integer> printed(boolean reason) {
    return IntStream.range(0, section.columns().size())
        .filter(i -> section.columns().get(i).media().contains(Section.Medium.PDF))
        .filter(i -> section.columns().get(i).id().equals(REASON_COLUMN) == reason)
        .boxed()
        .toList();
  }

  /** Adds title, introduction and table; nothing for a section that says nothing. */
  void add() {
    if (section.rows().isEmpty() && section.intro().isEmpty()) {
      return;
    }
    ColumnWidths widths = measure();
    boolean landscape = widths.leastTotal() > pages.portraitWidth();
    float width = landscape ? pages.landscapeWidth() : pages.portraitWidth();
    PdfPTable head = head(width);
    PdfPTable table = table(widths.share(width), width);
    boolean empty = section.rows().isEmpty();
    boolean handOut = section.media().equals(Set.of(Section.Medium.PDF));
    if (handOut) {
      pages.full();
    }
    pages.room(landscape, GAP_ABOVE + head.getTotalHeight() + (empty ? 0 : unparted(table)));
    if (!pages.atTop()) {
      pages.addGap(GAP_ABOVE);
    }
    pages.bookmark(pages.root(), section.title());
    pages.add(head);
    if (!empty) {
      pages.add(table);
    }
    if (handOut) {
      pages.full();
    }
  }

  /** Height that stays with the heading: a short table, or else a few rows of a long one. */
  private static float unparted(PdfPTable table) {
    if (table.getTotalHeight() <= SHORT_TABLE) {
      return table.getTotalHeight();
    }
    float height = 0;
    for (int i = 0; i <= Math.min(FIRST_ROWS, table.size() - 1); i++) {
      height += table.getRowHeight(i);
    }
    return Math.min(height, SHORT_TABLE);
  }

  private PdfPTable head(float width) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width);
    table.addCell(Cells.padded(Cells.of(type.phrase(section.title(), Style.HEADING)), 0, 4));
    for (String line : section.intro()) {
      PdfPCell cell = Cells.of(type.phrase(line, Style.BODY));
      cell.setPaddingBottom(4);
      table.addCell(cell);
    }
    table.addCell(Cells.gap(4));
    return table;
  }

  private PdfPTable table(float[] widths, float width) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width);
    table.addCell(Cells.of(headings(widths)));
    table.setHeaderRows(1);
    for (Section.Row row : section.rows()) {
      table.addCell(block(row, widths));
    }
    return table;
  }

  private PdfPTable headings(float[] widths) {
    PdfPTable table = new PdfPTable(widths);
    for (int column : columns) {
      PdfPCell cell =
          Cells.padded(
              Cells.of(type.phrase(heading(column), Style.COLUMN_HEADING)),
              CellBoxes.ACROSS,
              CellBoxes.DOWN);
      if (isNumeric(column)) {
        CellBoxes.number(cell);
      }
      cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
      table.addCell(Cells.ruled(cell, Rectangle.BOTTOM, 1.2f, Style.HEADING.color()));
    }
    return table;
  }

  /** A row and, below it, its reason; never parted. */
  private PdfPCell block(Section.Row row, float[] widths) {
    PdfPTable table = new PdfPTable(widths);
    for (int i = 0; i < widths.length; i++) {
      table.addCell(boxes.box(row.cells().get(columns.get(i)), i == 0, widths[i]));
    }
    for (int reason : reasons) {
      PdfPCell cell = Cells.of(type.phrase(boxes.text(row.cells().get(reason)), Style.SUBTLE));
      Cells.padded(cell, CellBoxes.ACROSS, 0).setPaddingBottom(CellBoxes.DOWN + 2);
      cell.setColspan(widths.length);
      table.addCell(cell);
    }
    PdfPCell block = Cells.of(table);
    if (row.role() == StyleRole.DANGER || row.role() == StyleRole.CAUTION) {
      Cells.dressed(block, Looks.of(row.role()));
    }
    return Cells.ruled(block, Rectangle.BOTTOM, 0.5f, Looks.HAIRLINE);
  }

  private ColumnWidths measure() {
    List<Float> least = new ArrayList<>();
    List<Float> best = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      int column = columns.get(i);
      float word = boxes.widestWord(heading(column), Style.COLUMN_HEADING) + 2 * CellBoxes.ACROSS;
      float line = type.width(heading(column), Style.COLUMN_HEADING) + CellBoxes.ACROSS;
      line += isNumeric(column) ? CellBoxes.AFTER_NUMBER : CellBoxes.ACROSS;
      for (Section.Row row : section.rows()) {
        Cell cell = row.cells().get(column);
        if (!(cell instanceof Cell.Gap)) {
          word = Math.max(word, boxes.narrowest(cell, i == 0));
          line = Math.max(line, boxes.oneLine(cell, i == 0));
        }
      }
      // One point to spare against rounding.
      least.add(Math.min(word, LONGEST_WORD) + 1);
      best.add(Math.max(line, word) + 1);
    }
    return new ColumnWidths(least, best);
  }

  private String heading(int column) {
    return section.columns().get(column).heading();
  }

  private boolean isNumeric(int column) {
    return section.rows().stream().anyMatch(r -> r.cells().get(column) instanceof Cell.Quantity);
  }
}
