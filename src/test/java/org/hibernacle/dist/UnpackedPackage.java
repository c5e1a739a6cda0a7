package org.hibernacle.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * The package as a keeper gets it: taken out of its zip into a folder with an odd name, started
 * from an empty folder with nothing in the environment, and with nowhere to keep what makes a start
 * quicker.
 */
abstract class UnpackedPackage {
  static final String VERSION = System.getProperty("package.version", "");

  /** What else the launcher asks of the system. */
  private static final List<String> TOOLS =
      List.of("readlink", "sed", "cksum", "wc", "tr", "mkdir", "mv", "rm", "find", "nice", "sh");

  @TempDir static Path shared;

  static Path home;
  static Path inventory;
  static Path weather;

  @TempDir Path folder;

  final Map<String, String> environment = new TreeMap<>();
  Path here;

  /** How a run ended and what it said. */
  record Ended(int code, String out, String err) {}

  @BeforeAll
  static void unpack() throws IOException {
    Path odd = Files.createDirectories(shared.resolve("odd (folder) & 'more' $x"));
    TreeSet<String> tops = new TreeSet<>();
    try (ZipFile zip = ZipFile.builder().setFile(System.getProperty("package.zip")).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        tops.add(entry.getName().replaceAll("/.*", ""));
        Path file = odd.resolve(entry.getName());
        if (entry.isDirectory()) {
          Files.createDirectories(file);
          continue;
        }
        Files.createDirectories(file.getParent());
        try (InputStream in = zip.getInputStream(entry)) {
          Files.copy(in, file);
        }
        if ((entry.getUnixMode() & 0100) != 0) {
          Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
      }
    }
    assertEquals(List.of("hibernacle-" + VERSION), List.copyOf(tops));
    home = odd.resolve("hibernacle-" + VERSION);
    Path tools = Files.createDirectories(shared.resolve("tools"));
    for (String tool : TOOLS) {
      Files.createSymbolicLink(tools.resolve(tool), onPath(tool));
    }
    inventory = inventory("en-GB");
    weather = shared.resolve("winters.csv");
    Files.writeString(weather, weather());
  }

  static Path onPath(String tool) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(dir -> Path.of(dir, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow();
  }

  /** One plant in a shed or on a bench. */
  static Path inventory(String language) throws IOException {
    Path file = shared.resolve("inventory-" + language + ".xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      row(book, "Plants", "Id", "Species", "Home", "Volume L");
      row(book, "Plants", "A1", "Acer palmatum", "Bench", "5");
      row(book, "Places", "Place", "Kind");
      row(book, "Places", "Bench", "bench");
      row(book, "Places", "Shed", "cold store");
      row(book, "Settings", "Setting", "Value");
      row(book, "Settings", "Latitude", "50");
      row(book, "Settings", "Language tag", language);
      try (var out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    return file;
  }

  private static void row(XSSFWorkbook book, String sheet, String... values) {
    var in = book.getSheet(sheet) == null ? book.createSheet(sheet) : book.getSheet(sheet);
    var row = in.createRow(in.getPhysicalNumberOfRows());
    for (int i = 0; i < values.length; i++) {
      row.createCell(i).setCellValue(values[i]);
    }
  }

  /**
   * Two cold winters. Days differ, as they do in life: a long run of equal ones would be doubted.
   */
  static String weather() {
    StringBuilder text = new StringBuilder("date,tmin_c,tmax_c\n");
    for (int i = 0; i < 1000; i++) {
      long lowest = Math.round(3 - 12 * Math.cos(2 * Math.PI * i / 365.25)) + i * 7 % 11 % 4;
      text.append(java.time.LocalDate.of(2020, 1, 1).plusDays(i));
      text.append(',').append(lowest).append(',').append(lowest + 8).append('\n');
    }
    return text.toString();
  }

  @BeforeEach
  void startWithNothing() throws IOException {
    here = Files.createDirectories(folder.resolve("empty"));
    environment.put("PATH", shared.resolve("tools").toString());
    if (!bringsJava()) {
      environment.put("JAVA_HOME", System.getProperty("java.home"));
    }
  }

  static boolean bringsJava() {
    return Files.exists(home.resolve("runtime"));
  }

  static Path launcher() {
    return home.resolve("bin").resolve("hibernacle");
  }

  Process start(Path log, Object... words) throws IOException {
    List<String> command = new ArrayList<>();
    Stream.of(words).map(Object::toString).forEach(command::add);
    ProcessBuilder builder = new ProcessBuilder(command).directory(here.toFile());
    builder.environment().clear();
    builder.environment().putAll(environment);
    return builder
        .redirectOutput(new File(log + ".out"))
        .redirectError(new File(log + ".err"))
        .start();
  }

  Ended run(Object... words) throws IOException, InterruptedException {
    Path log = folder.resolve("log");
    Process process = start(log, words);
    if (!process.waitFor(5, TimeUnit.MINUTES)) {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      throw new AssertionError("does not end: " + List.of(words));
    }
    return new Ended(
        process.exitValue(),
        Files.readString(Path.of(log + ".out")),
        Files.readString(Path.of(log + ".err")));
  }

  Ended plan(Path to) throws IOException, InterruptedException {
    return run(launcher(), "plan", inventory, weather, "-o", to, "--without-remedies");
  }

  List<String> names(Path of) throws IOException {
    if (!Files.isDirectory(of)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(of)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }
}
