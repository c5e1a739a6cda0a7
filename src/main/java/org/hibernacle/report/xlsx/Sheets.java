package org.hibernacle.report.xlsx;

import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Words;

/**
 * What every sheet is made with.
 *
 * @param workbook to add to
 * @param patterns of the template
 * @param styles shared by all sheets
 * @param names given so far
 * @param pages set up alike
 * @param formulas put in at the end
 * @param leads from row to row
 * @param marks of cells
 * @param lists to choose from
 * @param words of the report
 */
record Sheets(
    XSSFWorkbook workbook,
    Patterns patterns,
    Styles styles,
    SheetNames names,
    PageSetup pages,
    Formulas formulas,
    Leads leads,
    Marks marks,
    Lists lists,
    Words words) {
  /** An empty sheet of the report's own, marked so that a reader of inventories passes it by. */
  XSSFSheet addOwn(String title) {
    XSSFSheet sheet = add(title);
    markAsOwn(workbook, sheet);
    return sheet;
  }

  /** Has a reader of inventories pass the sheet by. */
  static void markAsOwn(XSSFWorkbook workbook, XSSFSheet sheet) {
    XSSFName mark = workbook.createName();
    mark.setNameName(WorkbookWriter.REPORT_SHEET_NAME);
    mark.setSheetIndex(workbook.getSheetIndex(sheet));
    mark.setRefersToFormula(Integer.toString(WorkbookWriter.FORMAT));
  }

  /** An empty sheet of the keeper's own, which keeps its name if that was kept free for it. */
  XSSFSheet addCarried(String name) {
    return workbook.createSheet(
        WorkbookWriter.INVENTORY.contains(name) ? names.kept(name) : names.unique(name));
  }

  /** An empty sheet with a name like {@code title}. */
  XSSFSheet add(String title) {
    return workbook.createSheet(names.unique(title));
  }

  /** Gives a sheet what the pattern's sheet has beside its cells, pictures too. */
  void dress(XSSFSheet sheet, XSSFSheet pattern) {
    Pictures.copy(workbook, pattern, sheet);
    if (pattern.getTabColor() != null) {
      sheet.setTabColor(pattern.getTabColor());
    }
    sheet.setDisplayGridlines(pattern.isDisplayGridlines());
    if (pattern.getCTWorksheet().isSetSheetViews()) {
      long percent = pattern.getCTWorksheet().getSheetViews().getSheetViewArray(0).getZoomScale();
      sheet.setZoom((int) (percent < 10 ? 100 : percent));
    }
  }
}
