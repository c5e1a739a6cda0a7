package org.hibernacle.report.xlsx;

import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Notes that explain a cell. */
final class Notes {
  private static final int COLUMNS_WIDE = 3;
  private static final int CHARACTERS_A_ROW = 34;

  private Notes() {}

  /** Gives the cell a note, as high as its text asks for. */
  static void put(XSSFCell cell, String text) {
    XSSFSheet sheet = cell.getSheet();
    CreationHelper helper = sheet.getWorkbook().getCreationHelper();
    ClientAnchor anchor = helper.createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setCol2(cell.getColumnIndex() + 1 + COLUMNS_WIDE);
    anchor.setRow1(cell.getRowIndex() + 1);
    anchor.setRow2(cell.getRowIndex() + 3 + Paragraphs.lines(text, CHARACTERS_A_ROW));
    XSSFComment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(text);
    comment.setAuthor("Hibernacle");
    cell.setCellComment(comment);
  }
}
