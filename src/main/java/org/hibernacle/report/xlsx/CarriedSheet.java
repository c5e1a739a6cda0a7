package org.hibernacle.report.xlsx;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.StyleRole;

/** A sheet of the inventory, cell by cell as it was found. */
final class CarriedSheet {
  private static final int NARROWEST = 9;
  private static final int WIDEST = 40;

  /** A page across holds so many at most, or they would be too small to read. */
  private static final int CHARACTERS_ACROSS = 220;

  private CarriedSheet() {}

  /** Writes the sheet and tells its name. */
  static String write(Sheets sheets, SheetTable table) {
    XSSFSheet sheet = sheets.add(table.name());
    Styles styles = sheets.styles();
    XSSFRow headings = sheet.createRow(0);
    for (int i = 0; i < table.headings().size(); i++) {
      XSSFCell cell = headings.createCell(i);
      cell.setCellValue(table.headings().get(i));
      cell.setCellStyle(styles.cell(StyleRole.HEADING, Styles.GENERAL, HorizontalAlignment.LEFT));
      sheet.setColumnWidth(i, width(table, i) * 256);
    }
    for (List<Object> values : table.rows()) {
      XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
      for (int i = 0; i < values.size(); i++) {
        fill(row, i, values.get(i), styles);
      }
    }
    sheet.createFreezePane(1, 1);
    sheets.print().apply(sheet, true, 1);
    int total = IntStream.range(0, table.headings().size()).map(i -> width(table, i)).sum();
    sheet.getPrintSetup().setFitWidth((short) (1 + total / CHARACTERS_ACROSS));
    return sheet.getSheetName();
  }

  private static void fill(XSSFRow row, int column, Object value, Styles styles) {
    if (value.equals("")) {
      return;
    }
    XSSFCell cell = row.createCell(column);
    if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      cell.setCellStyle(styles.carried("yyyy-mm-dd", HorizontalAlignment.CENTER, false));
    } else if (value instanceof Double number) {
      cell.setCellValue(number);
      cell.setCellStyle(styles.carried(Styles.GENERAL, HorizontalAlignment.RIGHT, false));
    } else if (value instanceof Boolean yes) {
      cell.setCellValue(yes);
      cell.setCellStyle(styles.carried(Styles.GENERAL, HorizontalAlignment.LEFT, false));
    } else {
      cell.setCellValue(value.toString());
      cell.setCellStyle(
          styles.carried(
              Styles.GENERAL,
              HorizontalAlignment.LEFT,
              Styles.startsLikeFormula(value.toString())));
    }
  }

  private static int width(SheetTable table, int column) {
    int longest =
        table.rows().stream().mapToInt(row -> row.get(column).toString().length()).max().orElse(0);
    int heading = table.headings().get(column).length();
    return Math.min(WIDEST, Math.max(NARROWEST, Math.max(longest, heading) + 3));
  }
}
