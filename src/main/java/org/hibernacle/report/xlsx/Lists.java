package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.Section.Column;

/**
 * What a keeper may write into a column: a date, or one of a list. Lists stand on a hidden sheet
 * under a defined name, since a list inside a rule ends at 255 characters and splits at commas.
 */
final class Lists {
  /** Rows below the table in which entries are checked too. */
  private static final int ROWS_TO_SPARE = 100;

  /** A list and the name it goes by. */
  private record Choices(String name, List<String> words) {}

  private final Sheets sheets;
  private final List<Choices> lists = new ArrayList<>();

  Lists(Sheets sheets) {
    this.sheets = sheets;
  }

  /** Checks what is written into the column, below its heading in the first row. */
  void check(XSSFSheet sheet, Column column, int columnIndex, int rows) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    switch (column.entry().kind()) {
      case DATE -> {
        DataValidationConstraint anyDate =
            helper.createDateConstraint(
                DataValidationConstraint.OperatorType.BETWEEN,
                "=DATE(1990,1,1)",
                "=DATE(2199,12,31)",
                "");
        add(sheet, helper, anyDate, columnIndex, rows, "workbook.wrong-date");
      }
      case CHOICE -> {
        choose(sheet, column.id(), column.entry().choices(), columnIndex, rows);
      }
      case NONE, WORDS, TICK -> {}
    }
  }

  /**
   * Offers words in a column.
   *
   * @param id of the list; lists of one id hold the same words
   */
  void choose(XSSFSheet sheet, String id, List<String> words, int columnIndex, int rows) {
    Choices choices = new Choices("list_" + id.replace('-', '_'), words);
    if (!lists.contains(choices)) {
      lists.add(choices);
    }
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint listed = helper.createFormulaListConstraint(choices.name());
    add(sheet, helper, listed, columnIndex, rows, "workbook.wrong-choice");
  }

  private void add(
      XSSFSheet sheet,
      DataValidationHelper helper,
      DataValidationConstraint constraint,
      int column,
      int rows,
      String message) {
    CellRangeAddress range = new CellRangeAddress(1, rows + ROWS_TO_SPARE, column, column);
    DataValidation validation =
        helper.createValidation(
            constraint,
            new CellRangeAddressList(range.getFirstRow(), range.getLastRow(), column, column));
    validation.setEmptyCellAllowed(true);
    validation.setShowErrorBox(true);
    validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
    validation.createErrorBox(sheet.getSheetName(), sheets.words().text(message));
    sheet.addValidationData(validation);
  }

  /** Writes the hidden sheet, if there are lists. */
  void finish() {
    if (lists.isEmpty()) {
      return;
    }
    XSSFSheet sheet = sheets.addOwn(sheets.words().text("workbook.lists"));
    for (int column = 0; column < lists.size(); column++) {
      Choices list = lists.get(column);
      for (int i = 0; i < list.words().size(); i++) {
        XSSFRow row = sheet.getRow(i) == null ? sheet.createRow(i) : sheet.getRow(i);
        row.createCell(column).setCellValue(list.words().get(i));
      }
      XSSFName name = sheets.workbook().createName();
      name.setNameName(list.name());
      CellRangeAddress cells = new CellRangeAddress(0, list.words().size() - 1, column, column);
      name.setRefersToFormula(cells.formatAsString(sheet.getSheetName(), true));
    }
    sheets.workbook().setSheetHidden(sheets.workbook().getSheetIndex(sheet), true);
  }
}
