package org.hibernacle.input;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Reads every file below {@code src/test/resources/csv}. Beside {@code NAME.csv} stand {@code
 * NAME.expected.csv} (the days that must come out; absent if none may), {@code NAME.problems.txt}
 * (all that must be said) and, where needed, {@code NAME.options.txt} (one option a line) and
 * {@code NAME.more.csv} (a second file of the same series). All values are invented. With {@code
 * -Dgolden.update} the two result files are written anew; read the difference before keeping it.
 */
class TemperatureCsvSpecTest {
  private static final Path ROOT = Path.of("src", "test", "resources", "csv");

  /** Languages that write numbers, capitals and dates otherwise, and clocks that tell otherwise. */
  private static final List<List<String>> MACHINES =
      List.of(
          List.of("en", "UTC"),
          List.of("de", "Asia/Tokyo"),
          List.of("tr", "America/St_Johns"),
          List.of("ja-JP-u-ca-japanese", "Australia/Lord_Howe"));

  @TestFactory
  Stream<DynamicTest> everyFileOnEveryMachine() throws IOException {
    List<Path> files;
    try (Stream<Path> tree = Files.walk(ROOT)) {
      files =
          tree.filter(path -> path.toString().endsWith(".csv"))
              .filter(path -> !path.toString().endsWith(".expected.csv"))
              .filter(path -> !path.toString().endsWith(".more.csv"))
              .sorted()
              .toList();
    }
    assertTrue(files.size() > 180, "the specification has gone missing");
    return files.stream()
        .map(file -> dynamicTest(ROOT.relativize(file).toString(), () -> check(file)));
  }

  @Test
  void everyLayoutHasAFileThatIsReadAndIsOnThePage() throws IOException {
    String page = Files.readString(Path.of("docs", "csv-layouts.md"), UTF_8);
    for (CsvLayout layout : CsvLayouts.ALL) {
      Path ok = ROOT.resolve(layout.name()).resolve("ok.csv");
      assertTrue(Files.exists(beside(ok, ".expected.csv")), ok + " is not read");
      String said = Files.readString(beside(ok, ".problems.txt"), UTF_8);
      assertTrue(said.contains("ok.csv [IN-322]: layout " + layout.name() + ","), said);
      String row = "| `" + layout.name() + "` | ";
      assertTrue(page.contains(row), row + "is not in docs/csv-layouts.md");
      String line = page.substring(page.indexOf(row)).lines().findFirst().orElseThrow();
      String proof = layout.proof().name().toLowerCase(Locale.ROOT);
      assertTrue(layout.rank() != CsvLayout.Rank.KNOWN || line.endsWith("| " + proof + " |"), line);
    }
  }

  private static void check(Path file) throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (List<String> machine : MACHINES) {
        Locale.setDefault(Locale.forLanguageTag(machine.get(0)));
        TimeZone.setDefault(TimeZone.getTimeZone(machine.get(1)));
        checkHere(file);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static void checkHere(Path file) throws IOException {
    List<Path> files = new ArrayList<>(List.of(file));
    Path more = beside(file, ".more.csv");
    if (Files.exists(more)) {
      files.add(more);
    }
    Problems problems = new Problems();
    Optional<TemperatureSeries> series = TemperatureCsv.read(files, options(file), problems);
    String said =
        said(problems).replace(file.getParent() + file.getFileSystem().getSeparator(), "");
    assertEquals(series.isEmpty(), problems.hasErrors(), said);
    compare(beside(file, ".problems.txt"), said);
    compare(beside(file, ".expected.csv"), series.map(TemperatureCsvSpecTest::dump).orElse(""));
  }

  private static TemperatureCsv.Options options(Path file) throws IOException {
    Optional<String> station = Optional.empty();
    Optional<TemperatureUnit> unit = Optional.empty();
    Optional<String> dateFormat = Optional.empty();
    Optional<String> layout = Optional.empty();
    Optional<String> columns = Optional.empty();
    Optional<Charset> encoding = Optional.empty();
    Optional<ZoneId> zone = Optional.empty();
    QualityPolicy quality = QualityPolicy.STRICT;
    Path options = beside(file, ".options.txt");
    for (String line :
        Files.exists(options) ? Files.readAllLines(options, UTF_8) : List.<String>of()) {
      String value = line.substring(line.indexOf(' ') + 1);
      switch (line.substring(0, line.indexOf(' '))) {
        case "--station" -> station = Optional.of(value);
        case "--unit" -> unit = Optional.of(TemperatureUnit.named(value));
        case "--date-format" -> dateFormat = Optional.of(value);
        case "--layout" -> layout = Optional.of(value);
        case "--columns" -> columns = Optional.of(value);
        case "--encoding" -> encoding = Optional.of(Charset.forName(value));
        case "--zone" -> zone = Optional.of(ZoneId.of(value));
        case "--suspect" ->
            quality = new QualityPolicy(suspect(value), quality.gaps(), quality.joinDays());
        case "--gaps" ->
            quality =
                new QualityPolicy(quality.suspect(), gaps(value), value.equals("join") ? 3 : 0);
        default -> throw new IllegalArgumentException(line);
      }
    }
    return new TemperatureCsv.Options(
        station, unit, dateFormat, layout, Optional.empty(), columns, encoding, zone, quality);
  }

  private static QualityPolicy.Suspect suspect(String word) {
    return QualityPolicy.Suspect.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static QualityPolicy.Gaps gaps(String word) {
    return QualityPolicy.Gaps.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static void compare(Path golden, String actual) throws IOException {
    if (System.getProperty("golden.update") != null) {
      if (actual.isEmpty()) {
        Files.deleteIfExists(golden);
      } else {
        Files.writeString(golden, actual, UTF_8);
      }
    }
    String expected = Files.exists(golden) ? Files.readString(golden, UTF_8) : "";
    assertEquals(expected, actual, golden.toString());
  }

  private static String said(Problems problems) {
    StringBuilder text = new StringBuilder();
    problems.sorted().forEach(p -> text.append(p.severity()).append(' ').append(p).append('\n'));
    return text.toString();
  }

  /** Station, then date, lowest, highest and, where there are any, the 24 hours, °C; snow, cm. */
  private static String dump(TemperatureSeries series) {
    StringBuilder text = new StringBuilder("# ").append(series.station()).append('\n');
    series
        .days()
        .forEach(
            (day, extremes) -> {
              text.append(day).append(',').append(rounded(extremes.minC()));
              text.append(',').append(rounded(extremes.maxC()));
              for (double airC : series.hours().getOrDefault(day, List.of())) {
                text.append(',').append(rounded(airC));
              }
              if (series.snowCm().containsKey(day)) {
                text.append(",snow ").append(rounded(series.snowCm().get(day)));
              }
              text.append('\n');
            });
    return text.toString();
  }

  /** To a millionth, so that only binary noise is hidden. */
  private static double rounded(double airC) {
    return Math.round(airC * 1e6) / 1e6 + 0.0;
  }

  private static Path beside(Path file, String ending) {
    return Path.of(file.toString().replaceFirst("\\.csv$", ending));
  }
}
