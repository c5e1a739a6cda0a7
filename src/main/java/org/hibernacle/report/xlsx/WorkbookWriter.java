package org.hibernacle.report.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.util.Reproducibility;
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

  /** Sheets by whose names a plan is an inventory too; no title of a section takes one away. */
  static final Set<String> INVENTORY = Set.of("Plants", "Places", "Species", "Settings");

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
    report.carried().stream()
        .map(SheetTable::name)
        .filter(INVENTORY::contains)
        .forEach(sheets.names()::keep);
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
    Optional<RecordSheet> record = RecordSheet.of(sheets, report);
    sheets.patterns().finish(sheets.names());
    record.ifPresent(RecordSheet::finish);
    Formulas.define(workbook, FORMAT_NAME, Integer.toString(FORMAT));
    describe(workbook, report);
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
