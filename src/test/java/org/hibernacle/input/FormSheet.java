package org.hibernacle.input;

import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.input.FormLooks.Look;
import org.hibernacle.model.Settings.Units;

/** Lays out the table sheets of the blank form. */
final class FormSheet {
  /** Rows that the drop-downs reach down to. */
  private static final int ROWS = 400;

  private final XSSFSheet sheet;
  private final FormLooks looks;
  private final Units units;
  private final FormRules rules;
  private final Drawing<?> drawing;

  FormSheet(XSSFSheet sheet, FormLooks looks, Units units) {
    this.sheet = sheet;
    this.looks = looks;
    this.units = units;
    this.rules = new FormRules(sheet, units);
    this.drawing = sheet.createDrawingPatriarch();
  }

  /** A table with one column a field, its headings, its example, its rules. */
  void table(List<FormField> fields, List<Column> needed) {
    Row headings = sheet.createRow(0);
    headings.setHeightInPoints(36);
    Row example = sheet.createRow(1);
    example.setHeightInPoints(18);
    for (int i = 0; i < fields.size(); i++) {
      FormField field = fields.get(i);
      sheet.setColumnWidth(i, field.widthChars() * 256);
      boolean day = field.entry() instanceof FormField.Entry.Date;
      sheet.setDefaultColumnStyle(i, day ? looks.day(Look.PLAIN) : looks.of(Look.PLAIN));
      Look look = needed.contains(field.column()) ? Look.NEEDED : Look.HEADING;
      Cell heading = set(headings, i, field.heading(units), looks.of(look));
      note(heading, field.help());
      set(example, i, field.example(units), day ? looks.day(Look.EXAMPLE) : looks.of(Look.EXAMPLE));
      rules.add(field, new CellRangeAddress(1, ROWS, i, i));
    }
    sheet.createFreezePane(1, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, 1, 0, fields.size() - 1));
    sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    print();
  }

  /** A list with one row a setting. */
  void settings(List<FormField> fields) {
    int[] widths = {32, 34, 74};
    String[] titles = {"Setting", "Value", "Meaning"};
    Row headings = sheet.createRow(0);
    headings.setHeightInPoints(26);
    for (int i = 0; i < titles.length; i++) {
      sheet.setColumnWidth(i, widths[i] * 256);
      set(headings, i, titles[i], looks.of(i == 1 ? Look.NEEDED : Look.HEADING));
    }
    note(headings.getCell(1), "Empty values have a default, which the column Meaning names.");
    for (int i = 0; i < fields.size(); i++) {
      FormField field = fields.get(i);
      Row row = sheet.createRow(i + 1);
      row.setHeightInPoints(field.help().length() > 84 ? 28 : 19);
      set(row, 0, field.heading(units), looks.of(Look.SETTING));
      set(row, 1, field.example(units), looks.of(Look.EXAMPLE));
      set(row, 2, field.help(), looks.of(Look.MEANING));
      rules.add(field, new CellRangeAddress(i + 1, i + 1, 1, 1));
    }
    sheet.createFreezePane(0, 1);
    print();
  }

  private Cell set(Row row, int column, Object value, XSSFCellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellStyle(style);
    if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof LocalDate day) {
      cell.setCellValue(day);
    } else if (!value.equals("")) {
      cell.setCellValue(value.toString());
    }
    return cell;
  }

  private void note(Cell cell, String text) {
    ClientAnchor anchor = sheet.getWorkbook().getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setCol2(cell.getColumnIndex() + 4);
    anchor.setRow1(cell.getRowIndex());
    anchor.setRow2(cell.getRowIndex() + 3 + text.length() / 60);
    Comment comment = drawing.createCellComment(anchor);
    comment.setString(sheet.getWorkbook().getCreationHelper().createRichTextString(text));
    comment.setAuthor("Hibernacle");
    comment.setAddress(new CellAddress((XSSFCell) cell));
    cell.setCellComment(comment);
  }

  private void print() {
    sheet.setFitToPage(true);
    sheet
        .getPrintSetup()
        .setPaperSize(units == Units.US ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setFitWidth((short) (sheet.getRow(0).getLastCellNum() > 20 ? 2 : 1));
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.getHeader().setLeft("&A");
    sheet.getFooter().setRight("&P / &N");
  }
}
