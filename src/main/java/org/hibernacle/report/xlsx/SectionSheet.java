package org.hibernacle.report.xlsx;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Entry;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.xlsx.Styles.Trait;

/** One section as a sheet: headings in the first row, data right below, nothing else. */
final class SectionSheet {
  /** Longest text that a cell takes. */
  private static final int LONGEST = 32_767;

  /** Lines of a heading at least, so that sheets begin alike. */
  private static final int HEADING_LINES = 2;

  /** Room of the button that filters, in characters. */
  private static final double BUTTON = 2;

  /** Columns whose links are underlined; a sheet full of lines would be hard to read. */
  private static final Set<String> NAMES = Set.of("id", "name");

  private final Sheets sheets;
  private final Pattern pattern;
  private final Display display;
  private final Section section;
  private final List<Column> columns;
  private final XSSFSheet sheet;
  private final boolean grouped;

  SectionSheet(Sheets sheets, Section section) {
    this.sheets = sheets;
    this.pattern = sheets.patterns().ofSection(section.id());
    this.display = new Display(sheets.words());
    this.section = section;
    this.grouped = section.isGrouped();
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
    sheets.dress(sheet, pattern.sheet());
    for (int i = 0; i < columns.size(); i++) {
      column(i, lastRow);
    }
    Formulas.define(
        sheets.workbook(),
        "table_" + section.id().replace('-', '_'),
        table.formatAsString(sheet.getSheetName(), true));
    print(lastRow);
    return sheet.getSheetName();
  }

  private double width(Column column) {
    return pattern.width(column.id()).orElse((double) column.width());
  }

  private void column(int index, int lastRow) {
    Column column = columns.get(index);
    sheet.setColumnWidth(index, (int) Math.round(width(column) * 256));
    sheets.lists().check(sheet, column, index, section.rows().size());
    CellRangeAddress cells = new CellRangeAddress(1, lastRow, index, index);
    sheets.formulas().column(section.id(), column.id(), sheet.getSheetName(), cells);
    sheets.marks().put(sheet, cells, column.live().marks(), format(index), inRow(1));
  }

  /** Format of the first number below a heading. */
  private String format(int index) {
    int all = section.columns().indexOf(columns.get(index));
    return section.rows().stream()
        .map(row -> row.cells().get(all))
        .filter(Cell.Quantity.class::isInstance)
        .map(cell -> Styles.numberFormat((Cell.Quantity) cell))
        .findFirst()
        .orElse("0");
  }

