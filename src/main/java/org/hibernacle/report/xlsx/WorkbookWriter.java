package org.hibernacle.report.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.util.Reproducibility;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.Words;

/**
 * Writes the report as a workbook: an overview, one sheet a section with its headings in the first
 * row and the data right below, then the keeper's inventory as it was found.
 *
 * <p>Equal reports give equal bytes. The library keeps the way to that in static state, so one
 * workbook is written at a time.
 */
public final class WorkbookWriter {
  /** Name whose value tells readers how the workbook is laid out. */
  public static final String FORMAT_NAME = "HibernacleFormat";

  /** Name given to each sheet that is not the keeper's inventory. */
  public static final String REPORT_SHEET_NAME = "HibernacleReport";

  /** Name of the cells in which a plan tells programs about itself. */
  public static final String RECORD_NAME = "HibernacleRecord";

  /** Layout written by this class. */
  public static final int FORMAT = 1;

  private WorkbookWriter() {}

  /**
   * Writes the workbook in the standard look and leaves the stream open.
   *
   * @throws IOException if the stream can not be written
   */
  public static void write(SeasonReport report, OutputStream out) throws IOException {
    write(report, WorkbookTemplate.standard(), out);
  }

  /**
   * Writes the workbook in the look of a template and leaves the stream open.
   *
   * @param template that {@link WorkbookTemplate#check} finds nothing wrong with
   * @throws IOException if the stream can not be written
   */
  public static synchronized void write(
      SeasonReport report, WorkbookTemplate template, OutputStream out) throws IOException {
    LocaleUtil.setUserLocale(report.language());
    LocaleUtil.setUserTimeZone(LocaleUtil.TIMEZONE_UTC);
    try {
      Reproducibility.runWithSourceDateEpoch(
          () -> {
            try (XSSFWorkbook workbook = template.open()) {
              fill(workbook, report, template);
              workbook.write(out);
            }
          });
    } finally {
      LocaleUtil.resetUserLocale();
      LocaleUtil.resetUserTimeZone();
    }
  }

  private static void fill(XSSFWorkbook workbook, SeasonReport report, WorkbookTemplate template) {
    Sheets sheets = sheets(workbook, report, template);
    OverviewSheet overview = new OverviewSheet(sheets, report);
    for (XSSFSheet extra : sheets.patterns().extras()) {
      Sheets.markAsOwn(workbook, extra);
    }
    for (Section section : report.sections()) {
      if (section.media().contains(Medium.WORKBOOK)) {
        String name = new SectionSheet(sheets, section).write();
        overview.list(name, sheets.words().sentences(section.intro()));
        if (!section.rows().isEmpty()) {
          report.forScreen().charts().stream()
              .filter(chart -> chart.section().equals(section.id()))
              .forEach(chart -> ChartDrawing.draw(sheets, section, chart));
        }
      }
    }
    for (SheetTable table : report.carried()) {
      String name = new CarriedSheet(sheets, table, report).write();
      overview.list(name, sheets.words().text(holds(table, report)));
    }
    overview.finish();
    sheets.lists().finish(sheets);
    sheets.formulas().finish();
    sheets.leads().finish();
    sheets.patterns().finish(sheets.names());
    record(sheets, report);
    Formulas.define(workbook, FORMAT_NAME, Integer.toString(FORMAT));
    describe(workbook, report);
  }

  /** Puts the record on a sheet that no keeper meets. */
  private static void record(Sheets sheets, SeasonReport report) {
    if (report.forScreen().record().isEmpty()) {
      return;
    }
    Set<String> ticked =
        report.sections().stream()
            .flatMap(section -> section.columns().stream())
            .filter(column -> column.entry().kind() == Section.Entry.Kind.TICK)
            .map(Section.Column::heading)
            .collect(Collectors.toSet());
    List<List<String>> lines = new ArrayList<>(report.forScreen().record());
    lines.add(Seal.line(sheets.workbook(), ticked));
    XSSFSheet sheet = sheets.addOwn(sheets.words().text("workbook.record"));
    int width = 1;
    for (int i = 0; i < lines.size(); i++) {
      XSSFRow row = sheet.createRow(i);
      for (String text : lines.get(i)) {
        row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(text);
      }
      width = Math.max(width, lines.get(i).size());
    }
    CellRangeAddress cells = new CellRangeAddress(0, lines.size() - 1, 0, width - 1);
    Formulas.define(
        sheets.workbook(), RECORD_NAME, cells.formatAsString(sheet.getSheetName(), true));
    sheets
        .workbook()
        .setSheetVisibility(sheets.workbook().getSheetIndex(sheet), SheetVisibility.VERY_HIDDEN);
  }

  private static Sheets sheets(
      XSSFWorkbook workbook, SeasonReport report, WorkbookTemplate template) {
    Words words = Words.of(report.language());
    Patterns patterns = new Patterns(workbook);
    SheetNames names = new SheetNames(words);
    Formulas formulas = new Formulas(workbook);
    return new Sheets(
        workbook,
        patterns,
        new Styles(workbook, template, words),
        names,
        new PageSetup(report, words),
        formulas,
        new Leads(workbook),
        new Marks(workbook, template.palette(), formulas),
        new Lists(words),
        words);
  }

  private static String holds(SheetTable table, SeasonReport report) {
    if (report.asked().stream().anyMatch(a -> a.sheet().equals(table.name()))) {
      return "workbook.asked";
    }
    return report.sections().isEmpty() ? "workbook.inventory" : "workbook.carried";
  }

  private static void describe(XSSFWorkbook workbook, SeasonReport report) {
    CoreProperties core = workbook.getProperties().getCoreProperties();
    Date dated = Date.from(report.dated().atStartOfDay(ZoneOffset.UTC).toInstant());
    core.setTitle(report.title());
    core.setSubjectProperty(report.subtitle());
    core.setCreator("Hibernacle");
    core.setIdentifier(report.digest());
    core.setCreated(Optional.of(dated));
    core.setModified(Optional.of(dated));
  }
}
