package org.hibernacle.report.xlsx;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.SheetTable;
import org.hibernacle.report.Fixtures;
import org.hibernacle.report.Palette;
import org.hibernacle.report.ReportAuthor;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.StyleRole;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class WorkbookTemplateTest {
  /** The standard template, opened and saved in an office program. */
  private static final Path SAVED_ELSEWHERE =
      Path.of("src/test/resources/templates/saved-elsewhere.xlsx");

  private static final SeasonReport REPORT =
      ReportAuthor.write(Fixtures.plan(), Fixtures.facts(), Words.of(Locale.UK));

  private static WorkbookTemplate read(byte[] bytes) throws IOException {
    return WorkbookTemplate.read(new ByteArrayInputStream(bytes), "look.xlsx");
  }

  private static byte[] changed(Consumer<XSSFWorkbook> change) throws IOException {
    try (XSSFWorkbook book = WorkbookTemplate.standard().open();
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      change.accept(book);
      book.write(out);
      return out.toByteArray();
    }
  }

  private static XSSFWorkbook written(WorkbookTemplate template) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(REPORT, template, out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  private static XSSFCell role(XSSFWorkbook book, StyleRole role) {
    for (Row row : book.getSheet(RoleSheet.NAME)) {
      if (row.getCell(0).getStringCellValue().equals(RoleSheet.key(role))) {
        return (XSSFCell) row.getCell(0);
      }
    }
    throw new AssertionError(role);
  }

  private static void restyle(XSSFCell cell, int fill, int ink, double sizePt, String font) {
    Workbook book = cell.getSheet().getWorkbook();
    XSSFCellStyle style = (XSSFCellStyle) book.createCellStyle();
    XSSFFont letters = (XSSFFont) book.createFont();
    letters.setFontName(font);
    letters.setFontHeight(sizePt);
    letters.setColor(colour(ink));
    style.setFont(letters);
    style.setFillForegroundColor(colour(fill));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    cell.setCellStyle(style);
  }

  private static XSSFColor colour(int rgb) {
    return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
  }

  /** A PNG of one dot. */
  private static final String DOT =
      "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

  @Test
  void theCommittedFileIsWhatItsProgramBuilds() throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      SeasonPlanTemplate.write();
    }
    assertEquals(
        Parts.of(SeasonPlanTemplate.bytes()),
        Parts.of(Files.readAllBytes(SeasonPlanTemplate.FILE)),
        "run with -Dgolden.update=true, look, commit");
  }

  @Test
  void theCommittedFileMeetsTheContractAndHasTheStandardLooks() {
    WorkbookTemplate template = WorkbookTemplate.standard();
    assertEquals(List.of(), template.check());
    for (StyleRole role : StyleRole.values()) {
      assertEquals(Palette.standard().look(role), template.palette().look(role));
    }
  }

  @Test
  void aCopySavedElsewhereDoesTheSame() throws IOException {
    WorkbookTemplate template = read(Files.readAllBytes(SAVED_ELSEWHERE));
    assertEquals(List.of(), template.check());
    for (StyleRole role : StyleRole.values()) {
      assertEquals(Palette.standard().look(role), template.palette().look(role));
    }
    try (XSSFWorkbook ours = written(WorkbookTemplate.standard());
        XSSFWorkbook theirs = written(template)) {
      assertEquals(names(ours), names(theirs));
      for (int i = 0; i < ours.getNumberOfSheets(); i++) {
        XSSFSheet one = ours.getSheetAt(i);
        XSSFSheet other = theirs.getSheetAt(i);
        assertEquals(one.getLastRowNum(), other.getLastRowNum());
        for (Row row : one) {
          for (org.apache.poi.ss.usermodel.Cell cell : row) {
            assertEquals(
                cell.toString(),
                other.getRow(row.getRowNum()).getCell(cell.getColumnIndex()).toString());
          }
        }
      }
    }
  }

  private static List<String> names(XSSFWorkbook book) {
    return Stream.iterate(0, i -> i < book.getNumberOfSheets(), i -> i + 1)
        .map(book::getSheetName)
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> eachDamageHasItsMessage() {
    return Stream.of(
        damage(
            "OU-602",
            "look.xlsx, name pattern_log [",
            "a row of the sheet \"Log\"",
            book -> book.removeName(book.getName("pattern_log"))),
        damage(
            "OU-603",
            "look.xlsx, name pattern_log [",
            "defined 2 times",
            book -> {
              XSSFName again = book.createName();
              again.setSheetIndex(book.getSheetIndex("Notes"));
              again.setNameName("pattern_log");
              again.setRefersToFormula("Notes!$A$2");
            }),
        damage(
            "OU-604",
            "look.xlsx, name pattern_log [",
            "it means Notes!$A$2",
            book -> book.getName("pattern_log").setRefersToFormula("Notes!$A$2")),
        damage(
            "OU-604",
            "look.xlsx, name pattern_log [",
            "it means #REF!",
            book -> book.getName("pattern_log").setRefersToFormula("#REF!")),
        damage(
            "OU-604",
            "look.xlsx, name pattern_log [",
            "it means (.Log!:Log!]9Log!)",
            book ->
                book.getCTWorkbook().getDefinedNames().getDefinedNameList().stream()
                    .filter(name -> name.getName().equals("pattern_log"))
                    .forEach(name -> name.setStringValue("(.Log!:Log!]9Log!)"))),
        damage(
            "OU-604",
            "look.xlsx, name pattern_log [",
            "it means Diary!",
            book -> book.setSheetName(book.getSheetIndex("Log"), "Diary")),
        damage(
            "OU-605",
            "look.xlsx [",
            "no sheet \"Styles\"",
            book -> book.removeSheetAt(book.getSheetIndex("Styles"))),
        damage(
            "OU-606",
            "look.xlsx, sheet Styles [",
            "no cell \"move-in\" in column A",
            book -> role(book, StyleRole.MOVE_IN).setBlank()),
        damage(
            "OU-607",
            "look.xlsx, sheet Styles, A31 [",
            "it stands in A12 too",
            book -> {
              XSSFCell again = book.getSheet("Styles").createRow(30).createCell(0);
              again.setCellValue("caution");
            }),
        damage(
            "OU-608",
            "look.xlsx, sheet Styles, A31 [",
            "\"muve-in\"",
            book -> book.getSheet("Styles").createRow(30).createCell(0).setCellValue("muve-in")),
        damage(
            "OU-609",
            "look.xlsx, sheet Styles, A10 [",
            // WCAG 2.1, technique G18: #777777 on white has 4.48 to 1, just too little.
            "task has letters of 777777 on a fill of FFFFFF, a contrast of 4.5 to 1",
            book -> restyle(role(book, StyleRole.TASK), 0xFFFFFF, 0x777777, 10, "Arial")),
        damage(
            "OU-609",
            "look.xlsx, sheet Styles, A3 [",
            "heading has letters of FFFFFF on white paper, a contrast of 1.0 to 1",
            book -> restyle(role(book, StyleRole.HEADING), 0x204030, 0xFFFFFF, 10, "Arial")),
        damage(
            "OU-610",
            "look.xlsx, sheet Styles, A1 [",
            "letters of 8.5 points",
            book -> restyle(role(book, StyleRole.PLAIN), 0xFFFFFF, 0, 8.5, "Arial")));
  }

  private static DynamicTest damage(
      String code, String where, String part, Consumer<XSSFWorkbook> change) {
    return DynamicTest.dynamicTest(
        code + " " + part,
        () -> {
          WorkbookTemplate template = read(changed(change));
          assertEquals(1, template.check().size(), template.check().toString());
          Diagnostic p = template.check().get(0);
          String line = p.where() + " [" + p.code() + "]: " + p.found() + "; " + p.expected();
          assertTrue(line.startsWith(where + code), line);
          assertTrue(line.contains(part), line);
          assertThrows(IllegalStateException.class, template::open);
        });
  }

  @Test
  void whatIsNoWorkbookIsToldSo() throws IOException {
    for (byte[] bytes :
        List.of(new byte[0], "role;fill\n".getBytes(UTF_8), new byte[] {'P', 'K', 3, 4, 0, 0})) {
      List<Diagnostic> found = read(bytes).check();
      assertEquals(List.of("OU-601"), found.stream().map(Diagnostic::code).toList());
    }
  }

  @Test
  void oneRestyleChangesLettersWidthsAndPageAndKeepsSheetsOfTheKeeper() throws IOException {
    WorkbookTemplate template =
        read(
            changed(
                book -> {
                  restyle(role(book, StyleRole.MOVE_DOWN), 0xE0F0FF, 0x102030, 11, "Georgia");
                  XSSFSheet plan = book.getSheet("Season plan");
                  plan.setColumnWidth(1, 40 * 256);
                  plan.getHeader().setLeft("Ours & theirs: {sheet}");
                  book.createSheet("Telephone list")
                      .createRow(0)
                      .createCell(0)
                      .setCellValue("Fire brigade");
                }));
    assertEquals(List.of(), template.check());
    assertEquals(
        new Palette.Look(0xE0F0FF, 0x102030, false), template.palette().look(StyleRole.MOVE_DOWN));
    try (XSSFWorkbook book = written(template)) {
      XSSFSheet plan = book.getSheet("Season plan");
      assertEquals(40 * 256, plan.getColumnWidth(1));
      assertTrue(plan.getHeader().getLeft().endsWith("theirs: Season plan"));
      int moveDown = TestSheets.column(plan, "Move-down");
      XSSFCellStyle style =
          TestSheets.rows(plan)
              .map(row -> row.getCell(moveDown))
              .filter(cell -> !cell.toString().isEmpty())
              .findFirst()
              .orElseThrow()
              .getCellStyle();
      assertEquals("FFE0F0FF", style.getFillForegroundXSSFColor().getARGBHex());
      assertEquals("Georgia", style.getFont().getFontName());
      assertEquals(11, style.getFont().getFontHeightInPoints());
      assertEquals("Telephone list", book.getSheetName(book.getNumberOfSheets() - 1));
      assertTrue(
          names(book).stream().noneMatch(n -> n.startsWith("#") || n.equals(RoleSheet.NAME)),
          names(book).toString());
      assertTrue(
          book.getAllNames().stream().noneMatch(n -> n.getNameName().startsWith("pattern_")));
    }
  }

  /** A picture of the log's sheet comes with the log, one of any table with every sheet like it. */
  @Test
  void picturesStandOnEverySheetOfTheirPattern() throws IOException {
    byte[] logo = Base64.getDecoder().decode(DOT);
    WorkbookTemplate template =
        read(
            changed(
                book -> {
                  int picture = book.addPicture(logo, Workbook.PICTURE_TYPE_PNG);
                  for (String sheet : List.of("Overview", "Log", "Occupancy", "Any table")) {
                    XSSFClientAnchor over = new XSSFClientAnchor(0, 0, 0, 0, 20, 0, 22, 3);
                    book.getSheet(sheet).createDrawingPatriarch().createPicture(over, picture);
                  }
                }));
    try (XSSFWorkbook book = written(template)) {
      for (String sheet : List.of("Overview", "Log", "Occupancy", "Plants", "Tasks")) {
        XSSFDrawing drawing = book.getSheet(sheet).getDrawingPatriarch();
        List<XSSFPicture> pictures =
            drawing == null
                ? List.of()
                : drawing.getShapes().stream()
                    .filter(XSSFPicture.class::isInstance)
                    .map(XSSFPicture.class::cast)
                    .toList();
        assertEquals(sheet.equals("Tasks") ? 0 : 1, pictures.size(), sheet);
        for (XSSFPicture picture : pictures) {
          assertArrayEquals(logo, picture.getPictureData().getData(), sheet);
          assertEquals(20, picture.getClientAnchor().getCol1(), sheet);
        }
      }
      assertEquals(1, book.getSheet("Occupancy").getDrawingPatriarch().getCharts().size());
      assertEquals(1, book.getAllPictures().size(), "stored once");
    }
  }

  /** Or the keeper's list would come twice in the next plan: from the template and carried. */
  @Test
  void aSheetOfTheTemplateIsNoSheetOfTheInventory() throws IOException {
    WorkbookTemplate template = read(changed(book -> book.createSheet("Telephone list")));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(REPORT, template, out);
    Problems problems = new Problems();
    List<String> carried =
        InventoryWorkbook.read(
                new ByteArrayInputStream(out.toByteArray()),
                "plan.xlsx",
                SpeciesCatalogue.builtIn(),
                problems)
            .orElseThrow()
            .sheets()
            .stream()
            .map(SheetTable::name)
            .toList();
    assertTrue(!carried.contains("Telephone list"), carried.toString());
  }

  /** Sheets and names copied from a plan into a template: the plan's own come first. */
  @Test
  void whatIsCalledLikeAPartOfThePlanGivesWay() throws IOException {
    byte[] template =
        changed(
            book -> {
              book.createSheet("Plants").createRow(0).createCell(0).setCellValue("not a plant");
              for (String name : List.of("as_of", "table_log", WorkbookWriter.FORMAT_NAME)) {
                XSSFName defined = book.createName();
                defined.setNameName(name);
                defined.setRefersToFormula("Plants!$A$1");
              }
            });
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookWriter.write(REPORT, read(template), out);
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
      assertEquals("Id", book.getSheet("Log").getRow(0).getCell(0).getStringCellValue());
      assertEquals(
          "not a plant", book.getSheet("Plants (2)").getRow(0).getCell(0).getStringCellValue());
      assertEquals(1, book.getNames("as_of").size());
      assertTrue(book.getName("table_log").getRefersToFormula().startsWith("Log!"));
      assertEquals("1", book.getName(WorkbookWriter.FORMAT_NAME).getRefersToFormula());
    }
  }

  @Test
  void aTemplateGivesEqualBytesTwice() throws IOException {
    byte[] saved = Files.readAllBytes(SAVED_ELSEWHERE);
    ByteArrayOutputStream one = new ByteArrayOutputStream();
    ByteArrayOutputStream two = new ByteArrayOutputStream();
    WorkbookWriter.write(REPORT, read(saved), one);
    WorkbookWriter.write(REPORT, read(saved), two);
    assertArrayEquals(one.toByteArray(), two.toByteArray());
  }
}
