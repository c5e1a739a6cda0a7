package org.hibernacle.report.xlsx;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A pattern row of the template: each of its cells names a column and shows its lines and where
 * words stand in it; the column is as wide as its cells are to be. The row above shows the
 * headings, the sheet around it how the page is set up.
 */
final class Pattern {
  private static final int UNITS_PER_CHARACTER = 256;

  private final XSSFSheet sheet;
  private final XSSFRow row;
  private final Map<String, XSSFCell> cells = new HashMap<>();

  /**
   * The pattern that begins in a cell.
   *
   * @param sheet of the template
   * @param rowIndex of the row, from 0
   */
  Pattern(XSSFSheet sheet, int rowIndex) {
    this.sheet = sheet;
    this.row = sheet.getRow(rowIndex) == null ? sheet.createRow(rowIndex) : sheet.getRow(rowIndex);
    for (Cell cell : row) {
      if (cell instanceof XSSFCell found && found.getCellType() == CellType.STRING) {
        cells.putIfAbsent(found.getStringCellValue().strip(), found);
      }
    }
  }

  XSSFSheet sheet() {
    return sheet;
  }

  /** Width of a column in the template, in characters; empty where the template has none such. */
  Optional<Double> width(String columnId) {
    return Optional.ofNullable(cells.get(columnId))
        .map(cell -> (double) sheet.getColumnWidth(cell.getColumnIndex()) / UNITS_PER_CHARACTER);
  }

  /** The cell that shows the column, or else the first of the row. */
  XSSFCellStyle cell(String columnId) {
    XSSFCell cell = cells.get(columnId);
    return cell == null ? first(row).getCellStyle() : cell.getCellStyle();
  }

  /** The cell above that shows the heading. */
  XSSFCellStyle heading(String columnId) {
    XSSFRow above = row.getRowNum() == 0 ? row : sheet.getRow(row.getRowNum() - 1);
    if (above == null) {
      return cell(columnId);
    }
    XSSFCell cell = cells.get(columnId);
    return (cell == null ? first(above) : filled(above, cell.getColumnIndex())).getCellStyle();
  }

  /** The style of a cell of the row, by its index. */
  XSSFCellStyle at(int column) {
    return filled(row, column).getCellStyle();
  }

  private static XSSFCell first(XSSFRow row) {
    int first = row.getFirstCellNum();
    return filled(row, Math.max(0, first));
  }

  private static XSSFCell filled(XSSFRow row, int column) {
    return row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }
}
