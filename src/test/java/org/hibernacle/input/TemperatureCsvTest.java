package org.hibernacle.input;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the files of the specification can not show: the disk, archives and size. */
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
        out.write(
            start.plusDays(i / 1440) + " " + time + "," + (minute / 60 + i / 1440 % 2) + "\n");
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
    problems.error("IN-105", "inventory.xlsx");
    Path file = folder.resolve("ok.csv");
    Files.writeString(file, "date,tmin_c,tmax_c\n2025-01-15,-3,2\n", UTF_8);
    assertTrue(
        TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems).isPresent());
  }

  @Test
  void theTablesOfAnArchiveAreOneSeries() throws IOException {
    Path zip = folder.resolve("station.zip");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
      put(out, "2026.csv", "date,tmin_c,tmax_c\n2026-01-01,-5,1\n");
      put(out, "data/2025.txt", "date;tmin_c;tmax_c\n31.12.2025;-4;0\n");
      put(out, "about.txt", "station;height\nSomewhere;12\n");
      put(out, "picture.png", "no text at all");
    }
    TemperatureSeries series =
        TemperatureCsv.read(List.of(zip), TemperatureCsv.Options.NONE, problems).orElseThrow();
    assertEquals(LocalDate.of(2025, 12, 31), series.days().firstKey());
    assertEquals(2, series.days().size());
    assertTrue(said().contains(zip + ", about.txt [IN-411]"), said());
    assertTrue(said().contains(zip + ", data/2025.txt [IN-322]"), said());
  }

  @Test
  void aPackedFileIsReadAsItIs() throws IOException {
    Path packed = folder.resolve("station.csv.gz");
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      out.write("date,tmin_c,tmax_c\n2026-01-01,-5,1\n".getBytes(UTF_8));
    }
    assertEquals(
        -5.0,
        TemperatureCsv.read(List.of(packed), TemperatureCsv.Options.NONE, problems)
            .orElseThrow()
            .days()
            .firstEntry()
            .getValue()
            .minC());
  }

  @Test
  void archivesOfOtherThingsAreNamed() throws IOException {
    Path nothing = folder.resolve("pictures.zip");
    Path workbook = folder.resolve("renamed.csv");
    Path cut = folder.resolve("cut.csv.gz");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(nothing))) {
      put(out, "picture.png", "no text at all");
    }
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(workbook))) {
      put(out, "[Content_Types].xml", "<Types/>");
      put(out, "table.csv", "date,tmin_c,tmax_c");
    }
    Files.write(cut, new byte[] {0x1F, (byte) 0x8B, 8, 0});
    List.of(nothing, workbook, cut)
        .forEach(
            file ->
                assertTrue(
                    TemperatureCsv.read(List.of(file), TemperatureCsv.Options.NONE, problems)
                        .isEmpty()));
    assertTrue(said().contains(nothing + " [IN-400]: an archive without a text table"), said());
    assertTrue(said().contains(workbook + " [IN-302]: a workbook"), said());
    assertTrue(said().contains(cut + " [IN-400]: a packed file that is damaged"), said());
  }

  @Test
  void aHeadingOfTooManyColumnsIsRefused() throws IOException {
    Path wide = folder.resolve("wide.csv");
    Files.writeString(wide, "date,tmin_c,tmax_c" + ",x".repeat(3000) + "\n", UTF_8);
    Path wider = folder.resolve("wider.csv");
    Files.writeString(wider, "date,tmin_c,tmax_c" + ",x".repeat(1_000_000) + "\n", UTF_8);
    TemperatureCsv.read(List.of(wide, wider), TemperatureCsv.Options.NONE, problems);
    assertTrue(said().contains(wide + ", line 1 [IN-304]: a row of 3003 cells"), said());
    assertTrue(said().contains(wider + ", from line 1 [IN-304]: a row without an end"), said());
  }

  /** A megabyte of text from nowhere: what is kept must be days, not rows. */
  @Test
  void aStreamIsReadWithoutKeepingItsRows() throws IOException {
    CsvSource minutes = MinuteStream.source(40);
    TemperatureSeries series =
        TemperatureCsv.read(minutes, TemperatureCsv.Options.NONE, problems).orElseThrow();
    assertEquals(40, series.days().size());
    assertEquals(MinuteStream.LOWEST_C, series.days().firstEntry().getValue().minC());
    assertEquals(MinuteStream.HIGHEST_C, series.days().firstEntry().getValue().maxC());
  }

  private static void put(ZipOutputStream out, String name, String text) throws IOException {
    out.putNextEntry(new ZipEntry(name));
    out.write(text.getBytes(UTF_8));
    out.closeEntry();
  }

  private String said() {
    return problems.sorted().stream().map(Diagnostic::toString).collect(Collectors.joining("\n"));
  }
}
