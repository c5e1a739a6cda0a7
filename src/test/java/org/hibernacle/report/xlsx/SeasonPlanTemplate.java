package org.hibernacle.report.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Date;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Reproducibility;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.Palette;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;

/**
 * Builds {@code templates/season-plan.xlsx}, the standard look, from nothing. Run it ({@code mvn
 * test -Dtest=WorkbookTemplateTest -Dgolden.update=true}) after a change of columns or looks, and
 * look at a plan in a spreadsheet program.
 */
final class SeasonPlanTemplate {
  static final Path FILE = Path.of("templates", "season-plan.xlsx");

  /** Stands in the file in place of the time of the run. */
  private static final Date BUILT = new Date(1_780_000_000_000L);

  private static final String FONT = "Arial";

  private static final int DEEP_GREEN = 0x2F5D50;
  private static final int MOSS = 0x7E9A86;
  private static final int OCHRE = 0xC08A2E;
  private static final int SLATE = 0x7C8FA3;
  private static final int STONE = 0xA8ADA9;

  /** Colour of a sheet's tab: what to read, what to fill in, what lies behind it. */
  private static final Map<String, Integer> TABS =
      Map.of(
          "season_plan", MOSS, "changes", MOSS, "moving_days", OCHRE, "tasks", OCHRE, "log", OCHRE);

  private static final Map<StyleRole, String> MEANINGS = new EnumMap<>(StyleRole.class);

  static {
    MEANINGS.put(StyleRole.PLAIN, "Text and numbers; its font and size hold for all tables");
    MEANINGS.put(StyleRole.TITLE, "Titles, answers of the overview, the first row of a day");
    MEANINGS.put(StyleRole.HEADING, "Headings of columns and of parts");
    MEANINGS.put(StyleRole.SUBTLE, "What is less important: repeated days, work that is done");
    MEANINGS.put(StyleRole.MOVE_DOWN, "Move-down: from its home to sheltered ground");
    MEANINGS.put(StyleRole.MOVE_IN, "Move-in: to anything with a roof");
    MEANINGS.put(StyleRole.STEP_OUT, "Step-out: from a roofed place to the ground");
    MEANINGS.put(StyleRole.RETURN, "Return-to-bench: back home");
    MEANINGS.put(StyleRole.STAYS, "Stays where it is");
    MEANINGS.put(StyleRole.TASK, "Work beside the moves");
    MEANINGS.put(StyleRole.DANGER, "A plant that cannot be protected, overdue work, an error");
    MEANINGS.put(StyleRole.CAUTION, "Take care");
    MEANINGS.put(StyleRole.ENTRY, "Cells that the keeper fills in");
  }

  private final XSSFWorkbook book;
  private final Palette palette = Palette.standard();
  private final XSSFCellStyle row;
  private final XSSFCellStyle heading;

  private SeasonPlanTemplate(XSSFWorkbook book) {
    this.book = book;
    // The first font also sets the unit of column widths.
    book.getFontAt(0).setFontName(FONT);
    book.getFontAt(0).setFontHeightInPoints((short) 10);
    this.row = ruled(VerticalAlignment.CENTER, BorderStyle.THIN, palette.rule());
    this.heading = ruled(VerticalAlignment.BOTTOM, BorderStyle.MEDIUM, DEEP_GREEN);
  }

