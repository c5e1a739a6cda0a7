package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Entry;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.xlsx.Styles.Rules;

/** One section as a sheet: headings in the first row, data right below, nothing else. */
final class SectionSheet {
  /** Longest text that a cell takes. */
  private static final int LONGEST = 32_767;

  private static final Pattern COLUMN_ID = Pattern.compile("\\{([^}]+)}");

  private final Sheets sheets;
  private final Lists lists;
  private final Display display;
  private final Section section;
  private final List<Column> columns;
  private final XSSFSheet sheet;

  SectionSheet(Sheets sheets, Lists lists, Section section) {
    this.sheets = sheets;
    this.lists = lists;
    this.display = new Display(sheets.words());
    this.section = section;
    this.columns =
        section.columns().stream().filter(c -> c.media().contains(Medium.WORKBOOK)).toList();
    this.sheet = sheets.addOwn(section.title());
  }

  /** Writes the sheet and tells its name. */
  String write() {
    headings();
    for (int i = 0; i < section.rows().size(); i++) {
      row(i);
    }
    int lastRow = Math.max(1, section.rows().size());
    CellRangeAddress table = new CellRangeAddress(0, lastRow, 0, columns.size() - 1);
    sheet.setAutoFilter(table);
    sheet.createFreezePane(columns.get(0).id().equals("id") ? 2 : 1, 1);
    for (int i = 0; i < columns.size(); i++) {
      sheet.setColumnWidth(i, columns.get(i).width() * 256);
      lists.check(sheet, columns.get(i), i, section.rows().size());
    }
    XSSFName name = sheets.workbook().createName();
    name.setNameName("table_" + section.id().replace('-', '_'));
    name.setRefersToFormula(table.formatAsString(sheet.getSheetName(), true));
    sheets.print().apply(sheet, true, 1);
    if (section.media().contains(Medium.PDF)) {
      printPaperColumnsOnly(lastRow);
    }
    return sheet.getSheetName();
  }

  private void headings() {
    XSSFRow row = sheet.createRow(0);
    int lines = 2;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(column.heading());
      cell.setCellStyle(
          sheets.styles().cell(StyleRole.HEADING, Styles.GENERAL, HorizontalAlignment.LEFT));
      // Bold letters are wider, and the filter's button takes room.
      lines = Math.max(lines, Paragraphs.lines(column.heading(), column.width() * 0.95 - 1.5));
      if (!column.help().isEmpty()) {
        explain(cell, column.help());
      }
    }
    Paragraphs.fit(row, lines, Styles.TEXT_PT);
  }

  private void explain(XSSFCell heading, String help) {
    CreationHelper helper = sheets.workbook().getCreationHelper();
    ClientAnchor anchor = helper.createClientAnchor();
    anchor.setCol1(heading.getColumnIndex() + 1);
    anchor.setCol2(heading.getColumnIndex() + 4);
    anchor.setRow1(1);
    anchor.setRow2(5);
    Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(helper.createRichTextString(help));
    comment.setAuthor("Hibernacle");
    heading.setCellComment(comment);
  }

  private void row(int number) {
    Section.Row row = section.rows().get(number);
    boolean again = section.continuesGroup(number);
    boolean grouped = section.isGrouped();
    Rules rules = grouped && !again ? Rules.GROUP : Rules.THIN;
    XSSFRow target = sheet.createRow(sheet.getLastRowNum() + 1);
    int lines = 1;
    int index = 0;
    for (int i = 0; i < section.columns().size(); i++) {
      Column column = section.columns().get(i);
      if (column.media().contains(Medium.WORKBOOK)) {
        Cell cell = row.cells().get(i);
        StyleRole role = i == 0 && grouped ? groupRole(again) : role(column, row);
        fill(target.createCell(index++), column, cell, role, rules);
        lines = Math.max(lines, Paragraphs.lines(display.text(cell), column.width()));
      }
    }
    Paragraphs.fit(target, lines, Styles.TEXT_PT);
  }

  /** What begins a group stands out, and is only repeated below. */
  private static StyleRole groupRole(boolean again) {
    return again ? StyleRole.SUBTLE : StyleRole.TITLE;
  }

  /** An Id bears the look of its row, any other cell that of its column. */
  private static StyleRole role(Column column, Section.Row row) {
    if (column.id().equals("id") || row.role() == StyleRole.SUBTLE) {
      return row.role();
    }
    return column.role();
  }

  private void fill(XSSFCell target, Column column, Cell cell, StyleRole role, Rules rules) {
    Styles styles = sheets.styles();
    if (cell instanceof Cell.Text text) {
      words(target, text.text(), role, rules);
    } else if (cell instanceof Cell.Level level) {
      words(target, level.text(), level.role(), rules);
    } else if (cell instanceof Cell.Day day) {
      target.setCellValue(day.date());
      String format = styles.dateFormat(day.past());
      target.setCellStyle(styles.cell(role, format, HorizontalAlignment.CENTER, rules));
    } else if (cell instanceof Cell.Quantity quantity) {
      if (!column.formula().isEmpty()) {
        target.setCellFormula(references(column.formula(), target.getRowIndex()));
      }
      target.setCellValue(quantity.value());
      StyleRole own = quantity.role() == StyleRole.PLAIN ? role : quantity.role();
      String format = Styles.numberFormat(quantity);
      target.setCellStyle(styles.cell(own, format, HorizontalAlignment.RIGHT, rules));
    } else {
      target.setCellStyle(blank(column.entry().kind(), rules));
    }
  }

  private void words(XSSFCell target, String text, StyleRole role, Rules rules) {
    String cut = sheets.words().text("workbook.cut");
    target.setCellValue(
        text.length() <= LONGEST ? text : text.substring(0, LONGEST - cut.length()) + cut);
    target.setCellStyle(sheets.styles().words(role, text, rules));
  }

  private XSSFCellStyle blank(Entry.Kind kind, Rules rules) {
    Styles styles = sheets.styles();
    HorizontalAlignment align =
        kind == Entry.Kind.DATE || kind == Entry.Kind.TICK
            ? HorizontalAlignment.CENTER
            : HorizontalAlignment.LEFT;
    String format = kind == Entry.Kind.DATE ? styles.dateFormat(false) : Styles.GENERAL;
    return styles.cell(StyleRole.PLAIN, format, align, rules);
  }

  /** {@code {room}-{used}} as {@code C2-D2}. */
  private String references(String formula, int row) {
    Matcher ids = COLUMN_ID.matcher(formula);
    List<String> all = columns.stream().map(Column::id).toList();
    return ids.replaceAll(id -> new CellReference(row, all.indexOf(id.group(1))).formatAsString());
  }

  /** Columns at the right end that are only for the workbook are not printed. */
  private void printPaperColumnsOnly(int lastRow) {
    List<Column> printed = new ArrayList<>(columns);
    while (printed.get(printed.size() - 1).media().equals(Set.of(Medium.WORKBOOK))) {
      printed.remove(printed.size() - 1);
    }
    if (printed.size() < columns.size()) {
      int index = sheets.workbook().getSheetIndex(sheet);
      sheets.workbook().setPrintArea(index, 0, printed.size() - 1, 0, lastRow);
    }
  }
}
