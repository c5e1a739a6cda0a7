package org.hibernacle.demo;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.util.Reproducibility;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.SheetTable;

/** Writes sheets as a workbook that a keeper would enjoy to read and can go on filling in. */
final class InventoryWorkbook {
  private static final long WRITTEN_AT_MS = 1_780_000_000_000L;
  private static final byte[] CALM_GREEN = {(byte) 0xDD, (byte) 0xE8, (byte) 0xDC};
  private static final byte[] PALE_GREY = {(byte) 0xD8, (byte) 0xD8, (byte) 0xD8};
  private static final int WIDEST_CHARS = 34;

  /** Cells with a fixed choice of words. */
  private static final Map<String, List<String>> CHOICES =
      Map.ofEntries(
          Map.entry("Pot shape", List.of("round", "rectangular")),
          Map.entry(
              "Pot material",
              List.of("ceramic", "terracotta", "plastic", "wood", "concrete", "fabric")),
          Map.entry("Vigour", List.of("weak", "normal", "strong")),
          Map.entry("Frost-proof pot", List.of("yes", "no")),
          Map.entry(
              "Kind",
              List.of(
                  "bench", "ground", "cold store", "glasshouse", "frost-free room", "warm room")),
          Map.entry("Sun", List.of("none", "part", "full")),
          Map.entry("Wind", List.of("sheltered", "open")),
          Map.entry("Cover", List.of("none", "fleece", "mulch")),
          Map.entry("Light", List.of("dark", "low", "bright")),
          Map.entry("Vents", List.of("yes", "no")));

  private InventoryWorkbook() {}

  /** Writes the sheets; the same sheets give the same cells. */
  static void write(Path file, List<SheetTable> sheets) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      var properties = workbook.getProperties().getCoreProperties();
      properties.setCreator("Hibernacle demo");
      properties.setCreated(Optional.of(new Date(WRITTEN_AT_MS)));
      properties.setModified(Optional.of(new Date(WRITTEN_AT_MS)));
      Looks looks = Looks.in(workbook);
      for (SheetTable table : sheets) {
        fill(workbook.createSheet(table.name()), table, looks);
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        Reproducibility.runWithSourceDateEpoch(() -> workbook.write(out));
      }
    }
  }

  private static void fill(Sheet sheet, SheetTable table, Looks looks) {
    Row top = sheet.createRow(0);
    top.setHeightInPoints(46);
    for (int column = 0; column < table.headings().size(); column++) {
      Cell cell = top.createCell(column);
      cell.setCellValue(table.headings().get(column));
      cell.setCellStyle(looks.heading());
    }
    for (int row = 0; row < table.rows().size(); row++) {
      Row line = sheet.createRow(row + 1);
      for (int column = 0; column < table.headings().size(); column++) {
        put(line, column, table.rows().get(row).get(column), looks);
      }
    }
    int lastColumn = table.headings().size() - 1;
    for (int column = 0; column <= lastColumn; column++) {
      sheet.setColumnWidth(column, 256 * widthChars(table, column));
      offerChoices(sheet, column, table.headings().get(column));
    }
    sheet.createFreezePane(table.name().equals("Plants") ? 2 : 1, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, table.rows().size(), 0, lastColumn));
    sheet.getPrintSetup().setLandscape(true);
    sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  private static void put(Row line, int column, Object value, Looks looks) {
    Cell cell = line.createCell(column);
    if (value.equals("")) {
      cell.setCellStyle(looks.text());
    } else if (value instanceof Double number) {
      cell.setCellValue(number);
      cell.setCellStyle(looks.number());
    } else if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      cell.setCellStyle(looks.date());
    } else {
      cell.setCellValue((String) value);
      cell.setCellStyle(looks.text());
    }
  }

  private static int widthChars(SheetTable table, int column) {
    int longestWord = 0;
    for (String word : table.headings().get(column).split(" ")) {
      longestWord = Math.max(longestWord, word.length());
    }
    int chars = Math.max(longestWord + 4, 8);
    for (List<Object> row : table.rows()) {
      Object value = row.get(column);
      int length = value instanceof String text ? text.length() + 2 : 11;
      chars = Math.max(chars, value instanceof Double ? 0 : value.equals("") ? 0 : length);
    }
    return Math.min(chars, WIDEST_CHARS);
  }

  private static void offerChoices(Sheet sheet, int column, String heading) {
    List<String> words = CHOICES.get(heading);
    if (words == null) {
      return;
    }
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidation choice =
        helper.createValidation(
            helper.createExplicitListConstraint(words.toArray(String[]::new)),
            new CellRangeAddressList(1, 500, column, column));
    choice.setShowErrorBox(true);
    choice.createErrorBox(heading, "One of: " + String.join(", ", words));
    sheet.addValidationData(choice);
  }

  /** The few styles of the workbook. */
  private record Looks(CellStyle heading, CellStyle text, CellStyle number, CellStyle date) {
    static Looks in(XSSFWorkbook workbook) {
      XSSFFont bold = workbook.createFont();
      bold.setBold(true);
      XSSFCellStyle heading = workbook.createCellStyle();
      heading.setFont(bold);
      heading.setFillForegroundColor(new XSSFColor(CALM_GREEN, null));
      heading.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      heading.setBorderBottom(BorderStyle.THIN);
      heading.setVerticalAlignment(VerticalAlignment.CENTER);
      heading.setWrapText(true);

      XSSFCellStyle text = body(workbook, HorizontalAlignment.LEFT);
      text.setWrapText(true);
      XSSFCellStyle number = body(workbook, HorizontalAlignment.CENTER);
      XSSFCellStyle date = body(workbook, HorizontalAlignment.CENTER);
      date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
      return new Looks(heading, text, number, date);
    }

    private static XSSFCellStyle body(XSSFWorkbook workbook, HorizontalAlignment alignment) {
      XSSFCellStyle style = workbook.createCellStyle();
      style.setAlignment(alignment);
      style.setVerticalAlignment(VerticalAlignment.TOP);
      style.setBorderBottom(BorderStyle.THIN);
      style.setBottomBorderColor(new XSSFColor(PALE_GREY, null));
      return style;
    }
  }
}
