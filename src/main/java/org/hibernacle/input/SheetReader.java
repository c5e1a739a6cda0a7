package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.hibernacle.input.FoundCell.State;
import org.hibernacle.input.FoundSheet.FoundRow;

/** Turns a sheet of the spreadsheet library into plain values. */
final class SheetReader {
  private SheetReader() {}

  static FoundSheet read(String file, Sheet sheet) {
    List<List<FoundCell>> found = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    int width = 0;
    for (Row row : sheet) {
      List<FoundCell> cells = new ArrayList<>();
      int filled = 0;
      for (int column = 0; column < row.getLastCellNum(); column++) {
        FoundCell cell = cell(row, column);
        cells.add(cell);
        filled = cell.isBlank() ? filled : column + 1;
      }
      if (filled > 0) {
        found.add(cells);
        numbers.add(row.getRowNum() + 1);
        width = Math.max(width, filled);
      }
    }
    List<FoundRow> rows = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      rows.add(new FoundRow(numbers.get(i), fit(found.get(i), width, numbers.get(i))));
    }
    return new FoundSheet(file, sheet.getSheetName(), rows);
  }

  private static List<FoundCell> fit(List<FoundCell> cells, int width, int number) {
    List<FoundCell> fitted = new ArrayList<>(cells.subList(0, Math.min(width, cells.size())));
    while (fitted.size() < width) {
      fitted.add(FoundCell.typed(address(number, fitted.size()), ""));
    }
    return fitted;
  }

  private static String address(int rowNumber, int column) {
    return CellReference.convertNumToColString(column) + rowNumber;
  }

  private static FoundCell cell(Row row, int column) {
    String address = address(row.getRowNum() + 1, column);
    Cell cell = row.getCell(column);
    if (cell == null) {
      return FoundCell.typed(address, "");
    }
    boolean formula = cell.getCellType() == CellType.FORMULA;
    if (formula && cell instanceof XSSFCell xssf && !xssf.getCTCell().isSetV()) {
      return new FoundCell(address, "=" + cell.getCellFormula(), State.FORMULA_WITHOUT_VALUE);
    }
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    return type == CellType.ERROR
        ? new FoundCell(address, errorText(cell), State.ERROR)
        : new FoundCell(address, value(cell, type), formula ? State.FORMULA : State.TYPED);
  }

  private static Object value(Cell cell, CellType type) {
    return switch (type) {
      case STRING -> cell.getStringCellValue().replace('\u00a0', ' ').strip();
      case BOOLEAN -> cell.getBooleanCellValue();
      case NUMERIC ->
          isDay(cell)
              ? cell.getLocalDateTimeCellValue().toLocalDate()
              : (Object) cell.getNumericCellValue();
      default -> "";
    };
  }

  /** A time of day alone is a number below 1 and no date. */
  private static boolean isDay(Cell cell) {
    return cell.getNumericCellValue() >= 1 && DateUtil.isCellDateFormatted(cell);
  }

  private static String errorText(Cell cell) {
    return FormulaError.forInt(cell.getErrorCellValue()).getString();
  }
}
