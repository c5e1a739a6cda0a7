package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Glance;
import org.hibernacle.report.MonthPage;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;
import org.hibernacle.report.xlsx.Styles.Trait;

/**
 * The first sheet: what the day in its first cell asks for, the plan in a dozen lines, and what the
 * other sheets hold. It is the template's own sheet, so that a logo stays.
 */
final class OverviewSheet {
  private static final Set<Trait> AS_PATTERN = EnumSet.of(Trait.PATTERN_LETTERS);
  private static final int GAP_PT = 9;

  /** A sheet and what it holds. */
  private record Entry(String sheet, String holds) {}

  private final Sheets sheets;
  private final SeasonReport report;
  private final XSSFSheet sheet;
  private final List<Entry> entries = new ArrayList<>();
  private final Pattern facts;
  private final Pattern answers;
  private final int left;
  private int nextRow;

  OverviewSheet(Sheets sheets, SeasonReport report) {
    this.sheets = sheets;
    this.report = report;
    this.sheet = sheets.patterns().overview();
    this.facts = sheets.patterns().of(Anchor.FACT);
    this.answers = sheets.patterns().of(Anchor.ANSWER);
    this.left = sheets.patterns().cell(Anchor.FACT).getCol();
    int index = sheets.workbook().getSheetIndex(sheet);
    String name = sheets.names().unique(sheets.words().text("workbook.overview"));
    sheets.workbook().setSheetName(index, name);
    Sheets.markAsOwn(sheets.workbook(), sheet);
  }

  /** Remembers a sheet for the list of sheets. */
  void list(String name, String holds) {
    entries.add(new Entry(name, holds));
  }

  /** Writes the sheet, once all others are known. */
  void finish() {
    Words words = sheets.words();
    StyleLike fact = new StyleLike(facts);
    StyleLike answer = new StyleLike(answers);
    nextRow =
        Math.min(
            sheets.patterns().cell(Anchor.FACT).getRow(),
            sheets.patterns().cell(Anchor.ANSWER).getRow());
    clearBelow(nextRow);
    line(Anchor.TITLE, report.title(), StyleRole.TITLE);
    line(Anchor.SUBTITLE, report.subtitle(), StyleRole.SUBTLE);
    report.forScreen().glance().ifPresent(glance -> glance(glance, answer));
    for (SeasonReport.Fact f : report.overview()) {
      pair(fact, f.label(), f.text(), f.role(), f.role());
    }
    gap();
    pair(
        fact,
        words.text("workbook.sheet"),
        words.text("workbook.holds"),
        StyleRole.HEADING,
        StyleRole.HEADING);
    for (Entry entry : entries) {
      XSSFCell name = pair(fact, entry.sheet(), entry.holds(), StyleRole.PLAIN, StyleRole.PLAIN);
      name.setCellStyle(
          sheets
              .styles()
              .words(fact.label(), StyleRole.PLAIN, entry.sheet(), EnumSet.of(Trait.LEADS)));
      name.setHyperlink(sheets.leads().to(entry.sheet(), "A1"));
    }
    gap();
    if (!report.legend().isEmpty()) {
      pair(fact, words.text("workbook.marks"), "", StyleRole.HEADING, StyleRole.HEADING);
      for (MonthPage.Line mark : report.legend()) {
        pair(fact, mark.mark(), mark.text(), mark.role(), StyleRole.PLAIN);
      }
      gap();
    }
    pair(fact, words.text("workbook.run"), report.digest(), StyleRole.SUBTLE, StyleRole.SUBTLE);
    List<Double> widths =
        IntStream.rangeClosed(0, left + 1)
            .mapToObj(i -> i < left ? 9 : sheet.getColumnWidth(i) / 256.0)
            .toList();
    sheets.pages().apply(sheet, sheet, widths, 0, 0);
  }

  /** The two cells of a pattern row. */
  private record StyleLike(XSSFCellStyle label, XSSFCellStyle text) {
    StyleLike(Pattern pattern) {
      this(pattern.cell("label"), pattern.cell("text"));
    }
  }

  private void clearBelow(int row) {
    for (int i = sheet.getLastRowNum(); i >= row; i--) {
      if (sheet.getRow(i) != null) {
        sheet.removeRow(sheet.getRow(i));
      }
    }
  }

