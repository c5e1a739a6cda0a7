package org.hibernacle.report.xlsx;

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
  /** An empty sheet with a name like {@code title}. */
  XSSFSheet add(String title) {
    return workbook.createSheet(names.unique(title));
  }
}
