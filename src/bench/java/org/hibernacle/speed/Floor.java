package org.hibernacle.speed;

import com.lowagie.text.Document;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfWriter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The least that any program with these libraries does: it reads the same inputs cell by cell and
 * value by value, and writes a workbook with the same cells and a PDF with the same lines of text,
 * both plain. Nothing is worked out between them.
 */
final class Floor {
  private static final String FONT = "/org/hibernacle/report/pdf/fonts/DejaVuSansCondensed.ttf";

  private Floor() {}

  /**
   * Reads and writes.
   *
   * @param args inventory, temperatures, dump of what is to be written, folder to write to
   */
  public static void main(String[] args) throws IOException {
    double read = readWorkbook(Path.of(args[0])) + readCsv(Path.of(args[1]));
    Path folder = Files.createDirectories(Path.of(args[3]));
    try (BufferedReader dump = Files.newBufferedReader(Path.of(args[2]))) {
      String next = writeWorkbook(dump, folder.resolve("floor.xlsx"));
      writePdf(dump, next, folder.resolve("floor.pdf"));
    }
    System.out.println("Read cells and values that sum up to " + read);
  }

  private static double readWorkbook(Path file) throws IOException {
    double sum = 0;
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            sum += cell.toString().length();
          }
        }
      }
    }
    return sum;
  }

  private static double readCsv(Path file) throws IOException {
    double sum = 0;
    try (Reader in = Files.newBufferedReader(file)) {
      for (CSVRecord row :
          CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get().parse(in)) {
        sum += row.get(0).length();
        for (int i = 1; i < row.size(); i++) {
          sum += Double.parseDouble(row.get(i));
        }
      }
    }
    return sum;
  }

  /** Returns the first line that is not of the workbook. */
  private static String writeWorkbook(BufferedReader dump, Path file) throws IOException {
    try (SXSSFWorkbook book = new SXSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      CellStyle day = book.createCellStyle();
      day.setDataFormat(book.createDataFormat().getFormat("d mmm yyyy"));
      Sheet sheet = null;
      Row row = null;
      String line = Objects.requireNonNull(dump.readLine());
      for (; line.charAt(0) != 'P'; line = Objects.requireNonNull(dump.readLine())) {
        if (line.charAt(0) == 'S') {
          sheet = book.createSheet(line.substring(1));
          row = null;
        } else if (line.charAt(0) == 'R') {
          row = Objects.requireNonNull(sheet).createRow(row == null ? 0 : row.getRowNum() + 1);
        } else {
          write(line, Objects.requireNonNull(row), day);
        }
      }
      book.write(out);
      return line;
    }
  }

  private static void write(String line, Row row, CellStyle day) {
    int tab = line.indexOf('\t');
    Cell cell = row.createCell(Integer.parseInt(line.substring(1, tab)));
    String value = line.substring(tab + 1);
    switch (line.charAt(0)) {
      case 'C' -> cell.setCellValue(value);
      case 'N' -> cell.setCellValue(Double.parseDouble(value));
      case 'D' -> {
        cell.setCellValue(Double.parseDouble(value));
        cell.setCellStyle(day);
      }
      default -> cell.setCellStyle(day);
    }
  }

  private static void writePdf(BufferedReader dump, String first, Path file) throws IOException {
    BaseFont letters =
        BaseFont.createFont(
            Objects.requireNonNull(Floor.class.getResource(FONT)).toString(),
            BaseFont.IDENTITY_H,
            BaseFont.EMBEDDED);
    Font font = new Font(letters, 5);
    try (OutputStream out = Files.newOutputStream(file);
        Document document = new Document(PageSize.A4, 36, 36, 20, 20)) {
      PdfWriter.getInstance(document, out);
      document.open();
      String line = first;
      while (line != null) {
        if (line.charAt(0) == 'P') {
          document.newPage();
        } else {
          document.add(new Paragraph(5.5f, line.substring(1), font));
        }
        line = dump.readLine();
      }
    }
  }
}
