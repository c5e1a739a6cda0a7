package org.hibernacle.report.xlsx;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.SeasonReport.Asked;
import org.hibernacle.report.StyleRole;

/** A sheet of the inventory, cell by cell as it was found. */
final class CarriedSheet {
  private static final int NARROWEST = 9;
  private static final int WIDEST = 40;
  private static final int WIDEST_REASON = 120;

  /** A page across holds so many at most, or they would be too small to read. */
  private static final int CHARACTERS_ACROSS = 220;

  private final Sheets sheets;
  private final Lists lists;
  private final SheetTable table;
  private final List<Asked> asked;

  CarriedSheet(Sheets sheets, Lists lists, SheetTable table, List<Asked> asked) {
    this.sheets = sheets;
    this.lists = lists;
    this.table = table;
    this.asked = asked.stream().filter(a -> a.sheet().equals(table.name())).toList();
  }

  /** Writes the sheet and tells its name. */
  String write() {
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
    asked.forEach(a -> ask(sheet, a));
    sheet.createFreezePane(1, 1);
    sheets.print().apply(sheet, true, 1);
    int total = IntStream.range(0, table.headings().size()).map(i -> width(table, i)).sum();
    sheet.getPrintSetup().setFitWidth((short) (1 + total / CHARACTERS_ACROSS));
    return sheet.getSheetName();
  }

  /** Offers the answers, and marks the cells in which one is wanted. */
  private void ask(XSSFSheet sheet, Asked question) {
    int answers = table.headings().indexOf(question.heading());
    int beside = table.headings().indexOf(question.beside());
    lists.choose(sheet, "answer", question.answers(), answers, table.rows().size());
    if (answers + 1 < table.headings().size()) {
      // The reason stands beside the answer and is to be read whole.
      sheet.setColumnWidth(answers + 1, width(table, answers + 1, WIDEST_REASON) * 256);
    }
    for (int i = 0; i < table.rows().size(); i++) {
      if (!table.rows().get(i).get(beside).equals("")) {
        XSSFRow row = sheet.getRow(i + 1);
        for (int column : List.of(beside, answers)) {
          XSSFCell cell = row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
          cell.setCellStyle(
              sheets.styles().cell(StyleRole.CAUTION, Styles.GENERAL, HorizontalAlignment.CENTER));
        }
      }
    }
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
    return width(table, column, WIDEST);
  }

  private static int width(SheetTable table, int column, int widest) {
    int longest =
        table.rows().stream().mapToInt(row -> row.get(column).toString().length()).max().orElse(0);
    int heading = table.headings().get(column).length();
    return Math.min(widest, Math.max(NARROWEST, Math.max(longest, heading) + 3));
  }
}
