package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.report.SeasonReport;

/** What a plan says of itself for programs, on a sheet that no keeper meets. */
final class RecordSheet {
  private final Sheets sheets;
  private final SeasonReport report;
  private final XSSFSheet sheet;

  private RecordSheet(Sheets sheets, SeasonReport report) {
    this.sheets = sheets;
    this.report = report;
    this.sheet = sheets.addOwn(sheets.words().text("workbook.record"));
    int index = sheets.workbook().getSheetIndex(sheet);
    sheets.workbook().setSheetVisibility(index, SheetVisibility.VERY_HIDDEN);
  }

  /** Adds the sheet; none where the report has no record. */
  static Optional<RecordSheet> of(Sheets sheets, SeasonReport report) {
    return report.forScreen().record().isEmpty()
        ? Optional.empty()
        : Optional.of(new RecordSheet(sheets, report));
  }

  /** Fills it, once all other sheets are as they stay. */
  void finish() {
    List<List<String>> lines = new ArrayList<>(report.forScreen().record());
    lines.addAll(Seal.lines(sheets.workbook(), lines));
    int width = 1;
    for (int i = 0; i < lines.size(); i++) {
      XSSFRow row = sheet.createRow(i);
      List<String> texts = lines.get(i);
      for (int column = 0; column < texts.size(); column++) {
        row.createCell(column).setCellValue(texts.get(column));
      }
      width = Math.max(width, texts.size());
    }
    CellRangeAddress cells = new CellRangeAddress(0, lines.size() - 1, 0, width - 1);
    Formulas.define(
        sheets.workbook(),
        WorkbookWriter.RECORD_NAME,
        cells.formatAsString(sheet.getSheetName(), true));
  }
}
