package org.hibernacle.report.xlsx;

import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Ways about a sheet with its headings in the first row. */
final class TestSheets {
  private TestSheets() {}

  /** Index of the column with that heading. */
  static int column(XSSFSheet sheet, String heading) {
    for (Cell cell : sheet.getRow(0)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no heading " + heading + " on " + sheet.getSheetName());
  }

  /** Rows below the headings. */
  static Stream<XSSFRow> rows(XSSFSheet sheet) {
    Iterable<Row> rows = sheet;
    return StreamSupport.stream(rows.spliterator(), false).skip(1).map(XSSFRow.class::cast);
  }
}
