package org.hibernacle;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.climate.WinterSelection.LeftOut;
import org.hibernacle.climate.WinterSelection.Reason;
import org.hibernacle.climate.WinterSummaries;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.input.Problems;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.input.TemperatureUnit;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/** Measured days of New York and Seattle, 2012 to 2015; see noaa/README.md for where from. */
class MeasuredWintersTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "noaa");

  /** counts.csv is the work of counts.awk, which shares nothing with this program. */
  @Test
  void summariesEqualTheIndependentCounts() throws IOException {
    List<String> counted = new ArrayList<>();
    for (String city : List.of("Seattle", "New York")) {
      for (WinterSummary winter : winters(city)) {
        counted.add(city + "," + line(winter));
      }
    }
    List<String> expected = Files.readAllLines(FOLDER.resolve("counts.csv"), UTF_8);
    assertEquals(expected.subList(1, expected.size()), counted);
    assertEquals(10, counted.size());
  }

  /** Numbers known from outside this program. */
  @Test
  void theColdestNightsAndTheWholeCountsAreKnown() {
    assertEquals(List.of(294, 172, 100, 30), wholeCounts("New York"));
    assertEquals(List.of(88, 30, 4, 0), wholeCounts("Seattle"));
    WinterSummary newYork = winters("New York").get(2);
    assertEquals(-16.0, newYork.coldestNightC());
    assertEquals(LocalDate.of(2014, 1, 4), newYork.coldestNight());
    WinterSummary seattle = winters("Seattle").get(2);
    assertEquals(-7.1, seattle.coldestNightC());
    assertEquals(LocalDate.of(2013, 12, 7), seattle.coldestNight());
  }

  /** The file runs from January to December, so the first and the last winter are cut. */
  @Test
  void threeWholeWintersCanBePlannedWith() {
    WinterSelection selection = WinterSelection.of(series("New York"), false);
    assertEquals(
        List.of(2012, 2013, 2014),
        selection.winters().stream().map(winter -> winter.season().year()).toList());
    assertTrue(selection.winters().stream().allMatch(winter -> winter.bridged().isEmpty()));
    assertEquals(
        List.of(new Season(2011, false), new Season(2015, false)),
        selection.leftOut().stream().map(LeftOut::season).toList());
    assertEquals(
        List.of(Reason.FILE_STARTS_TOO_LATE, Reason.FILE_ENDS_TOO_EARLY),
        selection.leftOut().stream().map(LeftOut::reason).toList());
  }

  @Test
  void theMildCoastGathersMoreChillThanTheColdCity() {
    double newYork = winters("New York").get(2).chillPortions();
    double seattle = winters("Seattle").get(2).chillPortions();
    assertTrue(newYork > 50 && seattle > newYork, newYork + " " + seattle);
  }

  private static List<Integer> wholeCounts(String city) {
    List<WinterSummary> winters = winters(city);
    List<Integer> counts = new ArrayList<>();
    for (int i = 0; i < WinterSummary.THRESHOLDS_C.size(); i++) {
      int threshold = i;
      counts.add(winters.stream().mapToInt(w -> w.frosts().get(threshold).days()).sum());
    }
    return counts;
  }

  private static String line(WinterSummary winter) {
    StringBuilder line = new StringBuilder();
    line.append(winter.season().year()).append(',');
    line.append(String.format(Locale.ROOT, "%.1f", winter.coldestNightC())).append(',');
    line.append(winter.coldestNight());
    for (WinterSummary.Frosts frosts : winter.frosts()) {
      line.append(',').append(frosts.first().map(LocalDate::toString).orElse(""));
      line.append(',').append(frosts.last().map(LocalDate::toString).orElse(""));
      line.append(',').append(frosts.days());
    }
    return line.toString();
  }

  private static List<WinterSummary> winters(String city) {
    return WinterSummaries.of(series(city), city.equals("Seattle") ? 47.6 : 40.7);
  }

  private static TemperatureSeries series(String city) {
    TemperatureCsv.Options options =
        new TemperatureCsv.Options(
            Optional.of(city), Optional.of(TemperatureUnit.C), Optional.empty(), Optional.empty());
    return TemperatureCsv.read(List.of(FOLDER.resolve("weather.csv")), options, new Problems())
        .orElseThrow();
  }
}
