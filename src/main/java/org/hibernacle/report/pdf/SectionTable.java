package org.hibernacle.report.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Section;
import org.hibernacle.report.StyleRole;

/** Any section as a table: headings on each page, no row over the edge of a page. */
final class SectionTable {
  /** This column is long: it goes on a line of its own below the row. */
  private static final String REASON_COLUMN = "why";

  /** A wider cell is wrapped, in points. */
  private static final float WIDEST = 170;

  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final float ACROSS = 4;
  private static final float DOWN = 3;

  private final Pages pages;
  private final Typefaces type;
  private final CellText words;

  SectionTable(Pages pages, Typefaces type, Locale language) {
    this.pages = pages;
    this.type = type;
    words = new CellText(language);
  }

  void add(Section section) {
    if (section.rows().isEmpty() && section.intro().isEmpty()) {
      return;
    }
    List<Integer> columns = columns(section);
    ColumnWidths widths = measure(section, columns);
    boolean landscape = widths.leastTotal() > pages.portraitWidth();
    float width = landscape ? pages.landscapeWidth() : pages.portraitWidth();
    PdfPTable head = head(section, width);
    PdfPTable table = table(section, columns, widths.share(width), width);
    pages.room(landscape, head.getTotalHeight() + firstRow(table) + 12);
    if (!pages.atTop()) {
      pages.addGap(12);
    }
    pages.bookmark(pages.root(), section.title());
    pages.add(head);
    if (!section.rows().isEmpty()) {
      pages.add(table);
    }
  }

  private static float firstRow(PdfPTable table) {
    return table.size() < 2 ? 0 : table.getRowHeight(0) + table.getRowHeight(1);
  }

  private PdfPTable head(Section section, float width) {
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

  private PdfPTable table(Section section, List<Integer> columns, float[] widths, float width) {
    PdfPTable table = Cells.table(1);
    table.setTotalWidth(width);
    table.addCell(Cells.of(headings(section, columns, widths)));
    table.setHeaderRows(1);
    for (Section.Row row : section.rows()) {
      table.addCell(block(section, row, columns, widths));
    }
    return table;
  }

  private PdfPTable headings(Section section, List<Integer> columns, float[] widths) {
    PdfPTable table = new PdfPTable(widths);
    for (int column : columns) {
      PdfPCell cell =
          Cells.of(type.phrase(section.columns().get(column).heading(), Style.COLUMN_HEADING));
      if (isNumeric(section, column)) {
        Cells.right(cell);
      }
      cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
      table.addCell(
          Cells.ruled(
              Cells.padded(cell, ACROSS, DOWN), Rectangle.BOTTOM, 1.2f, Style.HEADING.color()));
    }
    return table;
  }

  /** A row and, below it, its reason; never parted. */
  private PdfPCell block(Section section, Section.Row row, List<Integer> columns, float[] widths) {
    PdfPTable table = new PdfPTable(widths);
    for (int i = 0; i < columns.size(); i++) {
      PdfPCell cell = cell(row.cells().get(columns.get(i)), i == 0, widths[i]);
      table.addCell(Cells.padded(cell, ACROSS, DOWN));
    }
    for (int i = 0; i < row.cells().size(); i++) {
      String reason = words.of(row.cells().get(i));
      if (isReason(section.columns().get(i)) && !reason.isBlank()) {
        PdfPCell cell = Cells.padded(Cells.of(type.phrase(reason, Style.SUBTLE)), ACROSS, 0);
        cell.setPaddingBottom(DOWN + 2);
        cell.setColspan(columns.size());
        table.addCell(cell);
      }
    }
    PdfPCell block = Cells.of(table);
    if (row.role() == StyleRole.DANGER || row.role() == StyleRole.CAUTION) {
      Cells.dressed(block, Looks.of(row.role()));
    }
    return Cells.ruled(block, Rectangle.BOTTOM, 0.5f, Looks.HAIRLINE);
  }

  private PdfPCell cell(Cell cell, boolean first, float width) {
    String text = words.of(cell);
    Style style = style(cell, first);
    if (cell instanceof Cell.Gap && type.width(text, style) + 2 * ACROSS > width) {
      return Cells.of(new Phrase());
    }
    PdfPCell box = Cells.of(type.phrase(text, style));
    if (cell instanceof Cell.Level level) {
      box.setBackgroundColor(Looks.of(level.role()).fill());
    }
    return cell instanceof Cell.Quantity ? Cells.right(box) : box;
  }

  private static Style style(Cell cell, boolean first) {
    if (cell instanceof Cell.Level level) {
      return Style.BODY.asBold().in(Looks.of(level.role()).text());
    } else if (cell instanceof Cell.Gap) {
      return Style.SUBTLE;
    }
    return first || cell instanceof Cell.Day ? Style.STRONG : Style.BODY;
  }

  private ColumnWidths measure(Section section, List<Integer> columns) {
    List<Float> least = new ArrayList<>();
    List<Float> best = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      int column = columns.get(i);
      String heading = section.columns().get(column).heading();
      float word = widestWord(heading, Style.COLUMN_HEADING);
      float line = word;
      for (Section.Row row : section.rows()) {
        Cell cell = row.cells().get(column);
        if (!(cell instanceof Cell.Gap)) {
          Style style = style(cell, i == 0);
          String text = words.of(cell);
          float all = type.width(text, style);
          line = Math.max(line, all);
          word = Math.max(word, cell instanceof Cell.Text ? widestWord(text, style) : all);
        }
      }
      least.add(Math.min(word, WIDEST) + 2 * ACROSS + 1);
      best.add(Math.max(Math.min(line, WIDEST), Math.min(word, WIDEST)) + 2 * ACROSS + 1);
    }
    return new ColumnWidths(least, best);
  }

  private float widestWord(String text, Style style) {
    return (float)
        SPACE.splitAsStream(text).mapToDouble(word -> type.width(word, style)).max().orElse(0);
  }

  private static List<Integer> columns(Section section) {
    List<Integer> columns = new ArrayList<>();
    for (int i = 0; i < section.columns().size(); i++) {
      Section.Column column = section.columns().get(i);
      if (column.media().contains(Section.Medium.PDF) && !isReason(column)) {
        columns.add(i);
      }
    }
    return columns;
  }

  private static boolean isReason(Section.Column column) {
    return column.media().contains(Section.Medium.PDF) && column.id().equals(REASON_COLUMN);
  }

  private static boolean isNumeric(Section section, int column) {
    return section.rows().stream().anyMatch(r -> r.cells().get(column) instanceof Cell.Quantity);
  }
}