  static byte[] bytes() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      new SeasonPlanTemplate(book).build();
      Reproducibility.runWithSourceDateEpoch(() -> book.write(out));
      return out.toByteArray();
    }
  }

  static void write() throws IOException {
    Files.write(FILE, bytes());
  }

  private void build() {
    overview();
    Words words = Words.of(Locale.UK);
    SeasonReport report =
        ReportAuthor.write(
            Fixtures.withLogger(Fixtures.plan()),
            Fixtures.afterAnotherPlan(Fixtures.plan()),
            words);
    for (Anchor anchor : Anchor.all()) {
      if (anchor.equals(Anchor.TABLE)) {
        table(anchor, List.of(), STONE);
      } else if (!anchor.sheet().equals(Anchor.OVERVIEW_SHEET)) {
        table(anchor, columns(report, anchor), tab(anchor));
      }
    }
    styles();
    POIXMLProperties.CoreProperties properties = book.getProperties().getCoreProperties();
    properties.setTitle("Look of the season plan");
    properties.setCreator("Hibernacle");
    properties.setCreated(Optional.of(BUILT));
    properties.setModified(Optional.of(BUILT));
  }

  private static int tab(Anchor anchor) {
    return TABS.getOrDefault(anchor.name().replace("pattern_", ""), SLATE);
  }

  private static List<Section.Column> columns(SeasonReport report, Anchor anchor) {
    return report.sections().stream()
        .filter(s -> Anchor.ofSection(s.id()).filter(anchor::equals).isPresent())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no section for " + anchor))
        .columns()
        .stream()
        .filter(c -> c.media().contains(Medium.WORKBOOK))
        .toList();
  }

  private void overview() {
    XSSFSheet sheet = book.createSheet(Anchor.OVERVIEW_SHEET);
    sheet.setTabColor(colour(DEEP_GREEN));
    sheet.setDisplayGridlines(false);
    sheet.setColumnWidth(0, 2 * 256);
    sheet.setColumnWidth(1, 31 * 256);
    sheet.setColumnWidth(2, 74 * 256);
    XSSFRow title = sheet.createRow(0);
    title.setHeightInPoints(34);
    put(title, 1, "Title of the report", letters(20, true, StyleRole.TITLE));
    XSSFRow subtitle = sheet.createRow(1);
    subtitle.setHeightInPoints(22);
    put(subtitle, 1, "Site and season", letters(12, false, StyleRole.SUBTLE));
    XSSFRow answer = sheet.createRow(3);
    XSSFCellStyle question = letters(11, false, StyleRole.PLAIN);
    XSSFCellStyle reply = letters(14, true, StyleRole.TITLE);
    for (XSSFCellStyle style : List.of(question, reply)) {
      style.setVerticalAlignment(VerticalAlignment.CENTER);
      underline(style, BorderStyle.THIN, palette.rule());
    }
    put(answer, 1, "label", question);
    put(answer, 2, "text", reply);
    XSSFRow fact = sheet.createRow(5);
    put(fact, 1, "label", row);
    put(fact, 2, "text", row);
    name(Anchor.TITLE, "$B$1");
    name(Anchor.SUBTITLE, "$B$2");
    name(Anchor.ANSWER, "$B$4:$C$4");
    name(Anchor.FACT, "$B$6:$C$6");
    page(sheet, false);
  }

  private void table(Anchor anchor, List<Section.Column> columns, int tabColour) {
    XSSFSheet sheet = book.createSheet(anchor.sheet());
    sheet.setTabColor(colour(tabColour));
    sheet.setDisplayGridlines(false);
    XSSFRow headings = sheet.createRow(0);
    XSSFRow cells = sheet.createRow(1);
    for (int i = 0; i < Math.max(1, columns.size()); i++) {
      put(headings, i, columns.isEmpty() ? "Heading" : columns.get(i).heading(), heading);
      put(cells, i, columns.isEmpty() ? "any" : columns.get(i).id(), row);
      sheet.setColumnWidth(i, (columns.isEmpty() ? 12 : columns.get(i).width()) * 256);
    }
    CellRangeAddress covered = new CellRangeAddress(1, 1, 0, Math.max(1, columns.size()) - 1);
    name(anchor, covered.formatAsString("x", true).replaceAll("^.*!", ""));
    sheet.createFreezePane(0, 1);
    page(sheet, !anchor.equals(Anchor.ofSection("occupancy").orElseThrow()));
  }

  private void page(XSSFSheet sheet, boolean landscape) {
    sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
    sheet.getPrintSetup().setLandscape(landscape);
    sheet.setMargin(PageMargin.LEFT, 0.45);
    sheet.setMargin(PageMargin.RIGHT, 0.45);
    sheet.setMargin(PageMargin.TOP, 0.8);
    sheet.setMargin(PageMargin.BOTTOM, 0.7);
    sheet.setMargin(PageMargin.HEADER, 0.35);
    sheet.setMargin(PageMargin.FOOTER, 0.35);
    sheet.getHeader().setLeft("&B{sheet}");
    sheet.getHeader().setRight("{subtitle}");
    sheet.getFooter().setLeft("&9{origin}");
    sheet.getFooter().setRight("&9{run}   {page}");
  }

  private void styles() {
    XSSFSheet sheet = book.createSheet(RoleSheet.NAME);
    sheet.setColumnWidth(0, 18 * 256);
    sheet.setColumnWidth(1, 70 * 256);
    for (StyleRole role : StyleRole.values()) {
      Palette.Look look = palette.look(role);
      XSSFCellStyle style = letters(10, look.bold(), role);
      if (look.fill() != palette.paper()) {
        style.setFillForegroundColor(colour(look.fill()));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      }
      XSSFRow row = sheet.createRow(role.ordinal());
      put(row, 0, RoleSheet.key(role), style);
      row.createCell(1).setCellValue(MEANINGS.get(role));
    }
    book.setSheetVisibility(book.getSheetIndex(sheet), SheetVisibility.HIDDEN);
  }

  private static void put(XSSFRow row, int column, String text, XSSFCellStyle style) {
    XSSFCell cell = row.createCell(column);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }

  private void name(Anchor anchor, String cells) {
    Formulas.define(book, anchor.name(), "'" + anchor.sheet() + "'!" + cells);
  }

  private XSSFCellStyle ruled(VerticalAlignment place, BorderStyle line, int rgb) {
    XSSFCellStyle style = book.createCellStyle();
    style.setVerticalAlignment(place);
    style.setWrapText(true);
    underline(style, line, rgb);
    return style;
  }

  private static void underline(XSSFCellStyle style, BorderStyle line, int rgb) {
    style.setBorderBottom(line);
    style.setBottomBorderColor(colour(rgb));
  }

  private XSSFCellStyle letters(double sizePt, boolean bold, StyleRole role) {
    XSSFFont font = book.createFont();
    font.setFontName(FONT);
    font.setFontHeight(sizePt);
    font.setBold(bold);
    font.setColor(colour(palette.look(role).ink()));
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    return style;
  }

  private static XSSFColor colour(int rgb) {
    return Styles.colour(rgb);
  }
}
