package org.hibernacle.report.xlsx;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.Glance;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Words;

/**
 * What a keeper may write into a column: a date, or one of a list. Lists stand on a hidden sheet
 * under a defined name, since a list inside a rule ends at 255 characters and splits at commas.
 */
final class Lists {
  /** Rows below the table in which entries are checked too. */
  private static final int ROWS_TO_SPARE = 100;

  private static final int DATE = DataValidationConstraint.OperatorType.BETWEEN;

  /** A list and the name it goes by. */
  private record Choices(String name, List<String> words) {}

  private final Words words;
  private final List<Choices> lists = new ArrayList<>();

  Lists(Words words) {
    this.words = words;
  }

  /** Checks what is written into the column, below its heading in the first row. */
  void check(XSSFSheet sheet, Column column, int columnIndex, int rows) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    switch (column.entry().kind()) {
      case DATE -> {
        DataValidationConstraint anyDate =
            helper.createDateConstraint(DATE, "=DATE(1990,1,1)", "=DATE(2199,12,31)", "");
        add(sheet, helper, anyDate, columnIndex, rows, "workbook.wrong-date");
      }
      case TRIAL -> {
        DataValidationConstraint some =
            helper.createDecimalConstraint(
                DataValidationConstraint.OperatorType.GREATER_OR_EQUAL, "0", "");
        add(sheet, helper, some, columnIndex, rows, "workbook.wrong-number");
      }
      case CHOICE -> choose(sheet, column.id(), column.entry().choices(), columnIndex, rows);
      // Offered, not demanded: a cross is a tick too.
      case TICK ->
          choose(sheet, column.id(), List.of(words.text("workbook.tick")), columnIndex, rows)
              .setShowErrorBox(false);
      case NONE, WORDS -> {}
    }
  }

  /** Checks that a cell holds a day of the season, and tells what it is for. */
  void checkDay(XSSFSheet sheet, CellAddress cell, Glance glance) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidation validation =
        helper.createValidation(
            helper.createDateConstraint(DATE, serial(glance.first()), serial(glance.last()), ""),
            new CellRangeAddressList(
                cell.getRow(), cell.getRow(), cell.getColumn(), cell.getColumn()));
    validation.setShowErrorBox(true);
    validation.createErrorBox(
        glance.label(), words.text("workbook.wrong-day", glance.first(), glance.last()));
    validation.setShowPromptBox(true);
    validation.createPromptBox(glance.label(), glance.prompt());
    sheet.addValidationData(validation);
  }

  private static String serial(LocalDate day) {
    return "=DATE(" + day.getYear() + "," + day.getMonthValue() + "," + day.getDayOfMonth() + ")";
  }

  /**
   * Offers words in a column.
   *
   * @param id of the list; lists of one id hold the same words
   */
  DataValidation choose(
      XSSFSheet sheet, String id, List<String> offered, int columnIndex, int rows) {
    Choices choices = new Choices("list_" + id.replace('-', '_'), offered);
    if (!lists.contains(choices)) {
      lists.add(choices);
    }
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint listed = helper.createFormulaListConstraint(choices.name());
    return add(sheet, helper, listed, columnIndex, rows, "workbook.wrong-choice");
  }

  private DataValidation add(
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
    validation.createErrorBox(sheet.getSheetName(), words.text(message));
    sheet.addValidationData(validation);
    return validation;
  }

  /** Writes the hidden sheet, if there are lists. */
  void finish(Sheets sheets) {
    if (lists.isEmpty()) {
      return;
    }
    XSSFSheet sheet = sheets.addOwn(words.text("workbook.lists"));
    for (int column = 0; column < lists.size(); column++) {
      Choices list = lists.get(column);
      for (int i = 0; i < list.words().size(); i++) {
        XSSFRow row = sheet.getRow(i) == null ? sheet.createRow(i) : sheet.getRow(i);
        row.createCell(column).setCellValue(list.words().get(i));
      }
      CellRangeAddress cells = new CellRangeAddress(0, list.words().size() - 1, column, column);
      Formulas.define(
          sheets.workbook(), list.name(), cells.formatAsString(sheet.getSheetName(), true));
    }
    sheets.workbook().setSheetHidden(sheets.workbook().getSheetIndex(sheet), true);
  }
}
