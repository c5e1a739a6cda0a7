package org.hibernacle.report.xlsx;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.ReviewAuthor;
import org.hibernacle.report.ReviewFixtures;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** What the workbook does by itself, and whether other programs can open it. */
class LiveWorkbookTest {
  private static byte[] plan;
  private static byte[] review;

  @BeforeAll
  static void write() throws IOException {
    Words words = Words.of(Locale.UK);
    plan =
        bytes(
            ReportAuthor.write(
                Fixtures.inSeason(Fixtures.plan(), OptionalDouble.of(-6.5)),
                Fixtures.afterAnotherPlan(Fixtures.plan()),
                words));
    review = bytes(ReviewAuthor.write(ReviewFixtures.review(), Fixtures.facts(), words));
  }

  private static byte[] bytes(SeasonReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(report, out);
    return out.toByteArray();
  }

  private static XSSFWorkbook open(byte[] bytes) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  /** ECMA-376 part 2: every part is named once, has a type, and each relation has its target. */
  @Test
  void theFileIsAWholePackage() throws Exception {
    for (byte[] file : List.of(plan, review)) {
      Map<String, String> parts = Parts.of(file);
      Set<String> names = new HashSet<>();
      parts.keySet().forEach(n -> assertTrue(names.add(n.toLowerCase(Locale.ROOT)), n));
      String types = parts.get("[Content_Types].xml");
      for (Map.Entry<String, String> part : parts.entrySet()) {
        assertDoesNotThrow(
            () ->
                DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(part.getValue()))),
            part.getKey());
        String ending = part.getKey().substring(part.getKey().lastIndexOf('.') + 1);
        assertTrue(
            types.contains("PartName=\"/" + part.getKey() + "\"")
                || types.contains("Extension=\"" + ending + "\""),
            part.getKey());
        if (part.getKey().endsWith(".rels")) {
          targets(part.getKey(), part.getValue()).forEach(t -> assertNotNull(parts.get(t), t));
        }
      }
      Matcher typed = Pattern.compile("PartName=\"/([^\"]+)\"").matcher(types);
      while (typed.find()) {
        assertNotNull(parts.get(typed.group(1)), typed.group(1));
      }
    }
  }

  private static List<String> targets(String rels, String text) {
    String folder = rels.replaceAll("_rels/[^/]*$", "");
    List<String> targets = new ArrayList<>();
    Matcher target = Pattern.compile("Target=\"([^\"]+)\"([^>]*)").matcher(text);
    while (target.find()) {
      if (!target.group(2).contains("External") && !target.group(1).startsWith("#")) {
        String path = target.group(1).startsWith("/") ? target.group(1) : folder + target.group(1);
        targets.add(java.nio.file.Path.of("/" + path).normalize().toString().substring(1));
      }
    }
    return targets;
  }

  /** ECMA-376 part 1, 21.2.2.27 and 18.8.14: children come once and in this order. */
  @Test
  void chartsAndConditionsKeepToTheSchema() throws IOException {
    Map<String, String> parts = Parts.of(plan);
    List<String> charts =
        parts.keySet().stream().filter(n -> n.matches("xl/charts/chart\\d+.xml")).toList();
    assertEquals(2, charts.size());
    for (String chart : charts) {
      assertEquals(2, parts.get(chart).split("plotVisOnly", -1).length, chart);
      assertTrue(parts.get(chart).contains("plotVisOnly val=\"false\""), chart);
      assertEquals(3, parts.get(chart).split(":title>", -1).length / 2, chart);
    }
    String conditions = parts.get("xl/styles.xml").replaceAll("(?s).*<dxfs|</dxfs>.*", "");
    assertFalse(conditions.matches("(?s).*<color[^>]*/><b .*"), conditions);
    assertFalse(conditions.matches("(?s).*<fill>.*?</fill><(?:font|numFmt).*?</dxf>.*"));
    assertTrue(conditions.contains("formatCode=\"0&quot; !&quot;\""), conditions);
  }

  @Test
  void aSecondReaderOpensEverySheet() throws IOException {
    for (byte[] file : List.of(plan, review)) {
      try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(file))) {
        book.getSheets()
            .forEach(sheet -> assertDoesNotThrow(() -> assertFalse(sheet.read().isEmpty())));
      }
    }
  }

  /** Newer functions carry a prefix, and these are worked out anew at every key. */
  @Test
  void formulasAskForNothingNewAndNothingRestless() throws IOException {
    try (XSSFWorkbook book = open(plan)) {
      int formulas = 0;
      for (Cell cell : formulas(book)) {
        String formula = cell.getCellFormula();
        for (String word : List.of("_xlfn", "NOW(", "TODAY(", "INDIRECT(", "OFFSET(", "RAND")) {
          assertFalse(formula.contains(word), formula);
        }
        assertFalse(cell.getCachedFormulaResultType() == CellType.ERROR, formula);
        formulas++;
      }
      assertTrue(formulas > 100, formulas + " formulas");
    }
  }

  private static List<Cell> formulas(XSSFWorkbook book) {
    List<Cell> found = new ArrayList<>();
    book.forEach(
        sheet ->
            sheet.forEach(
                row ->
                    row.forEach(
                        cell -> {
                          if (cell.getCellType() == CellType.FORMULA) {
                            found.add(cell);
                          }
                        })));
    return found;
  }

  @Test
  void theFirstSheetAnswersForTheDayOfThePlan() throws IOException {
    try (XSSFWorkbook book = open(plan)) {
      CellReference at = new CellReference(book.getName("as_of").getRefersToFormula());
      assertEquals("Overview", at.getSheetName());
      XSSFSheet overview = book.getSheet("Overview");
      assertEquals(1, overview.getDataValidations().size());
      for (String name : List.of("next_moving_day", "pots_next", "pots_moved", "pots_left")) {
        CellReference cell = new CellReference(book.getName(name).getRefersToFormula());
        assertEquals(
            CellType.FORMULA, overview.getRow(cell.getRow()).getCell(cell.getCol()).getCellType());
      }
    }
  }

  @Test
  void aPlantsRowsLeadToEachOther() throws IOException {
    try (XSSFWorkbook book = open(plan)) {
      assertEquals("'Plants'!A2", link(book, "Season plan", "Id", "P-01"));
      String onLog = link(book, "Season plan", "Name", "P-02");
      assertTrue(onLog.startsWith("'Log'!A"), onLog);
      assertEquals("P-02", target(book, onLog));
      assertEquals("P-02", target(book, link(book, "Log", "Id", "P-02")));
      assertEquals("P-02", target(book, link(book, "Plants", "Id", "P-02")));
      String moving = link(book, "Season plan", "Move-down", "P-02");
      XSSFSheet days = book.getSheet("Moving days");
      Row row = days.getRow(new CellReference(moving).getRow());
      assertEquals("move-down", row.getCell(TestSheets.column(days, "Move")).toString());
      assertEquals("P-02", row.getCell(TestSheets.column(days, "Id")).toString());
      assertEquals("P-02", target(book, link(book, "Moving days", "Id", "P-02")));
    }
  }

  private static String link(XSSFWorkbook book, String sheet, String heading, String id) {
    XSSFSheet found = book.getSheet(sheet);
    int ids = TestSheets.column(found, "Id");
    return TestSheets.rows(found)
        .filter(row -> row.getCell(ids).toString().equals(id))
        .findFirst()
        .orElseThrow()
        .getCell(TestSheets.column(found, heading))
        .getHyperlink()
        .getAddress();
  }

  private static String target(XSSFWorkbook book, String address) {
    CellReference at = new CellReference(address);
    return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(0).toString();
  }

  /**
   * A digit of Arial is 0.556 of its letters' size wide (by its tables of widths, from memory); a
   * program that rounds it to 7 dots of 96 an inch (ECMA-376 part 1, 18.3.1.13) makes columns
   * narrower.
   */
  @Test
  void nothingIsPrintedSmallerThanSevenTenths() throws IOException {
    for (byte[] file : List.of(plan, review)) {
      try (XSSFWorkbook book = open(file)) {
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
          if (!book.isSheetHidden(i)) {
            XSSFSheet sheet = book.getSheetAt(i);
            int pages = pagesAcross(book, sheet, 0.7);
            assertTrue(
                pages <= sheet.getPrintSetup().getFitWidth(),
                book.getSheetName(i) + " takes " + pages + " pages at 0.7");
          }
        }
      }
    }
  }

  /** Common practice, no source: a page without the row's name is of no use. */
  @Test
  void rowsHaveTheirNamesOnEachPage() throws IOException {
    int several = 0;
    try (XSSFWorkbook book = open(plan)) {
      for (int i = 0; i < book.getNumberOfSheets(); i++) {
        XSSFSheet sheet = book.getSheetAt(i);
        if (!book.isSheetHidden(i) && sheet.getPrintSetup().getFitWidth() > 1) {
          several++;
          assertEquals(0, sheet.getRepeatingColumns().getFirstColumn(), book.getSheetName(i));
        }
      }
    }
    assertTrue(several > 0, "a sheet on several pages side by side");
  }

  /** Pages end between columns; those at the left that are repeated stand on each. */
  private static int pagesAcross(XSSFWorkbook book, XSSFSheet sheet, double scale) {
    String area = book.getPrintArea(book.getSheetIndex(sheet));
    int from = 0;
    int to = sheet.getRow(0).getLastCellNum() - 1;
    if (area != null) {
      String[] ends = area.split(",")[0].replaceAll("^.*!", "").split(":");
      from = new CellReference(ends[0]).getCol();
      to = new CellReference(ends[1]).getCol();
    }
    // ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: Letter is 8.5 x 11 in.
    boolean letter = sheet.getPrintSetup().getPaperSize() == PrintSetup.LETTER_PAPERSIZE;
    boolean landscape = sheet.getPrintSetup().getLandscape();
    double page = landscape ? (letter ? 11 : 297 / 25.4) : (letter ? 8.5 : 210 / 25.4);
    double across = page - sheet.getMargin(PageMargin.LEFT) - sheet.getMargin(PageMargin.RIGHT);
    CellRangeAddress repeated = sheet.getRepeatingColumns();
    double names = 0;
    double used = 0;
    int pages = 1;
    for (int column = from; column <= to; column++) {
      double inches =
          sheet.isColumnHidden(column)
              ? 0
              : scale * sheet.getColumnWidth(column) / 256.0 * 0.556 * 10 / 72;
      if (repeated != null && column <= repeated.getLastColumn()) {
        names += inches;
      }
      assertTrue(names + inches <= across, book.getSheetName(book.getSheetIndex(sheet)));
      if (used + inches > across) {
        pages++;
        used = names;
      }
      used += inches;
    }
    return pages;
  }

  @Test
  void everyCellThatSaysSomethingIsLegible() throws IOException {
    for (byte[] file : List.of(plan, review)) {
      try (XSSFWorkbook book = open(file)) {
        for (int i = 0; i < book.getNumCellStyles(); i++) {
          XSSFCellStyle style = book.getCellStyleAt(i);
          assertTrue(style.getFont().getFontHeightInPoints() >= 9, "style " + i);
          if (style.getFillPattern() == FillPatternType.SOLID_FOREGROUND) {
            int fill = rgb(style.getFillForegroundXSSFColor());
            int ink = rgb(style.getFont().getXSSFColor());
            assertTrue(Contrast.of(fill, ink) >= 4.5, "%06x on %06x".formatted(ink, fill));
          }
        }
      }
    }
  }

  private static int rgb(XSSFColor colour) {
    byte[] rgb = colour.getRGB();
    return ((rgb[0] & 0xFF) << 16) | ((rgb[1] & 0xFF) << 8) | (rgb[2] & 0xFF);
  }

  @Test
  void contrastIsThatOfTheGuideline() {
    // WCAG 2.1: black on white is 21 : 1; #777777 on white is 4.48 : 1 (G18, just too weak).
    assertEquals(21, Contrast.of(0x000000, 0xFFFFFF), 1e-9);
    assertEquals(4.48, Contrast.of(0xFFFFFF, 0x777777), 0.005);
  }
}