  private void headings() {
    XSSFRow row = sheet.createRow(0);
    int lines = HEADING_LINES;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(column.heading());
      cell.setCellStyle(
          sheets
              .styles()
              .cell(
                  pattern.heading(column.id()),
                  StyleRole.HEADING,
                  Styles.GENERAL,
                  aligned(column),
                  EnumSet.of(Trait.WRAPPED)));
      // Bold letters are wider.
      lines = Math.max(lines, Paragraphs.lines(column.heading(), width(column) * 0.95 - BUTTON));
      if (!column.help().isEmpty()) {
        Notes.put(cell, column.help());
      }
    }
    Paragraphs.fit(row, lines, sheets.styles().textPt());
  }

  /** A heading stands where what is below it stands, or would stand. */
  private HorizontalAlignment aligned(Column column) {
    if (column.numeric()) {
      return HorizontalAlignment.RIGHT;
    }
    if (column.entry().kind() == Entry.Kind.DATE || column.entry().kind() == Entry.Kind.TICK) {
      return HorizontalAlignment.CENTER;
    }
    int all = section.columns().indexOf(column);
    return section.rows().stream()
        .map(row -> row.cells().get(all))
        .map(
            cell ->
                cell instanceof Cell.Quantity
                    ? HorizontalAlignment.RIGHT
                    : cell instanceof Cell.Day
                        ? HorizontalAlignment.CENTER
                        : HorizontalAlignment.LEFT)
        .filter(place -> place != HorizontalAlignment.LEFT)
        .findFirst()
        .orElse(HorizontalAlignment.LEFT);
  }

  private void row(int number) {
    Section.Row row = section.rows().get(number);
    boolean again = section.continuesGroup(number);
    Set<Trait> traits = grouped && !again ? EnumSet.of(Trait.GROUP) : EnumSet.noneOf(Trait.class);
    XSSFRow target = sheet.createRow(sheet.getLastRowNum() + 1);
    int lines = 1;
    int index = 0;
    for (int i = 0; i < section.columns().size(); i++) {
      Column column = section.columns().get(i);
      if (column.media().contains(Medium.WORKBOOK)) {
        Cell cell = row.cells().get(i);
        StyleRole role = i == 0 && grouped ? groupRole(again) : role(column, row);
        XSSFCell written = target.createCell(index++);
        fill(written, column, cell, role, traits);
        lead(written, column, row);
        lines = Math.max(lines, Paragraphs.lines(display.text(cell), width(column)));
      }
    }
    Paragraphs.fit(target, lines, sheets.styles().textPt());
    sheets.leads().row(section.id(), row.about(), target.getCell(0));
  }

  private void lead(XSSFCell cell, Column column, Section.Row row) {
    if (!row.about().isEmpty()) {
      column.live().lead().ifPresent(l -> sheets.leads().wish(cell, l, row.about().get(0)));
    }
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
    return column.entry().kind() == Entry.Kind.NONE ? column.role() : StyleRole.ENTRY;
  }

  private void fill(XSSFCell target, Column column, Cell cell, StyleRole role, Set<Trait> traits) {
    Styles styles = sheets.styles();
    XSSFCellStyle like = pattern.cell(column.id());
    // A look that depends on what the keeper enters is no fixed one.
    boolean fixed = column.live().marks().isEmpty();
    if (cell instanceof Cell.Text text) {
      words(target, text.text(), column, role, traits);
    } else if (cell instanceof Cell.Level level) {
      words(target, level.text(), column, fixed ? level.role() : role, traits);
    } else if (cell instanceof Cell.Day day) {
      target.setCellValue(day.date());
      String format = styles.dateFormat(day.past());
      target.setCellStyle(styles.cell(like, role, format, HorizontalAlignment.CENTER, traits));
    } else if (cell instanceof Cell.Quantity quantity) {
      target.setCellValue(quantity.value());
      boolean own = fixed && quantity.role() != StyleRole.PLAIN;
      target.setCellStyle(
          styles.cell(
              like,
              own ? quantity.role() : role,
              Styles.numberFormat(quantity),
              HorizontalAlignment.RIGHT,
              traits));
    } else {
      target.setCellStyle(blank(column, role, traits));
      return;
    }
    if (!column.live().formula().isEmpty()) {
      sheets.formulas().put(target, column.live().formula(), inRow(target.getRowIndex()));
    }
  }

  private void words(
      XSSFCell target, String text, Column column, StyleRole role, Set<Trait> traits) {
    String cut = sheets.words().text("workbook.cut");
    target.setCellValue(
        text.length() <= LONGEST ? text : text.substring(0, LONGEST - cut.length()) + cut);
    Set<Trait> all = EnumSet.noneOf(Trait.class);
    all.addAll(traits);
    if (column.live().lead().isPresent() && NAMES.contains(column.id())) {
      all.add(Trait.LEADS);
    }
    target.setCellStyle(sheets.styles().words(pattern.cell(column.id()), role, text, all));
  }

  private XSSFCellStyle blank(Column column, StyleRole role, Set<Trait> traits) {
    Styles styles = sheets.styles();
    Entry.Kind kind = column.entry().kind();
    HorizontalAlignment align =
        kind == Entry.Kind.DATE || kind == Entry.Kind.TICK
            ? HorizontalAlignment.CENTER
            : HorizontalAlignment.LEFT;
    String format = kind == Entry.Kind.DATE ? styles.dateFormat(false) : Styles.GENERAL;
    StyleRole shown = kind == Entry.Kind.NONE ? StyleRole.PLAIN : role;
    return styles.cell(pattern.cell(column.id()), shown, format, align, traits);
  }

  /** The address of a column's cell in a row. */
  private UnaryOperator<String> inRow(int row) {
    List<String> all = columns.stream().map(Column::id).toList();
    return id -> {
      int column = all.indexOf(id);
      if (column < 0) {
        throw new IllegalArgumentException("no column " + id + " in " + section.id());
      }
      return new CellReference(row, column, false, true).formatAsString();
    };
  }

  /**
   * Columns at the right end that are only for the workbook are folded away, and not printed where
   * the section is one for paper too.
   */
  private void print(int lastRow) {
    int printed = columns.size();
    while (printed > 1 && columns.get(printed - 1).media().equals(Set.of(Medium.WORKBOOK))) {
      printed--;
    }
    if (printed < columns.size()) {
      sheet.groupColumn(printed, columns.size() - 1);
      sheet.setColumnGroupCollapsed(printed, true);
      int index = sheets.workbook().getSheetIndex(sheet);
      sheets.workbook().setPrintArea(index, 0, printed - 1, 0, lastRow);
    }
    List<Double> widths = columns.subList(0, printed).stream().map(this::width).toList();
    sheets.pages().apply(sheet, pattern.sheet(), widths, Math.min(2, printed), 1);
  }
}
