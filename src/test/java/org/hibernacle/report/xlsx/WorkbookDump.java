package org.hibernacle.report.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.PaneInformation;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTLineSer;

/** A workbook as lines of text, so that a change of its contents can be read in a diff. */
final class WorkbookDump {
  /** Rows told of one sheet; the rest is counted. */
  private static final int LONGEST = 30;

  private final List<String> lines = new ArrayList<>();
  private final DataFormatter formatter = new DataFormatter(Locale.UK);

  private WorkbookDump() {}

  static List<String> of(byte[] bytes) throws IOException {
    WorkbookDump dump = new WorkbookDump();
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      dump.workbook(workbook);
    }
    return dump.lines;
  }

  private void workbook(XSSFWorkbook workbook) {
    var core = workbook.getProperties().getCoreProperties();
    lines.add("title " + core.getTitle());
    lines.add("created " + core.getCreated().toInstant());
    lines.add("modified " + core.getModified().toInstant());
    lines.add("styles " + workbook.getNumCellStyles());
    for (XSSFName name : workbook.getAllNames()) {
      lines.add("name " + name.getNameName() + " " + name.getRefersToFormula());
    }
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      String hidden = workbook.isSheetHidden(i) ? " hidden" : "";
      lines.add("");
      lines.add("sheet " + workbook.getSheetName(i) + hidden);
      sheet(workbook.getSheetAt(i));
    }
  }

  private void sheet(XSSFSheet sheet) {
    PaneInformation pane = sheet.getPaneInformation();
    if (pane != null) {
      lines.add(
          "frozen "
              + pane.getHorizontalSplitPosition()
              + " rows "
              + pane.getVerticalSplitPosition()
              + " columns");
    }
    CellRangeAddress repeated = sheet.getRepeatingRows();
    CellRangeAddress repeatedColumns = sheet.getRepeatingColumns();
    lines.add(
        "print "
            + sheet.getPrintSetup().getPaperSizeEnum()
            + (sheet.getPrintSetup().getLandscape() ? " landscape" : " portrait")
            + (repeated == null ? "" : " repeats " + repeated.formatAsString())
            + (repeatedColumns == null ? "" : " and " + repeatedColumns.formatAsString())
            + " "
            + sheet.getPrintSetup().getFitWidth()
            + " wide"
            + (sheet.getPrintSetup().getFitHeight() == 0
                ? ""
                : " " + sheet.getPrintSetup().getFitHeight() + " high"));
    String area = sheet.getWorkbook().getPrintArea(sheet.getWorkbook().getSheetIndex(sheet));
    if (area != null) {
      lines.add("print area " + area);
    }
    lines.add("columns " + columns(sheet));
    lines.add("header " + sheet.getHeader().getLeft() + " | " + sheet.getHeader().getRight());
    lines.add("footer " + sheet.getFooter().getLeft() + " | " + sheet.getFooter().getRight());
    for (XSSFDataValidation validation : sheet.getDataValidations()) {
      lines.add(
          "entry "
              + validation.getRegions().getCellRangeAddresses()[0].formatAsString()
              + " "
              + validation.getValidationConstraint().getFormula1());
    }
    conditions(sheet);
    for (Row row : sheet) {
      if (row.getRowNum() < LONGEST) {
        lines.add("row " + (row.getRowNum() + 1) + " height " + row.getHeightInPoints());
        row.forEach(cell -> cell(sheet, cell));
      }
    }
    lines.add("last row " + (sheet.getLastRowNum() + 1));
    if (sheet.getDrawingPatriarch() != null) {
      sheet.getDrawingPatriarch().getCharts().forEach(this::chart);
    }
  }

  private void cell(XSSFSheet sheet, Cell cell) {
    StringBuilder line = new StringBuilder(sheet.getSheetName());
    line.append('!').append(cell.getAddress().formatAsString()).append(' ');
    CellType type = cell.getCellType();
    line.append(
        switch (type) {
          case NUMERIC -> cell.getNumericCellValue() + " " + formatter.formatCellValue(cell);
          case FORMULA -> "=" + cell.getCellFormula() + " gives " + cached(cell);
          case BLANK -> "blank";
          default -> "\"" + formatter.formatCellValue(cell) + "\"";
        });
    XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
    if (type == CellType.BLANK && style.getDataFormatString().equals("General")) {
      return;
    }
    XSSFColor fill = style.getFillForegroundColorColor();
    if (fill != null) {
      line.append(" fill=").append(fill.getARGBHex().substring(2));
    }
    if (!style.getDataFormatString().equals("General")) {
      line.append(" format=").append(style.getDataFormatString());
    }
    if (style.getQuotePrefixed()) {
      line.append(" quoted");
    }
    if (cell.getCellComment() != null) {
      line.append(" help=\"").append(cell.getCellComment().getString().getString()).append('"');
    }
    if (cell.getHyperlink() != null) {
      line.append(" link=").append(cell.getHyperlink().getAddress());
    }
    lines.add(line.toString());
  }

  private static String cached(Cell cell) {
    return cell.getCachedFormulaResultType() == CellType.NUMERIC
        ? Double.toString(cell.getNumericCellValue())
        : "\"" + cell.getStringCellValue() + "\"";
  }

  /** Width of each in characters, with a plus where it is folded away. */
  private static String columns(XSSFSheet sheet) {
    StringBuilder widths = new StringBuilder();
    int count = sheet.getRow(0) == null ? 3 : Math.max(3, sheet.getRow(0).getLastCellNum());
    for (int i = 0; i < count; i++) {
      widths.append(i == 0 ? "" : " ").append(sheet.getColumnWidth(i) / 256);
      widths.append(sheet.getColumnOutlineLevel(i) > 0 ? "+" : "");
      widths.append(sheet.isColumnHidden(i) ? "hidden" : "");
    }
    return widths.toString();
  }

  private void conditions(XSSFSheet sheet) {
    var all = sheet.getSheetConditionalFormatting();
    for (int i = 0; i < all.getNumConditionalFormattings(); i++) {
      var one = all.getConditionalFormattingAt(i);
      for (int r = 0; r < one.getNumberOfRules(); r++) {
        var rule = one.getRule(r);
        var number = rule.getNumberFormat();
        lines.add(
            "when "
                + one.getFormattingRanges()[0].formatAsString()
                + " "
                + rule.getFormula1()
                + (number == null ? "" : " shown as " + number.getFormat()));
      }
    }
  }

  private void chart(XSSFChart chart) {
    lines.add("chart " + chart.getTitleText().getString());
    for (CTLineSer series : chart.getCTChart().getPlotArea().getLineChartArray(0).getSerList()) {
      lines.add(
          "line "
              + series.getTx().getStrRef().getF()
              + " over "
              + series.getCat().getNumRef().getF()
              + ": "
              + series.getVal().getNumRef().getF());
    }
  }
}
