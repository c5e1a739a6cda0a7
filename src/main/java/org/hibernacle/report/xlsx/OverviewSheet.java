package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/** The first sheet: the plan in a dozen lines, and what the other sheets hold. */
final class OverviewSheet {
  private static final int LABEL_WIDTH = 34;
  private static final int TEXT_WIDTH = 76;

  /** A sheet and what it holds. */
  private record Entry(String sheet, String holds) {}

  private final Sheets sheets;
  private final SeasonReport report;
  private final XSSFSheet sheet;
  private final List<Entry> entries = new ArrayList<>();

  OverviewSheet(Sheets sheets, SeasonReport report) {
    this.sheets = sheets;
    this.report = report;
    this.sheet = sheets.addOwn(sheets.words().text("workbook.overview"));
  }

  /** Remembers a sheet for the list of sheets. */
  void list(String name, String holds) {
    entries.add(new Entry(name, holds));
  }

  /** Writes the sheet, once all others are known. */
  void finish() {
    Words words = sheets.words();
    sheet.setColumnWidth(0, LABEL_WIDTH * 256);
    sheet.setColumnWidth(1, TEXT_WIDTH * 256);
    sheet.setDisplayGridlines(false);
    line(report.title(), StyleRole.TITLE, 16);
    line(report.subtitle(), StyleRole.SUBTLE, 12);
    gap();
    for (SeasonReport.Fact fact : report.overview()) {
      pair(fact.label(), fact.text(), fact.role(), fact.role());
    }
    gap();
    pair(
        words.text("workbook.sheet"),
        words.text("workbook.holds"),
        StyleRole.HEADING,
        StyleRole.HEADING);
    for (Entry entry : entries) {
      link(pair(entry.sheet(), entry.holds(), StyleRole.PLAIN, StyleRole.PLAIN), entry.sheet());
    }
    gap();
    if (!report.legend().isEmpty()) {
      pair(words.text("workbook.marks"), "", StyleRole.HEADING, StyleRole.HEADING);
      for (MonthPage.Line mark : report.legend()) {
        pair(mark.mark(), mark.text(), mark.role(), StyleRole.PLAIN);
      }
      gap();
    }
    pair(words.text("workbook.run"), report.digest(), StyleRole.SUBTLE, StyleRole.SUBTLE);
    sheets.print().apply(sheet, false, 0);
  }

  private void line(String text, StyleRole role, int sizePt) {
    XSSFRow row = next();
    XSSFCell cell = row.createCell(0);
    cell.setCellValue(text);
    cell.setCellStyle(sheets.styles().line(role, sizePt));
    Paragraphs.fit(row, 1, sizePt);
  }

  private void gap() {
    next().setHeightInPoints(8);
  }

  private XSSFCell pair(String label, String text, StyleRole labelRole, StyleRole textRole) {
    XSSFRow row = next();
    XSSFCell first = row.createCell(0);
    first.setCellValue(label);
    first.setCellStyle(sheets.styles().words(labelRole, label));
    XSSFCell second = row.createCell(1);
    second.setCellValue(text);
    second.setCellStyle(sheets.styles().words(textRole, text));
    int lines =
        Math.max(Paragraphs.lines(label, LABEL_WIDTH * 0.9), Paragraphs.lines(text, TEXT_WIDTH));
    Paragraphs.fit(row, lines, Styles.TEXT_PT);
    return first;
  }

  private void link(XSSFCell cell, String target) {
    Hyperlink link = sheets.workbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    link.setAddress("'" + target.replace("'", "''") + "'!A1");
    cell.setHyperlink(link);
  }

  private XSSFRow next() {
    return sheet.createRow(sheet.getLastRowNum() + 1);
  }
}