  private void line(Anchor anchor, String text, StyleRole role) {
    CellReference at = sheets.patterns().cell(anchor);
    XSSFRow row = sheet.getRow(at.getRow()) == null ? next(at.getRow()) : sheet.getRow(at.getRow());
    XSSFCell cell = row.getCell(at.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    XSSFCellStyle like = sheets.patterns().of(anchor).at(at.getCol());
    cell.setCellValue(text);
    cell.setCellStyle(
        sheets.styles().cell(like, role, Styles.GENERAL, HorizontalAlignment.LEFT, AS_PATTERN));
    nextRow = Math.max(nextRow, at.getRow() + 1);
  }

  private void glance(Glance glance, StyleLike like) {
    Styles styles = sheets.styles();
    XSSFCell asOf = answer(like, glance.label(), StyleRole.ENTRY);
    asOf.setCellValue(glance.asOf());
    asOf.setCellStyle(
        styles.cell(
            like.text(),
            StyleRole.ENTRY,
            styles.longDateFormat(),
            HorizontalAlignment.LEFT,
            AS_PATTERN));
    name(Glance.AS_OF, asOf);
    sheets.lists().checkDay(sheet, asOf.getAddress(), glance);
    for (Glance.Line line : glance.lines()) {
      answer(line, like);
    }
    gap();
  }

  private void answer(Glance.Line line, StyleLike like) {
    XSSFCell cell = answer(like, line.label(), StyleRole.PLAIN);
    String format = "0";
    if (line.cell() instanceof Cell.Quantity quantity) {
      cell.setCellValue(quantity.value());
      format = Styles.numberFormat(quantity);
    } else if (line.cell() instanceof Cell.Day day) {
      cell.setCellValue(day.date());
      format = sheets.styles().longDateFormat();
    } else if (line.cell() instanceof Cell.Text text) {
      cell.setCellValue(text.text());
      format = sheets.styles().longDateFormat();
    }
    cell.setCellStyle(
        sheets
            .styles()
            .cell(like.text(), StyleRole.TITLE, format, HorizontalAlignment.LEFT, AS_PATTERN));
    name(line.name(), cell);
    String own = cell.getAddress().formatAsString();
    sheets.formulas().put(cell, line.formula(), id -> own);
    CellRangeAddress alone =
        new CellRangeAddress(
            cell.getRowIndex(), cell.getRowIndex(), cell.getColumnIndex(), cell.getColumnIndex());
    sheets.marks().put(sheet, alone, line.mark().stream().toList(), format, id -> own);
    if (!line.help().isEmpty()) {
      Notes.put(cell, line.help());
    }
  }

  private void name(String name, XSSFCell cell) {
    CellReference at =
        new CellReference(
            sheet.getSheetName(), cell.getRowIndex(), cell.getColumnIndex(), true, true);
    Formulas.define(sheets.workbook(), name, at.formatAsString());
  }

  private XSSFCell answer(StyleLike like, String label, StyleRole role) {
    XSSFRow row = next(nextRow);
    XSSFCell first = row.createCell(left);
    first.setCellValue(label);
    first.setCellStyle(
        sheets
            .styles()
            .cell(like.label(), role, Styles.GENERAL, HorizontalAlignment.LEFT, AS_PATTERN));
    Paragraphs.fit(row, 1, like.text().getFont().getFontHeight() / 20.0);
    return row.createCell(left + 1);
  }

  private void gap() {
    next(nextRow).setHeightInPoints(GAP_PT);
  }

  private XSSFCell pair(
      StyleLike like, String label, String text, StyleRole labelRole, StyleRole textRole) {
    XSSFRow row = next(nextRow);
    XSSFCell first = row.createCell(left);
    first.setCellValue(label);
    first.setCellStyle(sheets.styles().words(like.label(), labelRole, label, Set.of()));
    XSSFCell second = row.createCell(left + 1);
    second.setCellValue(text);
    second.setCellStyle(sheets.styles().words(like.text(), textRole, text, Set.of()));
    int lines =
        Math.max(
            Paragraphs.lines(label, sheet.getColumnWidth(left) / 256.0 * 0.9),
            Paragraphs.lines(text, sheet.getColumnWidth(left + 1) / 256.0));
    Paragraphs.fit(row, lines, sheets.styles().textPt());
    return first;
  }

  private XSSFRow next(int index) {
    nextRow = Math.max(nextRow, index) + 1;
    return sheet.createRow(index);
  }
}
