package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A keeper's own look: it reaches both files, and is never written to. */
class TemplateOptionTest {
  private static final Path STANDARD = Path.of("templates", "season-plan.xlsx");
  private static final Path GARDEN =
      Path.of("src", "test", "resources", "inventories", "too-little-room.xlsx");
  private static final Path WEATHER = Path.of("demo-data", "temperatures.csv");

  @TempDir Path folder;

  private final StringWriter err = new StringWriter();

  private int run(Object... args) {
    String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
    return Hibernacle.run(new PrintWriter(new StringWriter()), new PrintWriter(err), words);
  }

  private Path restyled(String name, Consumer<XSSFWorkbook> change) throws IOException {
    Path file = folder.resolve(name);
    try (InputStream in = Files.newInputStream(STANDARD);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(file)) {
      change.accept(book);
      book.write(out);
    }
    return file;
  }

  /** Headings on pure yellow, which no standard look has. */
  private static void yellowHeadings(XSSFWorkbook book) {
    XSSFCell heading = book.getSheet("Styles").getRow(2).getCell(0);
    assertEquals("heading", heading.getStringCellValue());
    XSSFCellStyle style = book.createCellStyle();
    style.cloneStyleFrom(heading.getCellStyle());
    style.setFillForegroundColor(new XSSFColor(new byte[] {(byte) 0xFF, (byte) 0xFF, 0}));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    heading.setCellStyle(style);
  }

  /** One winter is enough to write by. */
  private Path lastWinter() throws IOException {
    Path file = folder.resolve("last-winter.csv");
    try (Stream<String> lines = Files.lines(WEATHER)) {
      Files.write(
          file,
          lines.filter(line -> !line.matches("\\d.*") || line.compareTo("2025-07") > 0).toList());
    }
    return file;
  }

  @Test
  void oneRestyleReachesBothFiles() throws IOException {
    Path template = restyled("look.xlsx", TemplateOptionTest::yellowHeadings);
    byte[] before = Files.readAllBytes(template);
    Path to = folder.resolve("out");
    assertEquals(
        ExitCode.UNPROTECTED,
        run(
            "plan",
            GARDEN,
            lastWinter(),
            "-q",
            "--without-remedies",
            "-o",
            to,
            "--template",
            template),
        err::toString);
    assertArrayEquals(before, Files.readAllBytes(template));
    try (InputStream in = Files.newInputStream(to.resolve("season-plan.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      XSSFCellStyle style = book.getSheet("Tasks").getRow(0).getCell(0).getCellStyle();
      assertEquals("FFFFFF00", style.getFillForegroundXSSFColor().getARGBHex());
    }
    boolean yellow = false;
    try (PDDocument calendar = Loader.loadPDF(to.resolve("season-calendar.pdf").toFile())) {
      for (PDPage page : calendar.getPages()) {
        String drawn = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
        yellow |= drawn.lines().anyMatch(line -> line.strip().equals("1 1 0 rg"));
      }
    }
    assertTrue(yellow, "no heading of the calendar is yellow");
  }

  @Test
  void aDamagedTemplateIsToldBeforeAnythingIsComputed() throws IOException {
    Path template =
        restyled("look.xlsx", book -> book.removeName(book.getName("pattern_moving_days")));
    Path to = folder.resolve("out");
    assertEquals(
        ExitCode.BAD_INPUT,
        run("plan", GARDEN, folder.resolve("none.csv"), "-o", to, "--template", template));
    assertTrue(err.toString().contains("name pattern_moving_days [OU-602]"), err::toString);
    assertFalse(Files.exists(to));
    assertEquals(
        ExitCode.BAD_INPUT,
        run("plan", GARDEN, WEATHER, "-o", to, "--template", folder.resolve("gone.xlsx")));
    assertTrue(err.toString().contains("[OU-600]"), err::toString);
  }

  @Test
  void aTemplateIsNotWrittenOver() throws IOException {
    Path template = restyled("season-plan.xlsx", book -> {});
    byte[] before = Files.readAllBytes(template);
    assertEquals(
        ExitCode.NOT_WRITTEN,
        run("plan", GARDEN, lastWinter(), "-o", folder, "--template", template));
    assertTrue(err.toString().contains("is an input"), err::toString);
    assertArrayEquals(before, Files.readAllBytes(template));
  }
}
