package org.hibernacle.input;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.SheetTable;

/** A small workbook in memory that reads like the sheets it stands for. */
final class TestBook {
  static final String FILE = "inventory.xlsx";

  /** A formula with the result that a spreadsheet program stored; neither number nor text: none. */
  record Formula(String text, Object stored) {}

  private final XSSFWorkbook book = new XSSFWorkbook();
  private final CellStyle day = book.createCellStyle();

  TestBook() {
    day.setDataFormat(book.getCreationHelper().createDataFormat().getFormat("yyyy-mm-dd"));
  }

  /** The least that is enough: one plant, one place, a latitude. */
  static TestBook least() {
    return new TestBook()
        .plants("Id|Species|Home|Volume L", "A1", "Acer palmatum", "Bench", 5)
        .places("Place|Kind", "Bench", "bench")
        .settings("Latitude", 50);
  }

  /** A Plants sheet; the values fill one row after the other. */
  TestBook plants(String headings, Object... values) {
    return sheet("Plants", headings, values);
  }

  TestBook places(String headings, Object... values) {
    return sheet("Places", headings, values);
  }

  TestBook settings(Object... namesAndValues) {
    return sheet("Settings", "Setting|Value", namesAndValues);
  }

  /** Puts a sheet of that name, in place of one that is there. */
  TestBook sheet(String name, String headings, Object... values) {
    int old = book.getSheetIndex(name);
    if (old >= 0) {
      book.removeSheetAt(old);
    }
    XSSFSheet sheet = book.createSheet(name);
    String[] titles = headings.split("\\|", -1);
    Row first = sheet.createRow(0);
    for (int i = 0; i < titles.length; i++) {
      first.createCell(i).setCellValue(titles[i]);
    }
    for (int i = 0; i < values.length; i++) {
      int row = 1 + i / titles.length;
      Row target = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
      set(target.createCell(i % titles.length), values[i]);
    }
    return this;
  }

  private void set(Cell cell, Object value) {
    if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      cell.setCellStyle(day);
    } else if (value instanceof Boolean flag) {
      cell.setCellValue(flag);
    } else if (value instanceof Formula formula) {
      cell.setCellFormula(formula.text());
      if (formula.stored() instanceof Number number) {
        cell.setCellValue(number.doubleValue());
      } else if (formula.stored() instanceof String text) {
        cell.setCellValue(text);
      }
    } else if (value instanceof String text && text.startsWith("#")) {
      cell.setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.forString(text).getCode());
    } else if (!value.equals("")) {
      cell.setCellValue(value.toString());
    }
  }

  /** The library's own book, for what this class has no word for. */
  XSSFWorkbook book() {
    return book;
  }

  XSSFSheet sheet(String name) {
    return book.getSheet(name);
  }

  /**
   * The bytes with one part changed, for what no spreadsheet program writes.
   *
   * @param part name of it: {@code xl/worksheets/sheet1.xml}
   */
  byte[] bytesWith(String part, UnaryOperator<String> change) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(bytes()));
        ZipOutputStream to = new ZipOutputStream(out)) {
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        byte[] content = from.readAllBytes();
        if (entry.getName().equals(part)) {
          String before = new String(content, StandardCharsets.UTF_8);
          String after = change.apply(before);
          if (after.equals(before)) {
            throw new AssertionError("nothing to change in " + before);
          }
          content = after.getBytes(StandardCharsets.UTF_8);
        }
        to.putNextEntry(new ZipEntry(entry.getName()));
        to.write(content);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  byte[] bytes() {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      book.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Reading read() {
    return read(bytes());
  }

  static Reading read(byte[] bytes) {
    Problems problems = new Problems();
    try {
      return new Reading(
          InventoryWorkbook.read(
              new ByteArrayInputStream(bytes), FILE, SpeciesCatalogue.builtIn(), problems),
          problems);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What came of it. */
  record Reading(Optional<Inventory> inventory, Problems problems) {
    /** The inventory, or a failure that shows the problems. */
    Inventory sound() {
      return inventory.orElseThrow(() -> new AssertionError(text()));
    }

    /** A sheet that is carried along. */
    SheetTable sheet(String name) {
      return sound().sheets().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    /** All problems, one a line. */
    String text() {
      StringBuilder text = new StringBuilder();
      problems.sorted().forEach(d -> text.append(d.severity()).append(' ').append(d).append('\n'));
      return text.toString();
    }

    /** The lines with that code. */
    String text(String code) {
      return text()
          .lines()
          .filter(l -> l.contains("[" + code + "]"))
          .reduce("", (a, b) -> a + b + "\n");
    }
  }
}
