package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every problem is told, where it stands; the workbook itself is only read. */
class CheckCommandTest {
  private static final Path DEMO = Path.of("demo-data", "inventory.xlsx");
  private static final Path WEATHER = Path.of("demo-data", "temperatures.csv");

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(Object... args) {
    String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), words);
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)));
  }

  /** The demo with a wrong priority in one row and a place nobody has in another. */
  private Path broken() throws IOException {
    Path file = folder.resolve("broken.xlsx");
    try (XSSFWorkbook book = open(DEMO)) {
      XSSFSheet plants = book.getSheet("Plants");
      cell(plants, 1, "Priority").setCellValue(9);
      cell(plants, 2, "Home").setCellValue("Nowhere");
      cell(plants, 2, "Home")
          .setCellComment(
              plants
                  .createDrawingPatriarch()
                  .createCellComment(book.getCreationHelper().createClientAnchor()));
      cell(plants, 2, "Home")
          .getCellComment()
          .setString(book.getCreationHelper().createRichTextString("ask the neighbour"));
      return write(book, file);
    }
  }

  private static Path write(XSSFWorkbook book, Path file) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    book.write(bytes);
    return Files.write(file, bytes.toByteArray());
  }

  private static XSSFCell cell(XSSFSheet sheet, int row, String heading) {
    for (int i = 0; ; i++) {
      if (sheet.getRow(0).getCell(i).getStringCellValue().startsWith(heading)) {
        return sheet
            .getRow(row)
            .getCell(i, org.apache.poi.ss.usermodel.Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
      }
    }
  }

  @Test
  void theDemoHasNotesOnly() {
    assertEquals(ExitCode.DONE, run("check", DEMO, WEATHER), out::toString);
    assertTrue(out.toString().contains("[IN-322]"), out::toString);
    assertTrue(out.toString().lines().anyMatch(l -> l.startsWith("0 errors, ")), out::toString);
    assertEquals("", err.toString());
  }

  @Test
  void everyErrorIsToldWithItsCellAndNothingIsWritten() throws IOException {
    Path file = broken();
    byte[] before = Files.readAllBytes(file);
    Path csv =
        Files.writeString(folder.resolve("t.csv"), "date,tmin_c,tmax_c\n2020-01-01,cold,3\n");
    assertEquals(ExitCode.BAD_INPUT, run("check", file, csv));
    assertTrue(out.toString().contains("\"9\"; expected a number from 1 to 5"), out::toString);
    assertTrue(out.toString().contains("3 [IN-131]: Home \"Nowhere\""), out::toString);
    assertTrue(out.toString().contains("t.csv, line 2"), out::toString);
    assertArrayEquals(before, Files.readAllBytes(file));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(2, files.count());
    }
  }

  @Test
  void problemsAsJsonNameFileSheetCellAndLine() throws IOException {
    Path csv =
        Files.writeString(folder.resolve("t.csv"), "date,tmin_c,tmax_c\n2020-01-01,cold,3\n");
    assertEquals(ExitCode.BAD_INPUT, run("check", broken(), csv, "--json"));
    JsonNode all = new ObjectMapper().readTree(out.toString());
    assertEquals(all.get("errors").asInt(), count(all, "error"));
    assertEquals(all.get("notes").asInt(), count(all, "note"));
    JsonNode home = find(all, "IN-131");
    assertEquals("broken.xlsx", home.get("file").asText());
    assertEquals("Plants", home.get("sheet").asText());
    assertTrue(home.get("cell").asText().matches("[A-Z]+3"), home::toString);
    assertTrue(home.get("expected").asText().startsWith("a place of the Places sheet"));
    assertEquals(2, find(all, "IN-313").get("line").asInt());
    assertFalse(find(all, "IN-313").has("sheet"));
  }

  private static int count(JsonNode all, String severity) {
    int count = 0;
    for (JsonNode problem : all.get("problems")) {
      count += problem.get("severity").asText().equals(severity) ? 1 : 0;
    }
    return count;
  }

  private static JsonNode find(JsonNode all, String code) {
    for (JsonNode problem : all.get("problems")) {
      if (problem.get("code").asText().equals(code)) {
        return problem;
      }
    }
    throw new AssertionError(code + " is not in " + all);
  }

  @Test
  void aMarkedCopyHatchesTheCellsAndCommentsOnThem() throws IOException {
    Path file = broken();
    Path marked = folder.resolve("marked.xlsx");
    assertEquals(ExitCode.BAD_INPUT, run("check", file, "--mark", marked), err::toString);
    assertTrue(out.toString().contains("Wrote " + marked), out::toString);
    try (XSSFWorkbook book = open(marked);
        XSSFWorkbook original = open(file)) {
      XSSFSheet plants = book.getSheet("Plants");
      XSSFCell priority = cell(plants, 1, "Priority");
      assertEquals(FillPatternType.THIN_FORWARD_DIAG, priority.getCellStyle().getFillPattern());
      assertEquals(9, priority.getNumericCellValue());
      String comment = priority.getCellComment().getString().getString();
      assertTrue(comment.startsWith("IN-120: Priority \"9\"; expected a number from 1"), comment);
      String home = cell(plants, 2, "Home").getCellComment().getString().getString();
      assertTrue(home.startsWith("ask the neighbour\n\nIN-131: Home \"Nowhere\""), home);
      assertEquals(
          cell(original.getSheet("Plants"), 1, "Species").getCellStyle().getCoreXf().xmlText(),
          cell(plants, 1, "Species").getCellStyle().getCoreXf().xmlText());
      assertEquals(2, plants.getCellComments().size() - commentsOf(DEMO));
    }
    assertEquals(ExitCode.NOT_WRITTEN, run("check", file, "--mark", marked));
    assertTrue(err.toString().contains("marked.xlsx is there already"), err::toString);
    assertEquals(ExitCode.NOT_WRITTEN, run("check", file, "--mark", file), "the input");
  }

  private static int commentsOf(Path file) throws IOException {
    try (XSSFWorkbook book = open(file)) {
      return book.getSheet("Plants").getCellComments().size();
    }
  }

  /** Charts, macros, validations, other sheets: each part is the same, byte for byte or in XML. */
  @Test
  void whatIsNotMarkedIsUntouched() throws IOException {
    Path file = folder.resolve("macros.xlsm");
    byte[] macros = {1, 2, 3, 4, 5};
    String plants;
    try (XSSFWorkbook book = open(Path.of("demo-data", "season-plan-filled-in.xlsx"))) {
      cell(book.getSheet("Plants"), 1, "Priority").setCellValue(9);
      plants = book.getSheet("Plants").getPackagePart().getPartName().getName().substring(1);
      book.setWorkbookType(XSSFWorkbookType.XLSM);
      book.setVBAProject(new ByteArrayInputStream(macros));
      write(book, file);
    }
    Path marked = folder.resolve("marked.xlsm");
    assertEquals(ExitCode.BAD_INPUT, run("check", file, "--mark", marked), err::toString);
    Map<String, byte[]> before = parts(file);
    Map<String, byte[]> after = parts(marked);
    assertArrayEquals(macros, after.get("xl/vbaProject.bin"));
    int compared = 0;
    for (String part : before.keySet()) {
      assertTrue(after.containsKey(part), part);
      if (part.matches("xl/(worksheets/sheet|tables/|charts/|theme/).*") && !part.equals(plants)) {
        compared++;
        assertArrayEquals(before.get(part), after.get(part), part);
      }
    }
    assertTrue(compared > 10 && before.keySet().stream().anyMatch(p -> p.contains("charts/")));
    try (XSSFWorkbook was = open(file);
        XSSFWorkbook is = open(marked)) {
      assertTrue(is.isMacroEnabled());
      assertEquals(validations(was), validations(is));
    }
    out.getBuffer().setLength(0);
    assertEquals(
        ExitCode.WRONG_USE, run("check", file, "--mark", folder.resolve("no-macros.xlsx")));
    assertTrue(out.toString().contains("[IN-120]"), "problems are told nevertheless: " + out);
    assertTrue(err.toString().contains("needs a name that ends in .xlsm"), err::toString);
  }

  private static List<String> validations(XSSFWorkbook book) {
    return book.getSheet("Plants").getDataValidations().stream()
        .map(v -> v.getRegions().getCellRangeAddresses()[0].formatAsString())
        .toList();
  }

  private static Map<String, byte[]> parts(Path file) throws IOException {
    Map<String, byte[]> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        parts.put(e.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }

  @Test
  void aFileThatIsNoWorkbookCanNotBeMarked() throws IOException {
    Path text = Files.writeString(folder.resolve("text.xlsx"), "Id,Species\n");
    Path marked = folder.resolve("marked.xlsx");
    assertEquals(ExitCode.BAD_INPUT, run("check", text, "--mark", marked));
    assertTrue(out.toString().contains("[IN-103]"), out::toString);
    assertTrue(err.toString().contains("No marked copy was written"), err::toString);
    assertFalse(Files.exists(marked));
  }

  @Test
  void aSummerAloneIsNoWinter() throws IOException {
    Path summer =
        Files.writeString(folder.resolve("s.csv"), "date,tmin_c,tmax_c\n2020-07-01,15,25\n");
    assertEquals(ExitCode.BAD_INPUT, run("check", DEMO, summer));
    assertTrue(out.toString().contains("s.csv [CK-701]: no usable winter"), out::toString);
  }
}
