package org.hibernacle.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.cli.Hibernacle;

/**
 * Invents how the winter of 2026/27 went in the demo garden: its temperatures, what a logger in the
 * stone shed read, and the season plan with the log filled in by a keeper who did most things as
 * planned and some not at all.
 */
public final class DemoWinter {
  static final String TEMPERATURES = "winter-2026-27.csv";
  static final String LOGGER = "stone-shed-2026-27.csv";
  static final String PLAN = "season-plan-filled-in.xlsx";

  private static final LocalDate FIRST = LocalDate.of(2026, 7, 1);
  private static final LocalDate LAST = LocalDate.of(2027, 6, 30);

  /** A heading of the log and what stands below it: words or a day. */
  private record Entry(String heading, Object value) {}

  private static final Map<String, List<Entry>> LOG =
      Map.ofEntries(
          // Left on the bench.
          told("P05", blank("not moved"), outcome("dead"), noticed(2027, 4, 3)),
          told("P21", blank("not moved"), outcome("dead"), noticed(2027, 3, 20)),
          told("P08", blank("not moved"), outcome("no damage")),
          // Carried in too late.
          told("P41", in(2026, 11, 14), outcome("branches lost"), noticed(2026, 11, 22)),
          told("P36", in(2027, 1, 23), outcome("dead"), noticed(2027, 3, 6)),
          // Carried home too early.
          told("P26", home(2027, 1, 9), outcome("dead"), noticed(2027, 4, 24)),
          // Kept too warm.
          told(
              "P22",
              in(2026, 11, 14),
              home(2027, 3, 27),
              stood("Garden room"),
              blank("not moved"),
              outcome("branches lost"),
              remark("leaves in February, long and pale")),
          // As planned, in a winter colder than any that the plan knew.
          told("P13", outcome("branches lost"), noticed(2027, 4, 10)),
          // Nothing that the cold did.
          told("P30", outcome("dead"), noticed(2027, 2, 14), remark("roots brown and wet")),
          // Late, and none the worse for it.
          told("P10", down(2026, 11, 21), home(2027, 3, 13), outcome("no damage")),
          told("P01", down(2026, 11, 7), home(2027, 3, 20), outcome("no damage")),
          told("P25", outcome("gone"), remark("given to a neighbour in October")));

  private DemoWinter() {}

  /** Writes the files into the folder named, planning from the demo's own. */
  public static void main(String[] outDir) throws IOException {
    Path folder = Files.createDirectories(Path.of(outDir[0]));
    Files.writeString(folder.resolve(TEMPERATURES), csv());
    Files.writeString(folder.resolve(LOGGER), loggerCsv());
    Path planned = Files.createTempDirectory("demo-winter");
    PrintWriter screen = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    Hibernacle.run(
        screen,
        screen,
        "plan",
        "demo-data/inventory.xlsx",
        "demo-data/temperatures.csv",
        "-o",
        planned.toString(),
        "-q");
    fillIn(planned.resolve("season-plan.xlsx"), folder.resolve(PLAN));
  }

  /** The temperatures, in the layout of those before. */
  static String csv() {
    return DemoTemperatures.csv(
        DemoTemperatures.days(LAST).stream().filter(d -> !d.date().isBefore(FIRST)).toList());
  }

  /**
   * What the logger in the stone shed read from December to February, with new neighbours who heat
   * more.
   */
  static String loggerCsv() {
    return DemoLogger.csv(
        DemoTemperatures.days(LAST),
        LocalDate.of(2026, 10, 1),
        LocalDate.of(2026, 12, 1),
        LocalDate.of(2027, 2, 28),
        4);
  }

  private static void fillIn(Path plan, Path filledIn) throws IOException {
    try (InputStream in = Files.newInputStream(plan);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(filledIn)) {
      Sheet log = book.getSheet("Log");
      Map<String, Integer> columns = new HashMap<>();
      log.getRow(0).forEach(c -> columns.put(c.getStringCellValue(), c.getColumnIndex()));
      for (Row row : log) {
        String id = row.getCell(0).getStringCellValue();
        for (Entry entry : LOG.getOrDefault(id, List.of(outcome("no damage")))) {
          if (row.getRowNum() > 0) {
            write(row.getCell(columns.get(entry.heading())), entry.value());
          }
        }
      }
      book.write(out);
    }
  }

  private static void write(Cell cell, Object value) {
    if (value instanceof LocalDate day) {
      cell.setCellValue(day);
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private static Map.Entry<String, List<Entry>> told(String id, Entry... entries) {
    return Map.entry(id, List.of(entries));
  }

  private static Entry down(int year, int month, int day) {
    return new Entry("Real move-down", LocalDate.of(year, month, day));
  }

  private static Entry in(int year, int month, int day) {
    return new Entry("Real move-in", LocalDate.of(year, month, day));
  }

  private static Entry home(int year, int month, int day) {
    return new Entry("Real return", LocalDate.of(year, month, day));
  }

  private static Entry noticed(int year, int month, int day) {
    return new Entry("Noticed on", LocalDate.of(year, month, day));
  }

  private static Entry stood(String place) {
    return new Entry("Stood in", place);
  }

  private static Entry blank(String means) {
    return new Entry("A blank day means", means);
  }

  private static Entry outcome(String outcome) {
    return new Entry("Outcome", outcome);
  }

  private static Entry remark(String text) {
    return new Entry("Remark", text);
  }
}
