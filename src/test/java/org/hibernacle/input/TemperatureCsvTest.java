package org.hibernacle.input;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the files of the specification can not show: the disk, size, and the page of messages. */
class TemperatureCsvTest {
  private final Problems problems = new Problems();

  @TempDir Path folder;

  @Test
  void aMissingFileAndAFolderAreNamed() {
    TemperatureCsv.read(
        List.of(folder.resolve("none.csv"), folder), TemperatureCsv.Options.NONE, problems);
    List<Diagnostic> said = problems.sorted();
    assertEquals(2, said.size());
    assertEquals(List.of("IN-301", "IN-301"), said.stream().map(Diagnostic::code).toList());
    assertEquals(folder.toString(), said.get(0).where());
    assertEquals("a folder", said.get(0).found());
    assertEquals("no such file", said.get(1).found());
  }

  @Test
  void aRowWithoutAnEndIsStopped() throws IOException {
    Path file = folder.resolve("endless.csv");
    try (BufferedWriter out = Files.newBufferedWriter(file, UTF_8)) {
      out.write("date,tmin_c,tmax_c\n2025-01-15,-3,2\n\"");
      for (int i = 0; i < 200_000; i++) {
        out.write("2025-01-15,-3,2\n");
      }
    }
    assertTrue(TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems).isEmpty());
    assertEquals("IN-304", problems.sorted().get(0).code());
    assertEquals(file + ", from line 3", problems.sorted().get(0).where());
  }

  @Test
  void aLongFileIsReadWhole() throws IOException {
    Path file = folder.resolve("minutes.csv");
    LocalDate start = LocalDate.of(2024, 10, 1);
    try (BufferedWriter out = Files.newBufferedWriter(file, UTF_8)) {
      out.write("timestamp,temp_c\n");
      for (int i = 0; i < 60 * 24 * 60; i++) {
        int minute = i % 1440;
        String time = String.format(java.util.Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
        out.write(start.plusDays(i / 1440) + " " + time + "," + (minute / 60) + "\n");
      }
    }
    TemperatureSeries series =
        TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems).orElseThrow();
    assertEquals(60, series.days().size());
    assertEquals(60, series.hours().size());
    assertEquals(13.0, series.hours().firstEntry().getValue().get(13));
    assertEquals(start.plusDays(59), series.days().lastKey());
  }

  @Test
  void errorsBeforeItDoNotStopTheReader() throws IOException {
    problems.error("IN-101", "inventory.xlsx", "something", "something else");
    Path file = folder.resolve("ok.csv");
    Files.writeString(file, "date,tmin_c,tmax_c\n2025-01-15,-3,2\n", UTF_8);
    assertTrue(
        TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems).isPresent());
  }

  @Test
  void everyMessageIsInTheDocumentsAndTheOtherWayRound() throws IOException {
    TreeSet<String> inCode = new TreeSet<>();
    try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
      for (Path source : sources.filter(p -> p.toString().endsWith(".java")).toList()) {
        codes("\"(IN-3\\d\\d)\"", source, inCode);
      }
    }
    TreeSet<String> inDocuments = new TreeSet<>();
    codes("(?m)^\\| (IN-3\\d\\d) ", Path.of("docs", "messages.md"), inDocuments);
    assertEquals(inCode, inDocuments);
    assertTrue(inCode.size() > 20);
  }

  @Test
  void everyLayoutIsInTheDocuments() throws IOException {
    String page = Files.readString(Path.of("docs", "csv-layouts.md"), UTF_8);
    for (CsvLayout layout : CsvLayouts.ALL) {
      assertTrue(page.contains("`" + layout.name() + "`"), layout.name());
    }
  }

  private static void codes(String regex, Path file, TreeSet<String> into) throws IOException {
    Matcher code = Pattern.compile(regex).matcher(Files.readString(file, UTF_8));
    while (code.find()) {
      into.add(code.group(1));
    }
  }
}
