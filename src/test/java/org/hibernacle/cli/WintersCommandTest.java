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
        .forEach(day -> file.append(day).append(day.getMonthValue() == 7 ? ",-3,8\n" : ",5,15\n"));
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
    assertEquals(2, measured("--unit", "K"));
    assertEquals(2, run("winters"));
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("such as 10-01"), err.toString());
    assertTrue(err.toString().contains("begins on 1 July"), err.toString());
    assertTrue(err.toString().contains("-66 to 66"), err.toString());
    assertTrue(err.toString().contains("give C or F"), err.toString());
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
