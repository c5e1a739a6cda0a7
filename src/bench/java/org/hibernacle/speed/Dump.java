package org.hibernacle.speed;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes down what a workbook and a PDF hold, one line a sheet, cell, page and line of text, so
 * that {@link Floor} can write the same again.
 */
final class Dump {
  private Dump() {}

  /**
   * Dumps.
   *
   * @param args workbook, PDF, file to write
   */
  public static void main(String[] args) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(Path.of(args[2]))) {
      try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(Path.of(args[0])))) {
        for (Sheet sheet : book) {
          line(out, 'S', sheet.getSheetName());
          for (Row row : sheet) {
            line(out, 'R', "");
            for (Cell cell : row) {
              cell(out, cell);
            }
          }
        }
      }
      try (PDDocument document = Loader.loadPDF(Path.of(args[1]).toFile())) {
        PDFTextStripper stripper = new PDFTextStripper();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          line(out, 'P', "");
          stripper.setStartPage(page);
          stripper.setEndPage(page);
          for (String text : stripper.getText(document).split("\\R")) {
            line(out, 'T', text);
          }
        }
      }
    }
  }

  /** A blank cell has a look and no value; the floor makes it too. */
  private static void cell(BufferedWriter out, Cell cell) throws IOException {
    CellType type = cell.getCellType();
    CellType shown = type == CellType.FORMULA ? cell.getCachedFormulaResultType() : type;
    String at = cell.getColumnIndex() + "\t";
    if (shown == CellType.NUMERIC) {
      boolean day = DateUtil.isCellDateFormatted(cell);
      line(out, day ? 'D' : 'N', at + cell.getNumericCellValue());
    } else if (shown == CellType.BLANK) {
      line(out, 'B', at);
    } else {
      line(out, 'C', at + cell.getStringCellValue().replace("\n", "\\n"));
    }
  }

  private static void line(BufferedWriter out, char kind, String text) throws IOException {
    out.write(kind);
    out.write(text);
    out.write('\n');
  }
}
