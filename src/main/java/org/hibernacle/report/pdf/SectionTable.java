package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.Set;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Palette;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Entry;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.pdf.CellBoxes.Weight;

/**
 * Any section as a table: headings on each page, no row over the edge of a page. A section for
 * paper alone is to be handed out, so it has its pages to itself.
 */
final class SectionTable {
  private static final float GAP_ABOVE = 16;
  private static final float SHORT_TABLE = 220;
  private static final int FIRST_ROWS = 3;
  private static final float BETWEEN_LINES = 1;

  private final Pages pages;
  private final Typefaces type;
  private final CellBoxes boxes;
  private final Section section;

  SectionTable(Pages pages, Typefaces type, CellBoxes boxes, Section section) {
    this.pages = pages;
    this.type = type;
    this.boxes = boxes;
    this.section = section;
  }

  /** Adds title, introduction and table; nothing for a section that says nothing. */
  void add() {
    add(true);
  }

  /** The same, as a part of something that has its bookmark. */
  void addWithoutBookmark() {
    add(false);
  }

  private void add(boolean bookmark) {
    if (section.rows().isEmpty() && section.intro().isEmpty()) {
      return;
    }
    PaperColumns columns = new PaperColumns(section, type, boxes, pages);
    float width = columns.landscape() ? pages.landscapeWidth() : pages.portraitWidth();
    PdfPTable head = head(width);
    PdfPTable table = table(columns, width);
    boolean empty = section.rows().isEmpty();
    boolean handOut = section.media().equals(Set.of(Section.Medium.PDF));
    if (handOut) {
      pages.full();
    }
    float together = GAP_ABOVE + head.getTotalHeight() + (empty ? 0 : unparted(table));
    pages.room(columns.landscape(), together);
    if (!pages.atTop()) {
      pages.addGap(GAP_ABOVE);
    }
    if (bookmark) {
      pages.bookmark(pages.root(), section.title());
    }
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

  private PdfPTable table(PaperColumns columns, float width) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width);
    table.addCell(Cells.of(headings(columns)));
    table.setHeaderRows(1);
    boolean grouped = section.isGrouped();
    Palette palette = type.palette();
    for (int i = 0; i < section.rows().size(); i++) {
      boolean again = section.continuesGroup(i);
      PdfPCell block = block(columns, section.rows().get(i), again);
      boolean newGroup = grouped && !again;
      Cells.ruled(
          block, Rectangle.TOP, newGroup ? 0.9f : 0.4f, newGroup ? palette.line() : palette.rule());
      table.addCell(block);
    }
    return table;
  }

  private PdfPTable headings(PaperColumns columns) {
    PdfPTable table = new PdfPTable(columns.widths());
    for (int column : columns.side()) {
      String heading = columns.column(column).heading();
      PdfPCell cell =
          Cells.padded(
              Cells.of(type.phrase(heading, Style.COLUMN_HEADING)),
              CellBoxes.ACROSS,
              CellBoxes.DOWN);
      if (columns.isNumeric(column)) {
        CellBoxes.number(cell);
      } else if (columns.column(column).entry().equals(Entry.TICK)) {
        cell.setHorizontalAlignment(Element.ALIGN_CENTER);
      }
      cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
      table.addCell(Cells.ruled(cell, Rectangle.BOTTOM, 1.2f, type.ink(Style.HEADING)));
    }
    return table;
  }

  /** A row and the lines below it; never parted. */
  private PdfPCell block(PaperColumns columns, Section.Row row, boolean again) {
    PdfPTable table = new PdfPTable(columns.widths());
    int place = 0;
    while (place < columns.side().size()) {
      int index = columns.side().get(place);
      Weight weight = again && place == 0 ? Weight.AGAIN : columns.weight(place);
      PdfPCell cell = boxes.box(columns.column(index), row.cells().get(index), weight);
      int taken = taken(columns, row, place);
      cell.setColspan(taken);
      table.addCell(cell);
      place += taken;
    }
    for (String line : columns.below(row)) {
      PdfPCell cell = Cells.padded(Cells.of(type.phrase(line, Style.SUBTLE)), CellBoxes.ACROSS, 0);
      cell.setPaddingBottom(BETWEEN_LINES);
      cell.setLeading(0, 1.15f);
      cell.setColspan(columns.side().size());
      table.addCell(cell);
    }
    PdfPCell block = Cells.of(table);
    block.setPaddingBottom(columns.below(row).isEmpty() ? 0 : BETWEEN_LINES);
    if (row.role() == StyleRole.DANGER || row.role() == StyleRole.CAUTION) {
      Cells.dressed(block, type.palette().look(row.role()));
    }
    return block;
  }

  /** How many columns a cell takes: words too long for their own run on over empty ones. */
  private int taken(PaperColumns columns, Section.Row row, int place) {
    Cell cell = row.cells().get(columns.side().get(place));
    int taken = 1;
    if (cell instanceof Cell.Text
        && boxes.oneLine(cell, columns.weight(place)) > columns.widths()[place]) {
      while (place + taken < columns.side().size() && columns.isFree(row, place + taken)) {
        taken++;
      }
    }
    return taken;
  }
}
