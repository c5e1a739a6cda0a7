package org.hibernacle.report.xlsx;

import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Words;

/**
 * What every sheet is made with.
 *
 * @param workbook to add to
 * @param styles shared by all sheets
 * @param names given so far
 * @param print set-up
 * @param words of the report
 */
record Sheets(
    XSSFWorkbook workbook, Styles styles, SheetNames names, PrintSetup print, Words words) {
  /** An empty sheet of the report's own, marked so that a reader of inventories passes it by. */
  XSSFSheet addOwn(String title) {
    XSSFSheet sheet = add(title);
    XSSFName mark = workbook.createName();
    mark.setNameName(WorkbookWriter.REPORT_SHEET_NAME);
    mark.setSheetIndex(workbook.getSheetIndex(sheet));
    mark.setRefersToFormula(Integer.toString(WorkbookWriter.FORMAT));
    return sheet;
  }

  /** An empty sheet with a name like {@code title}. */
  XSSFSheet add(String title) {
    return workbook.createSheet(names.unique(title));
  }
}
