package org.hibernacle.report.xlsx;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.ForScreen;
import org.hibernacle.report.ForScreen.IdColumn;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.SeasonReport.Asked;
import org.hibernacle.report.Section.Lead;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.xlsx.Styles.Trait;

/** A sheet of the inventory, cell by cell as it was found. */
final class CarriedSheet {
  private static final int NARROWEST = 9;
  private static final int WIDEST = 40;
  private static final int WIDEST_REASON = 120;

  private final Sheets sheets;
  private final Pattern pattern;
  private final SheetTable table;
  private final List<Asked> asked;
  private final Optional<IdColumn> ids;

  CarriedSheet(Sheets sheets, SheetTable table, SeasonReport report) {
    this.sheets = sheets;
    this.pattern = sheets.patterns().of(Anchor.TABLE);
    this.table = table;
    this.asked = report.asked().stream().filter(a -> a.sheet().equals(table.name())).toList();
    this.ids =
        report.forScreen().ids().stream().filter(i -> i.sheet().equals(table.name())).findFirst();
  }

  /** Writes the sheet and tells its name. */
  String write() {
    XSSFSheet sheet = sheets.addCarried(table.name());
    sheets.dress(sheet, pattern.sheet());
    XSSFRow headings = sheet.createRow(0);
    for (int i = 0; i < table.headings().size(); i++) {
      XSSFCell cell = headings.createCell(i);
      cell.setCellValue(table.headings().get(i));
      cell.setCellStyle(
          sheets
              .styles()
              .words(pattern.heading(""), StyleRole.HEADING, table.headings().get(i), Set.of()));
      sheet.setColumnWidth(i, width(table, i) * 256);
    }
    for (List<Object> values : table.rows()) {
      XSSFRow row = sheet.createRow(sheet.getLastRowNum() + 1);
      for (int i = 0; i < values.size(); i++) {
        fill(row, i, values.get(i));
      }
      ids.ifPresent(i -> lead(row, values, i));
    }
    asked.forEach(a -> ask(sheet, a));
    sheet.createFreezePane(1, 1);
    List<Double> widths =
        IntStream.range(0, table.headings().size())
            .mapToObj(i -> sheet.getColumnWidth(i) / 256.0)
            .toList();
    sheets.pages().apply(sheet, pattern.sheet(), widths, naming(), 1);
    return sheet.getSheetName();
  }

  /** How many columns at the left tell which row it is: the first, and the one beside an Id. */
  private int naming() {
    return ids.isPresent() ? Math.min(2, table.headings().size()) : 1;
  }

  /** From a plant of the inventory to its row in the plan, and back. */
  private void lead(XSSFRow row, List<Object> values, IdColumn ids) {
    int column = table.headings().indexOf(ids.heading());
    String id = SheetTable.plainText(values.get(column));
    XSSFCell cell = row.getCell(column);
    if (cell != null) {
      sheets.leads().row(ForScreen.INVENTORY, List.of(id), cell);
      sheets.leads().wish(cell, new Lead(ids.back(), ""), id);
    }
  }

  /** Offers the answers, and marks the cells in which one is wanted. */
  private void ask(XSSFSheet sheet, Asked question) {
    int answers = table.headings().indexOf(question.heading());
    int beside = table.headings().indexOf(question.beside());
    sheets.lists().choose(sheet, "answer", question.answers(), answers, table.rows().size());
    if (answers + 1 < table.headings().size()) {
      // The reason stands beside the answer and is to be read whole.
      sheet.setColumnWidth(answers + 1, width(table, answers + 1, WIDEST_REASON) * 256);
    }
    for (int i = 0; i < table.rows().size(); i++) {
      if (!table.rows().get(i).get(beside).equals("")) {
        XSSFRow row = sheet.getRow(i + 1);
        for (int column : List.of(beside, answers)) {
          XSSFCell cell = row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
          cell.setCellStyle(
              sheets
                  .styles()
                  .cell(
                      pattern.cell(""),
                      StyleRole.CAUTION,
                      Styles.GENERAL,
                      HorizontalAlignment.CENTER,
                      Set.of()));
        }
      }
    }
  }

  private void fill(XSSFRow row, int column, Object value) {
    XSSFCell cell = row.createCell(column);
    if (value.equals("")) {
      cell.setCellStyle(style(Styles.GENERAL, HorizontalAlignment.LEFT, Set.of()));
      return;
    }
    if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      cell.setCellStyle(style("yyyy-mm-dd", HorizontalAlignment.CENTER, Set.of()));
    } else if (value instanceof Double number) {
      cell.setCellValue(number);
      cell.setCellStyle(style(Styles.GENERAL, HorizontalAlignment.RIGHT, Set.of()));
    } else if (value instanceof Boolean yes) {
      cell.setCellValue(yes);
      cell.setCellStyle(style(Styles.GENERAL, HorizontalAlignment.LEFT, Set.of()));
    } else {
      cell.setCellValue(value.toString());
      boolean quoted = Styles.startsLikeFormula(value.toString());
      Set<Trait> traits = quoted ? EnumSet.of(Trait.QUOTED) : Set.of();
      cell.setCellStyle(style(Styles.GENERAL, HorizontalAlignment.LEFT, traits));
    }
  }

  private XSSFCellStyle style(String format, HorizontalAlignment align, Set<Trait> traits) {
    return sheets.styles().cell(pattern.cell(""), StyleRole.PLAIN, format, align, traits);
  }

  private static int width(SheetTable table, int column) {
    return width(table, column, WIDEST);
  }

  private static int width(SheetTable table, int column, int widest) {
    int longest =
        table.rows().stream().mapToInt(row -> row.get(column).toString().length()).max().orElse(0);
    int heading = table.headings().get(column).length();
    return Math.min(widest, Math.max(NARROWEST, Math.max(longest, heading) + 3));
  }
}
