package org.hibernacle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WintersCommandTest {
  /** Measured days with independent counts; see the README.md beside them. */
  private static final Path MEASURED = Path.of("src", "test", "resources", "noaa");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  @Test
  void tellsEachWinterInABlock() {
    assertEquals(0, measured("--station", "New York", "--latitude", "40.7"));
    String text = out.toString();
    assertTrue(text.startsWith("Station New York"), text);
    assertTrue(text.contains("Winter 2013/14, 2013-07-01 to 2014-06-30"), text);
    assertTrue(text.contains("coldest night             -16.0 °C on 2014-01-04"), text);
    assertTrue(
        text.contains("at or below -10 °C        11 nights, 2014-01-03 to 2014-03-04"), text);
    assertTrue(text.contains("not complete: nothing on file from 2011-10-01 to 2011-12-31"), text);
    assertTrue(err.toString().contains("[IN-322]"), err.toString());
    assertFalse(err.toString().contains("IN-331"), err.toString());
  }

  @Test
  void theRowsForASpreadsheetCarryTheIndependentCounts() throws IOException {
    assertEquals(0, measured("--station", "Seattle", "--latitude", "47.6", "--csv"));
    List<CSVRecord> rows = table(out.toString());
    List<CSVRecord> counts =
        table(Files.readString(MEASURED.resolve("counts.csv"), UTF_8)).stream()
            .filter(row -> row.get("location").equals("Seattle"))
            .toList();
    assertEquals(5, rows.size());
    for (int i = 0; i < 5; i++) {
      CSVRecord row = rows.get(i);
      CSVRecord count = counts.get(i);
      assertTrue(row.isConsistent());
      assertEquals("Seattle", row.get("Station"));
      assertEquals(count.get("coldest_c"), row.get("Coldest night (°C)"));
      assertEquals(count.get("coldest_on"), row.get("Coldest night on"));
      for (String limit : List.of("0", "2.2", "5", "10")) {
        String heading = " at or below " + (limit.equals("0") ? "" : "-") + limit + " °C";
        assertEquals(count.get("days_" + limit), row.get("Nights" + heading));
        assertEquals(count.get("first_" + limit), row.get("First" + heading));
        assertEquals(count.get("last_" + limit), row.get("Last" + heading));
      }
    }
    assertEquals(
        List.of("no", "yes", "yes", "yes", "no"),
        rows.stream().map(row -> row.get("Complete for planning")).toList());
  }

  @Test
  void saysWhichLatitudeItTookAndSumsOverTheWindow() throws IOException {
    assertEquals(0, measured("--station", "Seattle", "--csv", "--from", "12-01", "--to", "02-29"));
    assertTrue(err.toString().contains("45 degrees north is used"), err.toString());
    CSVRecord winter = table(out.toString()).get(1);
    assertEquals("2012-12-01", winter.get("Chill and warmth from"));
    assertEquals("2013-02-28", winter.get("Chill and warmth to"));
    assertEquals("0", winter.get("Missing days there"));
    double hours = Double.parseDouble(winter.get("Chilling hours (h)"));
    assertTrue(hours > 0 && hours <= 90 * 24, winter.toString());
  }

  @Test
  void southOfTheEquatorAWinterIsAYear() throws IOException {
    StringBuilder file = new StringBuilder("date,tmin_c,tmax_c\n");
    LocalDate.of(2023, 1, 1)
        .datesUntil(LocalDate.of(2025, 1, 1))
        .filter(day -> !day.equals(LocalDate.of(2024, 7, 1)))
        .forEach(
            day ->
                file.append(day)
                    .append(
                        day.getMonthValue() == 7
                            ? ","
                                + (-3 - day.getDayOfMonth() % 2)
                                + ","
                                + (8 + day.getDayOfMonth() % 2)
                                + "\n"
                            : ","
                                + (5 + day.getDayOfMonth() % 2)
                                + ","
                                + (15 + day.getDayOfMonth() % 2)
                                + "\n"));
    Path path = Files.writeString(folder.resolve("hill, south.csv"), file, UTF_8);
    assertEquals(0, run("winters", path.toString(), "--latitude", "-43", "--csv"));
    List<CSVRecord> rows = table(out.toString());
    assertEquals(List.of("2023", "2024"), rows.stream().map(row -> row.get("Winter")).toList());
    assertEquals("hill, south", rows.get(0).get("Station"));
    assertEquals("31", rows.get(0).get("Longest run below 0 °C (nights)"));
    assertEquals("30", rows.get(1).get("Longest run below 0 °C (nights)"));
    assertEquals("1", rows.get(1).get("Missing days"));
    assertEquals("bridged 2024-07-01", rows.get(1).get("Remark"));
  }

  /** The middle ones of the three whole winters in the independent counts. */
  @Test
  void frostDatesByChanceFollowTheBlocks() {
    assertEquals(0, measured("--station", "Seattle", "--latitude", "47.6"));
    List<String> lines = frostDates();
    assertEquals("Frost dates over the winters on file, Weibull positions", lines.get(0));
    assertEquals("  at or below 0 °C          in 3 of 3 winters", lines.get(1));
    assertEquals(
        "    first                   early too few winters, typical 12 Nov, late too few winters",
        lines.get(2));
    assertEquals(
        "    last                    early too few winters, typical 4 Mar, late too few winters",
        lines.get(3));
    assertTrue(lines.contains("  at or below -10 °C        in 0 of 3 winters"), lines.toString());
    assertEquals(
        "  day on file from 1 Aug to the first frost and from the last one to 31 May.",
        lines.get(lines.size() - 2));
    assertTrue(lines.get(lines.size() - 1).endsWith("at least 10 with such a frost."));
  }

  @Test
  void frostDatesCanBeSpreadByHazenAndStayOutOfTheSpreadsheet() {
    assertEquals(0, measured("--station", "Seattle", "--positions", "hazen"));
    assertTrue(out.toString().contains("1 in 10 needs at least 6 with such a frost."));
    out.getBuffer().setLength(0);
    assertEquals(0, measured("--station", "Seattle", "--csv"));
    assertFalse(out.toString().contains("Frost dates"), out.toString());
  }

  /** The hardest frosts of the invented garden stay away in one winter of ten. */
  @Test
  void tenWintersGiveAllThreeDatesOrSayWhyNot() {
    assertEquals(0, run("winters", "demo-data/temperatures.csv", "--latitude", "48.1"));
    List<String> lines = frostDates();
    assertTrue(lines.get(2).matches("    first +early .* Nov, typical .* Nov, late .* Nov"));
    int hard = lines.indexOf("  at or below -10 °C        in 9 of 10 winters");
    assertTrue(lines.get(hard + 1).endsWith(", late none by that chance"), lines.toString());
    assertTrue(lines.get(hard + 2).contains("early none by that chance, typical"));
    assertFalse(lines.toString().contains("too few winters"), "ten are enough");
  }

  @Test
  void gapsAndDoubtfulDaysAreListedOnce() throws IOException {
    StringBuilder file = new StringBuilder("date,tmin_c,tmax_c\n");
    LocalDate.of(2023, 10, 1)
        .datesUntil(LocalDate.of(2024, 4, 1))
        .filter(day -> day.getDayOfYear() != 20 && day.getDayOfYear() != 21)
        .forEach(
            day -> {
              int tenths = day.getDayOfMonth() % 2;
              String minC = day.getDayOfYear() == 40 ? "-44." : "-3.";
              file.append(day).append(',').append(minC).append(tenths).append(",4.").append(tenths);
              file.append('\n');
            });
    Path path = Files.writeString(folder.resolve("doubts.csv"), file, UTF_8);
    assertEquals(3, run("winters", path.toString(), "--latitude", "48"));
    assertTrue(err.toString().contains("[IN-420]: 2024-02-09 with -44.1 to 4.1"), err.toString());
    assertEquals(0, run("winters", path.toString(), "--latitude", "48", "--suspect", "keep"));
    assertTrue(out.toString().contains("gaps                      2024-01-20 to 2024-01-21"));
    assertTrue(out.toString().contains("hard to believe           2024-02-09: a spike"));
    out.getBuffer().setLength(0);
    assertEquals(
        0,
        run(
            "winters",
            path.toString(),
            "--latitude",
            "48",
            "--suspect",
            "DROP",
            "--gaps",
            "join=2"));
    assertTrue(out.toString().contains("gaps                      none"), out.toString());
    assertTrue(out.toString().contains("hard to believe           none"), out.toString());
    assertTrue(err.toString().contains("doubts.csv, line 131 [IN-421]"), err.toString());
    assertEquals(2, run("winters", path.toString(), "--gaps", "join=8"));
    assertEquals(2, run("winters", path.toString(), "--zone", "Moon"));
    assertEquals(2, run("winters", path.toString(), "--encoding", "runes"));
  }

  private List<String> frostDates() {
    List<String> lines = out.toString().lines().toList();
    return lines.stream().dropWhile(line -> !line.startsWith("Frost dates")).toList();
  }

  @Test
  void badInputGivesThreeAndPrintsNothing() {
    assertEquals(3, run("winters", MEASURED.resolve("weather.csv").toString()));
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("error: "), err.toString());
    assertTrue(err.toString().contains("--unit"), err.toString());
    assertTrue(err.toString().contains("2 stations: \"New York\", \"Seattle\""), err.toString());
  }

  @Test
  void wrongUseGivesTwoAndSaysWhatIsRight() {
    assertEquals(2, measured("--from", "13-01"));
    assertEquals(2, measured("--from", "05-01", "--to", "08-01"));
    assertEquals(2, measured("--latitude", "67"));
    assertEquals(2, measured("--unit", "R"));
    assertEquals(2, run("winters"));
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("such as 10-01"), err.toString());
    assertTrue(err.toString().contains("begins on 1 July"), err.toString());
    assertTrue(err.toString().contains("-66 to 66"), err.toString());
    assertTrue(err.toString().contains("give C, F, K, tenths"), err.toString());
  }

  private int measured(String... options) {
    String[] args = new String[options.length + 4];
    args[0] = "winters";
    args[1] = MEASURED.resolve("weather.csv").toString();
    args[2] = "--unit";
    args[3] = "C";
    System.arraycopy(options, 0, args, 4, options.length);
    return run(args);
  }

  private int run(String... args) {
    return Hibernacle.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  private static List<CSVRecord> table(String text) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(text)).getRecords();
  }
}
