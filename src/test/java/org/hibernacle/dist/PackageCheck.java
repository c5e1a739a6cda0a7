package org.hibernacle.dist;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The package as a keeper gets it: taken out of its zip into a folder with an odd name, started
 * from an empty folder with nothing in the environment. Not part of the build; the profile {@code
 * dist} runs it.
 */
class PackageCheck {
  private static final String VERSION = System.getProperty("package.version", "");

  /** What else the launcher asks of the system. */
  private static final List<String> TOOLS =
      List.of("readlink", "sed", "cksum", "wc", "tr", "mkdir", "mv", "rm", "find", "sh");

  @TempDir static Path shared;

  private static Path home;
  private static Path inventory;
  private static Path weather;

  @TempDir Path folder;

  private final Map<String, String> environment = new TreeMap<>();
  private Path cache;
  private Path here;

  /** How a run ended and what it said. */
  private record Ended(int code, String out, String err) {}

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

  private static Path onPath(String tool) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(dir -> Path.of(dir, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow();
  }

  /** One plant in a shed or on a bench. */
  private static Path inventory(String language) throws IOException {
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
  private static String weather() {
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
    cache = folder.resolve("cache");
    here = Files.createDirectories(folder.resolve("empty"));
    environment.put("XDG_CACHE_HOME", cache.toString());
    environment.put("PATH", shared.resolve("tools").toString());
    if (!bringsJava()) {
      environment.put("JAVA_HOME", System.getProperty("java.home"));
    }
  }

  private static boolean bringsJava() {
    return Files.exists(home.resolve("runtime"));
  }

  private static Path launcher() {
    return home.resolve("bin").resolve("hibernacle");
  }

  private Process start(Path log, Object... words) throws IOException {
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

  private Ended run(Object... words) throws IOException, InterruptedException {
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

  private Ended plan(Path to) throws IOException, InterruptedException {
    return run(launcher(), "plan", inventory, weather, "-o", to, "--without-remedies");
  }

  private List<String> names(Path of) throws IOException {
    if (!Files.isDirectory(of)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(of)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private Path quickStart() throws IOException {
    List<String> names = names(cache.resolve("hibernacle"));
    assertEquals(1, names.size(), names::toString);
    assertTrue(names.get(0).endsWith(".jsa"), names::toString);
    return cache.resolve("hibernacle").resolve(names.get(0));
  }

  @Test
  void theDemoIsPlanned() throws IOException, InterruptedException {
    Path demo = home.resolve("demo-data");
    Path to = here.resolve("plan");
    Ended ended =
        run(
            launcher(),
            "plan",
            demo.resolve("inventory.xlsx"),
            demo.resolve("temperatures.csv"),
            "-o",
            to,
            "-q");
    assertEquals(new Ended(0, "", ""), ended);
    assertEquals(List.of("season-calendar.pdf", "season-plan.xlsx"), names(to));
    assertEquals(List.of("plan"), names(here));
  }

  @Test
  void versionAndExitCodesComeThrough() throws IOException, InterruptedException {
    assertEquals(new Ended(0, "hibernacle " + VERSION + "\n", ""), run(launcher(), "--version"));
    assertEquals(2, run(launcher(), "plan").code());
    assertEquals(3, run(launcher(), "check", inventory, inventory).code());
    assertEquals(List.of(), names(cache.resolve("hibernacle")), "nothing is worth remembering yet");
  }

  @Test
  void aLinkAndEveryShellWillDo() throws IOException, InterruptedException {
    Path link = here.resolve("link");
    Files.createSymbolicLink(link, Path.of("second"));
    Files.createSymbolicLink(here.resolve("second"), launcher());
    assertEquals(0, run(link, "--version").code());
    for (String shell : List.of("dash", "bash")) {
      Ended ended = run(onPath(shell), "link", "--version");
      assertEquals(new Ended(0, "hibernacle " + VERSION + "\n", ""), ended, shell);
    }
  }

  @Test
  void withoutAJavaItSaysWhatIsMissing() throws IOException, InterruptedException {
    assumeFalse(bringsJava());
    environment.remove("JAVA_HOME");
    Ended none = run(launcher(), "--version");
    assertEquals(1, none.code());
    assertTrue(none.err().startsWith("Hibernacle needs Java 17 or newer, and none"), none.err());
    Path old = Files.createDirectories(folder.resolve("old").resolve("bin"));
    Files.writeString(old.resolve("java"), "#!/bin/sh\necho 'openjdk version \"1.8.0_392\"' >&2\n");
    Files.setPosixFilePermissions(
        old.resolve("java"), PosixFilePermissions.fromString("rwxr-xr-x"));
    environment.put("JAVA_HOME", old.getParent().toString());
    assertTrue(run(launcher(), "--version").err().contains("is 1.8.0_392."));
    Files.writeString(old.resolveSibling("release"), "JAVA_VERSION=\"11.0.2\"\n");
    Ended eleven = run(launcher(), "--version");
    assertEquals(1, eleven.code());
    assertTrue(eleven.err().contains("is 11.0.2."), eleven.err());
  }

  @Test
  void aJavaOnThePathWillDo() throws IOException, InterruptedException {
    assumeFalse(bringsJava());
    environment.remove("JAVA_HOME");
    Path bin = Files.createDirectories(folder.resolve("bin"));
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    Files.createSymbolicLink(bin.resolve("java"), java);
    environment.merge("PATH", bin.toString(), (path, dir) -> path + File.pathSeparator + dir);
    assertEquals(0, run(launcher(), "--version").code());
  }

  @Test
  void aDamagedQuickStartHarmsNothing() throws IOException, InterruptedException {
    Ended first = plan(here.resolve("first"));
    assertEquals(0, first.code(), first.err());
    Path file = quickStart();
    byte[] whole = Files.readAllBytes(file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    byte[] flipped = whole.clone();
    for (int i = whole.length / 2; i < whole.length / 2 + 4096; i++) {
      flipped[i] ^= 0x5a;
    }
    byte[] noise = "no archive ".repeat(whole.length / 11 + 1).getBytes(StandardCharsets.US_ASCII);
    for (byte[] damaged : List.of(flipped, java.util.Arrays.copyOf(noise, whole.length))) {
      Files.write(file, damaged);
      Ended ended = run(launcher(), "species", "Acer palmatum");
      assertEquals(0, ended.code());
      assertEquals("", ended.err());
      assertTrue(ended.out().startsWith("Acer palmatum"), ended.out());
    }
    Files.write(file, java.util.Arrays.copyOf(whole, whole.length / 3));
    Ended second = plan(here.resolve("second"));
    assertEquals(0, second.code(), second.err());
    assertTrue(
        names(cache.resolve("hibernacle")).stream().anyMatch(this::isWhole),
        "one that was cut short is made anew");
    assertSame(here.resolve("first"), here.resolve("second"));
  }

  /** Whether its name tells its length. */
  private boolean isWhole(String quickStart) {
    long length = cache.resolve("hibernacle").resolve(quickStart).toFile().length();
    return quickStart.endsWith("-" + length + ".jsa");
  }

  private static void assertSame(Path one, Path other) throws IOException {
    for (String name : List.of("season-plan.xlsx", "season-calendar.pdf")) {
      assertArrayEquals(
          Files.readAllBytes(one.resolve(name)), Files.readAllBytes(other.resolve(name)), name);
    }
  }

  @Test
  void whereNothingCanBeKeptItPlansAllTheSame() throws IOException, InterruptedException {
    Files.writeString(cache, "a file stands where the folder would be");
    Ended ended = plan(here.resolve("plan"));
    assertEquals(0, ended.code(), ended.err());
    environment.remove("XDG_CACHE_HOME");
    assertEquals(0, run(launcher(), "species").code());
  }

  @Test
  void twoFirstRunsAtOnceLeaveOneQuickStart() throws IOException, InterruptedException {
    List<Process> both = new ArrayList<>();
    for (String name : List.of("one", "two")) {
      both.add(
          start(
              folder.resolve(name),
              launcher(),
              "plan",
              inventory,
              weather,
              "-o",
              here.resolve(name),
              "--without-remedies"));
    }
    for (Process process : both) {
      assertEquals(0, process.waitFor());
    }
    assertSame(here.resolve("one"), here.resolve("two"));
    assertTrue(names(cache.resolve("hibernacle")).stream().allMatch(n -> n.endsWith(".jsa")));
    assertEquals(0, run(launcher(), "species").code());
  }

  @Test
  void aKilledRunLeavesNoQuickStart() throws IOException, InterruptedException {
    Process process =
        start(
            folder.resolve("log"),
            launcher(),
            "plan",
            home.resolve("demo-data/inventory.xlsx"),
            home.resolve("demo-data/temperatures.csv"),
            "-o",
            here.resolve("plan"));
    Optional<ProcessHandle> java = Optional.empty();
    while (process.isAlive() && java.isEmpty()) {
      java = process.descendants().filter(PackageCheck::isJava).findAny();
      Thread.sleep(20);
    }
    java.orElseThrow().destroyForcibly();
    assertEquals(128 + 9, process.waitFor(), "the launcher tells how it ended");
    assertEquals(List.of(), names(cache.resolve("hibernacle")));
    assertEquals(List.of(), names(here.resolve("plan")));
  }

  private static boolean isJava(ProcessHandle process) {
    return process.info().command().filter(command -> command.endsWith("/java")).isPresent();
  }

  @Test
  void droppedFilesArePlannedIntoTheirFolder() throws IOException, InterruptedException {
    Path garden = Files.createDirectories(folder.resolve("my garden & yours"));
    Files.copy(inventory, garden.resolve("plants 2026.xlsx"));
    Files.copy(weather, garden.resolve("station.csv"));
    Ended ended =
        run(launcher(), garden.resolve("station.csv"), garden.resolve("plants 2026.xlsx"));
    assertEquals(0, ended.code(), ended.err());
    assertTrue(ended.out().startsWith("No command given: plants 2026.xlsx is planned with"));
    assertTrue(ended.out().contains("Wrote " + garden.resolve("season-plan.xlsx")), ended.out());
    quickStart();
  }

  @Test
  void otherWordsEncodingsAndZonesCameAlong() throws IOException, InterruptedException {
    Path japanese = folder.resolve("japanese.csv");
    Files.write(
        japanese,
        weather()
            .replace("date,tmin_c,tmax_c", "年月日,最低気温(℃),最高気温(℃)")
            .getBytes(Charset.forName("Shift_JIS")));
    environment.put("TZ", "Asia/Tokyo");
    Ended ended =
        run(
            launcher(),
            "plan",
            inventory("de-AT"),
            japanese,
            "--encoding",
            "Shift_JIS",
            "--columns",
            "date,lowest,highest",
            "--zone",
            "Asia/Tokyo",
            "--unit",
            "C",
            "-o",
            here.resolve("plan"),
            "--without-remedies",
            "--ics");
    assertEquals(0, ended.code(), ended.err());
    byte[] calendar = Files.readAllBytes(here.resolve("plan").resolve("season-calendar.pdf"));
    try (PDDocument document = Loader.loadPDF(calendar)) {
      String text = new PDFTextStripper().getText(document);
      // "January" and "Tuesday" of Austria in the locale data of Unicode.
      assertTrue(text.contains("Jänner") && text.contains("Dezember"), text);
    }
  }

  @Test
  void anEncryptedWorkbookIsToldNotStumbledOver() throws Exception {
    Path locked = folder.resolve("locked.xlsx");
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      var encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (var out = encryptor.getDataStream(files)) {
        out.write(Files.readAllBytes(inventory));
      }
      try (var out = Files.newOutputStream(locked)) {
        files.writeFilesystem(out);
      }
    }
    Ended ended = run(launcher(), "check", locked, weather);
    assertEquals(3, ended.code(), ended.err());
    assertTrue((ended.out() + ended.err()).contains("locked.xlsx"), ended.err());
  }

  @Test
  void everyLibraryHasItsLicence() throws IOException {
    List<String> libraries =
        names(home.resolve("lib")).stream()
            .map(name -> name.replace(".jar", ""))
            .filter(name -> !name.equals("hibernacle"))
            .toList();
    assertTrue(libraries.size() > 20, libraries::toString);
    for (String library : libraries) {
      List<String> texts = names(home.resolve("licences").resolve(library));
      assertTrue(texts.stream().anyMatch(text -> !text.startsWith("NOTICE")), library);
    }
    assertTrue(
        names(home.resolve("licences")).containsAll(List.of("bom.json", "bom.xml", "fonts")));
  }

  @Test
  void theManualAndTheCompletionAreUnderstood() throws IOException, InterruptedException {
    Path script = home.resolve("completion").resolve("hibernacle");
    Ended completion = run(onPath("bash"), "-c", ". \"$0\" && complete -p hibernacle", script);
    assertEquals(0, completion.code(), completion.err());
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/groff")));
    Path pages = home.resolve("man").resolve("man1");
    for (String page : names(pages)) {
      environment.put("PATH", "/usr/bin:/bin");
      Ended ended = run("groff", "-man", "-Tutf8", "-P-cbou", "-ww", pages.resolve(page));
      assertEquals("", ended.err(), page);
      assertTrue(ended.out().contains("EXIT STATUS"), page);
    }
  }
}
