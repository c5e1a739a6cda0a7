package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Starts the packaged program again and again and kills it at some moment: every file is the old
 * one or the new one, whole, and the log has what the keeper wrote. Not part of the build; {@code
 * mvn -Pkill verify} runs it.
 */
class KilledRunCheck {
  /** 128 and the number of the signal: what shells tell, and POSIX leaves to them above 128. */
  private static final int ASKED_TO_END = 128 + 2;

  private static final String REMARK = "stood in the lee of the wall";

  @TempDir Path inputs;

  @TempDir Path folder;

  private Process start(double chance) throws IOException {
    // Another option text gives another digest, so that old and new files differ.
    List<String> words =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-jar",
                System.getProperty("kill.jar"),
                "plan",
                inputs.resolve("inventory.xlsx").toString(),
                inputs.resolve("winters.csv").toString(),
                "-o",
                folder.toString(),
                "-q",
                "--without-remedies"));
    if (chance > 0.5) {
      words.addAll(List.of("--unit", "C"));
    }
    Path log = folder.resolveSibling(folder.getFileName() + ".log");
    return new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(log.toFile()).start();
  }

  private Path workbook() {
    return folder.resolve(PlanCommand.WORKBOOK);
  }

  @Test
  void everyFileIsTheOldOrTheNewOneWhole() throws IOException, InterruptedException {
    int runs = Integer.getInteger("kill.runs", 100);
    long seed = Long.getLong("kill.seed", 1);
    System.out.println("seed " + seed + ", " + runs + " runs");
    Random random = new Random(seed);
    writeInputs();
    long before = System.nanoTime();
    assertEquals(ExitCode.DONE, start(0).waitFor());
    long wholeMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - before);
    fillInTheLog();
    Set<String> digests = new TreeSet<>();
    int finished = 0;
    int mixed = 0;
    for (int run = 0; run < runs; run++) {
      // Half of the kills fall into the last fifth, in which files are written.
      double part = random.nextBoolean() ? random.nextDouble() : 0.8 + 0.35 * random.nextDouble();
      Process process = start(random.nextDouble());
      boolean ended = process.waitFor(Math.round(part * wholeMillis), TimeUnit.MILLISECONDS);
      process.destroyForcibly().waitFor();
      finished += ended ? 1 : 0;
      String ofWorkbook = wholeWorkbook();
      String ofCalendar = wholeCalendar();
      mixed += ofWorkbook.equals(ofCalendar) ? 0 : 1;
      digests.addAll(List.of(ofWorkbook, ofCalendar));
    }
    System.out.println(
        finished + " ended before the kill, " + mixed + " times new workbook beside old calendar");
    assertEquals(2, digests.size(), "old and new, and no third: " + digests);
    letLeftoversAge();
    assertEquals(ExitCode.DONE, start(0).waitFor());
    wholeWorkbook();
    try (var files = Files.list(folder)) {
      assertEquals(2, files.count(), "a whole run leaves nothing else behind");
    }
  }

  /** By the signal that Ctrl-C sends: all files are old or all are new, and nothing lies beside. */
  @Test
  void aRunThatIsAskedToEndLeavesNothingBehind() throws IOException, InterruptedException {
    int runs = Math.max(4, Integer.getInteger("kill.runs", 100) / 4);
    Random random = new Random(Long.getLong("kill.seed", 1));
    writeInputs();
    long before = System.nanoTime();
    assertEquals(ExitCode.DONE, start(0).waitFor());
    long wholeMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - before);
    fillInTheLog();
    assertEquals(ExitCode.DONE, start(0).waitFor());
    int asked = 0;
    for (int run = 0; run < runs; run++) {
      Process process = start(random.nextDouble());
      process.waitFor(
          Math.round((0.3 + 0.7 * random.nextDouble()) * wholeMillis), TimeUnit.MILLISECONDS);
      new ProcessBuilder("kill", "-INT", String.valueOf(process.pid())).start().waitFor();
      int code = process.waitFor();
      assertTrue(code == ExitCode.DONE || code == ASKED_TO_END, "exit code " + code);
      asked += code == ASKED_TO_END ? 1 : 0;
      assertEquals(wholeWorkbook(), wholeCalendar());
      try (var files = Files.list(folder)) {
        assertEquals(2, files.count(), "nothing lies beside the files");
      }
    }
    System.out.println(asked + " of " + runs + " ended because they were asked to");
    assertTrue(asked > 0, "no run was asked in time");
  }

  /** What killed runs left is removed once it is old, since a run elsewhere may still need it. */
  private void letLeftoversAge() throws IOException {
    FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofDays(2)));
    try (var files = Files.newDirectoryStream(folder, ".*.hibernacle-{new,old}")) {
      for (Path file : files) {
        Files.setLastModifiedTime(file, longAgo);
      }
    }
  }

  /** One plant and two cold winters, so that a run is short. */
  private void writeInputs() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      sheet(book, "Plants", List.of("Id", "Species", "Home", "Volume L"));
      sheet(book, "Plants", List.of("A1", "Acer palmatum", "Bench", "5"));
      sheet(book, "Places", List.of("Place", "Kind"));
      sheet(book, "Places", List.of("Bench", "bench"));
      sheet(book, "Places", List.of("Shed", "cold store"));
      sheet(book, "Settings", List.of("Setting", "Value"));
      sheet(book, "Settings", List.of("Latitude", "50"));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      Files.write(inputs.resolve("inventory.xlsx"), out.toByteArray());
    }
    StringBuilder text = new StringBuilder("date,tmin_c,tmax_c\n");
    for (int i = 0; i < 1000; i++) {
      // Days differ, as they do in life: a long run of equal ones would be doubted.
      long lowest = Math.round(3 - 12 * Math.cos(2 * Math.PI * i / 365.25)) + i * 7 % 11 % 4;
      text.append(LocalDate.of(2020, 1, 1).plusDays(i));
      text.append(',').append(lowest).append(',').append(lowest + 8).append('\n');
    }
    Files.writeString(inputs.resolve("winters.csv"), text);
  }

  private static void sheet(XSSFWorkbook book, String name, List<String> values) {
    Sheet sheet = book.getSheet(name) == null ? book.createSheet(name) : book.getSheet(name);
    Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
    for (String value : values) {
      row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(value);
    }
  }

  private void fillInTheLog() throws IOException {
    try (XSSFWorkbook book =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(workbook())))) {
      Sheet log = book.getSheet("Log");
      remark(log).setCellValue(REMARK);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      Files.write(workbook(), out.toByteArray());
    }
  }

  private static Cell remark(Sheet log) {
    for (Cell heading : log.getRow(0)) {
      if (heading.getStringCellValue().equals("Remark")) {
        return log.getRow(1)
            .getCell(heading.getColumnIndex(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
      }
    }
    throw new AssertionError("the log has no column Remark");
  }

  /** Opens the workbook, looks at the log, and tells the run's digest. */
  private String wholeWorkbook() throws IOException {
    try (XSSFWorkbook book =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(workbook())))) {
      assertEquals(REMARK, remark(book.getSheet("Log")).getStringCellValue());
      return book.getProperties()
          .getCoreProperties()
          .getUnderlyingProperties()
          .getIdentifierProperty()
          .orElseThrow();
    }
  }

  /** Opens the calendar, reads all its pages, and tells the run's digest, which each page bears. */
  private String wholeCalendar() throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve(PlanCommand.CALENDAR));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      String text = new PDFTextStripper().getText(document);
      Matcher digest = Pattern.compile("\\b[0-9a-f]{16}\\b").matcher(text);
      assertTrue(digest.find(), text);
      return digest.group();
    }
  }
}
