package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/**
 * The site's air against the station's. The rule is common practice, no source; what is checked is
 * what docs/models/air.md says of it.
 */
class WinterTest {
  private static final Season SEASON = new Season(2023, false);
  private static final LocalDate CLEAR = LocalDate.of(2024, 1, 15);
  private static final LocalDate DULL = LocalDate.of(2024, 1, 17);
  private static final double OFFSET_K = 1.5;

  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
  private final TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();

  @Test
  void onAClearDayTheLowestFallsByTheWholeOffsetAndTheHighestByNothing() {
    measured(CLEAR, -10, 2);
    double[] at = on(CLEAR, site(OFFSET_K));
    assertEquals(-10 - OFFSET_K, lowest(at), 1e-12);
    assertEquals(2, highest(at), 1e-12);
    double fiveElevenths = 5 / 11.0;
    assertEquals(2 - fiveElevenths * (12 + OFFSET_K), at[5], 1e-12, "part of the way down");
  }

  /** The limit itself belongs to the dull days. */
  @Test
  void onADayOfEightKelvinsOrLessNothingChanges() {
    measured(CLEAR, -6, 2);
    assertArrayEquals(on(CLEAR, site(0)), on(CLEAR, site(OFFSET_K)));
    measured(CLEAR, -6.1, 2);
    assertEquals(-6.1 - OFFSET_K, lowest(on(CLEAR, site(OFFSET_K))), 1e-12);
  }

  @Test
  void theDaysBesideAClearOneAreNotTouched() {
    measured(CLEAR, -10, 2);
    measured(CLEAR.minusDays(1), -4, 0);
    measured(CLEAR.plusDays(1), -4, 0);
    assertEquals(-4, lowest(on(CLEAR.minusDays(1), site(OFFSET_K))));
    assertEquals(-4, lowest(on(CLEAR.plusDays(1), site(OFFSET_K))));
  }

  /** The colder of two hours stays the colder one, and a larger offset never warms an hour. */
  @Test
  void theOffsetKeepsTheOrderOfTheHoursAndOnlyCools() {
    days.put(CLEAR, new DailyExtremes(-9.5, 3));
    days.put(CLEAR.plusDays(1), new DailyExtremes(-14, 1));
    for (LocalDate day : List.of(CLEAR, CLEAR.plusDays(1), DULL)) {
      double[] station = on(day, site(0));
      double[] before = station;
      for (double offsetK : new double[] {0.5, 1.5, 3, 6}) {
        double[] at = on(day, site(offsetK));
        for (int h = 0; h < 24; h++) {
          assertTrue(at[h] <= before[h], day + " hour " + h);
          assertTrue(at[h] >= station[h] - offsetK - 1e-12, day + " hour " + h);
          for (int other = 0; other < 24; other++) {
            assertTrue(station[h] >= station[other] || at[h] < at[other], day + " hour " + h);
          }
        }
        before = at;
      }
    }
  }

  /** An evening that falls below its own day's lowest, towards a colder morning. */
  @Test
  void whatLiesBelowTheLowestFallsByTheWholeOffsetToo() {
    days.put(CLEAR, new DailyExtremes(-1, 8));
    days.put(CLEAR.plusDays(1), new DailyExtremes(-15, -5));
    double[] station = on(CLEAR, site(0));
    assertTrue(station[23] < -1, "the evening is colder than the day's lowest: " + station[23]);
    assertEquals(station[23] - OFFSET_K, on(CLEAR, site(OFFSET_K))[23], 1e-12);
  }

  @Test
  void aLeapDayIsADayLikeAnother() {
    LocalDate leapDay = LocalDate.of(2024, 2, 29);
    measured(leapDay, -10, 2);
    Winter winter = site(0);
    assertEquals(366, winter.days());
    assertEquals(winter.index(LocalDate.of(2024, 2, 28)) + 1, winter.index(leapDay));
    assertEquals(winter.index(LocalDate.of(2024, 3, 1)) - 1, winter.index(leapDay));
    assertEquals(-10, lowest(on(leapDay, winter)));
  }

  @Test
  void aWinterIsNotBuiltOverAHole() {
    site(0);
    days.remove(LocalDate.of(2024, 2, 29));
    IllegalArgumentException hole =
        assertThrows(IllegalArgumentException.class, () -> winter(OFFSET_K));
    assertTrue(hole.getMessage().contains("2024-02-29"), hole.getMessage());
  }

  /** A day measured by the hour: down in even steps to the lowest at 11 and up again. */
  private void measured(LocalDate day, double lowestC, double highestC) {
    List<Double> readings = new ArrayList<>();
    for (int h = 0; h < 24; h++) {
      int down = h < 12 ? h + 1 : 24 - h;
      readings.add(highestC + (lowestC - highestC) * (down - 1) / 11.0);
    }
    hours.put(day, readings);
    days.put(day, new DailyExtremes(lowestC, highestC));
  }

  private Winter site(double offsetK) {
    SEASON
        .start()
        .datesUntil(SEASON.endExclusive())
        .forEach(day -> days.putIfAbsent(day, new DailyExtremes(-2, 4)));
    return winter(offsetK);
  }

  private Winter winter(double offsetK) {
    return Winter.of(
        SEASON, new HourlyAir(new TemperatureSeries("somewhere", days, hours), 48), offsetK);
  }

  private static double[] on(LocalDate day, Winter winter) {
    int from = 24 * winter.index(day);
    return Arrays.copyOfRange(winter.airC(), from, from + 24);
  }

  private static double lowest(double[] airC) {
    return Arrays.stream(airC).min().orElseThrow();
  }

  private static double highest(double[] airC) {
    return Arrays.stream(airC).max().orElseThrow();
  }
}
