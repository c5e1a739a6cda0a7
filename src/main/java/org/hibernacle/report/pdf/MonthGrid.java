package org.hibernacle.report.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.awt.Color;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;

/** Draws a measured month. */
final class MonthGrid {
  static final Style WEEKDAY = Style.COLUMN_HEADING.at(10);
  private static final int ALL_SIDES = Rectangle.BOX;

  private final Typefaces type;
  private final Locale language;

  MonthGrid(Typefaces type, Locale language) {
    this.type = type;
    this.language = language;
  }

  /** Height of the row with the names of the weekdays, in points. */
  float headingHeight() {
    PdfPTable table = new PdfPTable(1);
    table.setTotalWidth(100);
    table.addCell(heading("M"));
    return table.getTotalHeight();
  }

  PdfPTable draw(YearMonth month, MonthLayout layout) {
    float[] columns = layout.columns();
    PdfPTable table = Cells.table(columns);
    table.setSplitRows(false);
    TextStyle names = names(layout.first(), columns);
    for (int i = 0; i < columns.length; i++) {
      table.addCell(heading(weekday(layout.first().plusDays(i), names)));
    }
    LocalDate date = layout.first();
    for (float height : layout.weeks()) {
      for (int i = 0; i < columns.length; i++) {
        PdfPCell cell = YearMonth.from(date).equals(month) ? day(date, layout) : Cells.gap(height);
        cell.setFixedHeight(height);
        cell.setBorder(ALL_SIDES);
        cell.setBorderWidth(0.6f);
        cell.setBorderColor(new Color(type.palette().line()));
        table.addCell(cell);
        date = date.plusDays(1);
      }
    }
    return table;
  }

  private PdfPCell day(LocalDate date, MonthLayout layout) {
    PdfPCell cell =
        new PdfPCell(
            layout
                .box()
                .of(
                    date.getDayOfMonth(),
                    layout.lines(date),
                    layout.shown(date),
                    layout.inner(date)));
    cell.setPadding(DayBox.INSET);
    cell.setBackgroundColor(new Color(type.palette().paper()));
    return cell;
  }

  private PdfPCell heading(String weekday) {
    return Cells.padded(Cells.of(type.phrase(weekday, WEEKDAY)), DayBox.INSET, 3);
  }

  /** Whole names where all of them fit, else short ones. */
  private TextStyle names(LocalDate first, float[] columns) {
    for (int i = 0; i < columns.length; i++) {
      String full = weekday(first.plusDays(i), TextStyle.FULL_STANDALONE);
      if (type.width(full, WEEKDAY) + 2 * DayBox.INSET > columns[i]) {
        return TextStyle.SHORT_STANDALONE;
      }
    }
    return TextStyle.FULL_STANDALONE;
  }

  private String weekday(LocalDate date, TextStyle style) {
    return date.getDayOfWeek().getDisplayName(style, language);
  }
}
