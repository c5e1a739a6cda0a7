package org.hibernacle.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.cli.Hibernacle;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;

/**
 * Whatever the readers are given, they give an inventory or an error, and never break down. In the
 * build they are not run: {@code mvn -Pfuzz test}.
 */
class ReadersFuzz {
  private static final SpeciesCatalogue SPECIES = SpeciesCatalogue.builtIn();
  private static final byte[] BOOK = book("A1", "Acer palmatum", "Bench", "5", "bench", "50");
  private static final List<String> PARTS =
      List.of(
          "xl/worksheets/sheet1.xml",
          "xl/worksheets/sheet3.xml",
          "xl/sharedStrings.xml",
          "xl/styles.xml",
          "xl/workbook.xml",
          "[Content_Types].xml",
          "xl/_rels/workbook.xml.rels");

  private static byte[] book(
      String id, String species, String home, String volume, String kind, String latitude) {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      fill(
          book.createSheet("Plants"),
          List.of("Id", "Species", "Home", "Volume L"),
          List.of(id, species, home, volume));
      fill(book.createSheet("Places"), List.of("Place", "Kind"), List.of("Bench", kind));
      fill(
          book.createSheet("Settings"), List.of("Setting", "Value"), List.of("Latitude", latitude));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static void fill(XSSFSheet sheet, List<String> headings, List<String> values) {
    for (List<String> texts : List.of(headings, values)) {
      XSSFRow row = sheet.createRow(sheet.getPhysicalNumberOfRows());
      for (int i = 0; i < texts.size(); i++) {
        row.createCell(i).setCellValue(texts.get(i));
      }
    }
  }

  private static void read(byte[] bytes) throws IOException {
    Problems problems = new Problems();
    Optional<Inventory> inventory =
        InventoryWorkbook.read(new ByteArrayInputStream(bytes), "fuzzed.xlsx", SPECIES, problems);
    assertEquals(inventory.isEmpty(), problems.hasErrors(), () -> problems.sorted().toString());
  }

  /** The bytes are one part of a workbook that is sound otherwise, or the whole file. */
  @FuzzTest(maxDuration = "30m")
  void workbook(FuzzedDataProvider data) throws IOException {
    int part = data.consumeInt(0, PARTS.size());
    byte[] content = data.consumeRemainingAsBytes();
    read(part == PARTS.size() ? content : withPart(PARTS.get(part), content));
  }

  private static byte[] withPart(String part, byte[] content) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(BOOK));
        ZipOutputStream to = new ZipOutputStream(out)) {
      to.setLevel(0);
      for (ZipEntry e = from.getNextEntry(); e != null; e = from.getNextEntry()) {
        to.putNextEntry(new ZipEntry(e.getName()));
        to.write(e.getName().equals(part) ? content : from.readAllBytes());
      }
    }
    return out.toByteArray();
  }

  /** A sheet of plants made of whatever cells: this gets deeper than bytes of XML do. */
  @FuzzTest(maxDuration = "30m")
  void cells(FuzzedDataProvider data) throws IOException {
    StringBuilder rows = new StringBuilder();
    int row = 2;
    while (data.remainingBytes() > 2 && rows.length() < 20_000) {
      String column = data.pickValue(List.of("A", "B", "C", "D", "E", "XFD", "ZZZZ", ""));
      String type = data.pickValue(List.of("n", "s", "str", "inlineStr", "b", "e", "d", "?"));
      String value = escaped(data.consumeString(12));
      String formula = data.consumeBoolean() ? "" : "<f>" + escaped(data.consumeString(6)) + "</f>";
      row += data.consumeInt(0, 3);
      rows.append("<row r=\"").append(row).append("\"><c r=\"").append(column).append(row);
      rows.append("\" s=\"").append(data.consumeInt(-1, 2)).append("\" t=\"").append(type);
      rows.append("\">").append(formula).append("<v>").append(value).append("</v></c></row>");
    }
    String sheet =
        "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
            + "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>Id</v></c><c r=\"B1\" t=\"str\"><v>Species</v>"
            + "</c><c r=\"C1\" t=\"str\"><v>Home</v></c><c r=\"D1\" t=\"str\"><v>Volume</v></c>"
            + "<c r=\"E1\" t=\"str\"><v>Not before</v></c></row>"
            + rows
            + "</sheetData></worksheet>";
    read(withPart(PARTS.get(0), sheet.getBytes(StandardCharsets.UTF_8)));
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .filter(c -> c >= ' ' && c < 0xD800)
        .forEach(c -> escaped.append("&#").append(c).append(';'));
    return escaped.toString();
  }

  @FuzzTest(maxDuration = "30m")
  void csv(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("fuzzed", ".csv");
    try {
      Files.write(file, bytes);
      Problems problems = new Problems();
      Optional<TemperatureSeries> series =
          TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems);
      assertTrue(series.isPresent() || problems.hasErrors());
    } finally {
      Files.delete(file);
    }
  }

  /** A name is found, or refused; a name that is long is not searched for without end. */
  @FuzzTest(maxDuration = "30m")
  void species(FuzzedDataProvider data) throws IOException {
    read(book("A1", data.consumeRemainingAsString(), "Bench", "5", "bench", "50"));
  }

  /** The whole program, from odd texts in a small inventory to the files it writes. */
  @FuzzTest(maxDuration = "30m")
  void wholeRun(FuzzedDataProvider data) throws IOException {
    String id = data.consumeString(20);
    String home = data.consumeBoolean() ? "Bench" : data.consumeString(10);
    String volume = data.pickValue(List.of("0.02", "5", "3000", data.consumeString(5)));
    String kind = data.pickValue(List.of("bench", "garage", "warm room", data.consumeString(8)));
    String latitude = String.format(Locale.ROOT, "%d", data.consumeInt(-70, 70));
    String species = data.pickValue(List.of("Acer palmatum", "Ficus sp.", "lemon", "ume"));
    Path folder = Files.createTempDirectory("fuzzed");
    try {
      Path inventory =
          Files.write(folder.resolve("in.xlsx"), book(id, species, home, volume, kind, latitude));
      StringWriter err = new StringWriter();
      int code =
          Hibernacle.run(
              new PrintWriter(new StringWriter()),
              new PrintWriter(err),
              "plan",
              inventory.toString(),
              winter(folder, data.consumeInt(-40, 10)).toString(),
              "-o",
              folder.resolve("out").toString(),
              "--without-remedies");
      assertTrue(Set.of(0, 3, 4).contains(code), () -> code + " " + err);
      assertEquals(code != 3, Files.exists(folder.resolve("out").resolve("season-plan.xlsx")));
    } finally {
      delete(folder);
    }
  }

  private static Path winter(Path folder, int lowestC) throws IOException {
    StringBuilder text = new StringBuilder("date,tmin_c,tmax_c\n");
    java.time.LocalDate day = java.time.LocalDate.of(2020, 1, 1);
    for (int i = 0; i < 730; i++) {
      double swing = Math.cos(2 * Math.PI * i / 365);
      // Days differ, or the second year would be taken for a copy of the first.
      long weather = Math.floorMod(i * 0x9E3779B97F4A7C15L >>> 40, 7);
      long lowest = Math.round(lowestC * (1 + swing) / 2 + 15 * (1 - swing) / 2) + weather;
      text.append(day.plusDays(i)).append(',').append(lowest).append(',').append(lowest + 8);
      text.append('\n');
    }
    return Files.writeString(folder.resolve("winter.csv"), text);
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
