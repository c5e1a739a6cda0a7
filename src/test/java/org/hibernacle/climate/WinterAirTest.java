package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/** The site's air by hand: which days it has, and what a clear night takes off. */
class WinterAirTest {
  private static final Season SEASON = new Season(2020, false);
  private static final LocalDate CORE = LocalDate.of(2020, 10, 1);
  private static final LocalDate DAY = LocalDate.of(2020, 12, 5);
  private static final double OFFSET_K = 2;

  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
  private final TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();
  private final TreeMap<LocalDate, Double> snowCm = new TreeMap<>();

  @Test
  void aClearNightTakesAllOfTheOffsetOffTheMinimumAndNothingOffTheMaximum() {
    fill("2020-10-01", "2021-05-01");
    measured(DAY, -6, 4, 4 + 10.0 / 22);
    Winter winter = winter(OFFSET_K);
    for (int h = 0; h < 23; h++) {
      double belowMaximumK = 10 - 10.0 * h / 22;
      double colderK = OFFSET_K * belowMaximumK / 10;
      assertEquals(colderK, at(winter, winter.colderK(), h), 1e-12, "hour " + h);
      assertEquals(-6 + 10.0 * h / 22 - colderK, at(winter, winter.airC(), h), 1e-12, "hour " + h);
    }
    assertEquals(-8, at(winter, winter.airC(), 0), 1e-12);
    assertEquals(4, at(winter, winter.airC(), 22), 1e-12);
  }

  /** A reading above the day's maximum is not warmed, one below its minimum takes no more. */
  @Test
  void readingsBeyondTheExtremesStayWithinTheOffset() {
    fill("2020-10-01", "2021-05-01");
    measured(DAY, -6, 4, 4 + 10.0 / 22);
    days.put(DAY, new DailyExtremes(-5, 4));
    Winter winter = winter(OFFSET_K);
    assertEquals(OFFSET_K, at(winter, winter.colderK(), 0));
    assertEquals(0, at(winter, winter.colderK(), 23));
    assertEquals(4 + 10.0 / 22, at(winter, winter.airC(), 23), 1e-12);
  }

  @Test
  void aRangeOfEightIsNotYetClear() {
    fill("2020-10-01", "2021-05-01");
    days.put(DAY, new DailyExtremes(-4, 4));
    days.put(DAY.plusDays(1), new DailyExtremes(-4, 4.1));
    Winter winter = winter(OFFSET_K);
    assertEquals(
        0, IntStream.range(0, 24).mapToDouble(h -> colder(winter, DAY, h)).max().orElse(9));
    assertTrue(colder(winter, DAY.plusDays(1), 7) > 1);
  }

  @Test
  void withoutOffsetTheAirIsTheStations() {
    fill("2020-10-01", "2021-05-01");
    days.put(DAY, new DailyExtremes(-14, 4));
    HourlyAir air = new HourlyAir(series(), 50);
    Winter winter = winter(0);
    int from = 24 * winter.index(DAY);
    assertArrayEquals(air.on(DAY), Arrays.copyOfRange(winter.airC(), from, from + 24));
  }

  @Test
  void itBeginsWhereTheFileRunsWithoutAGapAndEndsThere() {
    fill("2020-10-01", "2021-05-01");
    Winter core = winter(0);
    assertEquals(CORE, core.first());
    assertEquals(212, core.days(), "1 October to 30 April: 31+30+31+31+28+31+30");
    assertEquals(211, core.nights());
    fill("2020-09-20", "2021-05-11");
    fill("2020-08-01", "2020-09-19");
    fill("2021-05-12", "2021-06-30");
    Winter longer = winter(0);
    assertEquals(LocalDate.of(2020, 9, 20), longer.first());
    assertEquals(212 + 11 + 10, longer.days());
    assertEquals(24 * longer.days(), longer.airC().length);
    assertEquals(24 * longer.days(), longer.colderK().length);
    assertEquals(longer.days(), longer.snowCm().length);
  }

  @Test
  void itNeverLeavesItsSeason() {
    fill("2019-01-01", "2022-12-31");
    Winter winter = winter(0);
    assertEquals(LocalDate.of(2020, 7, 1), winter.first());
    assertEquals(365, winter.days());
    assertEquals(SEASON, winter.season());
  }

  @Test
  void aMissingCoreDayIsNamed() {
    fill("2020-10-01", "2021-05-01");
    days.remove(LocalDate.of(2021, 4, 30));
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> winter(0));
    assertEquals("winter 2020/21 lacks 2021-04-30", e.getMessage());
  }

  @Test
  void daysAreCountedFromTheFirst() {
    fill("2020-10-01", "2021-05-01");
    Winter winter = winter(0);
    assertEquals(0, winter.index(CORE));
    assertEquals(31, winter.index(LocalDate.of(2020, 11, 1)));
    assertEquals(-1, winter.index(LocalDate.of(2020, 9, 30)));
  }

  /** At 50° N: the sunrise equation with the declinations of these days, -22.4° and 0°. */
  @Test
  void everyDayHasItsOwnLengthAndSnow() {
    fill("2020-10-01", "2021-05-01");
    snowCm.put(DAY, 12.5);
    Winter winter = winter(0);
    assertEquals(8.29, winter.dayLengthH()[winter.index(DAY)], 0.05);
    assertEquals(12.17, winter.dayLengthH()[winter.index(LocalDate.of(2021, 3, 20))], 0.05);
    assertEquals(12.5, winter.snowCm()[winter.index(DAY)]);
    assertEquals(0, winter.snowCm()[winter.index(DAY) + 1]);
  }

  /** Steady air of 3 °C but for one day of -7: 3 - 10 / 212. */
  @Test
  void theMeanIsThatOfAllHours() {
    fill("2020-10-01", "2021-05-01");
    days.replaceAll((day, any) -> new DailyExtremes(3, 3));
    hours.put(DAY, IntStream.range(0, 24).mapToObj(h -> -7.0).toList());
    assertEquals(3 - 10.0 / 212, winter(0).meanC(), 1e-9);
  }

  private double colder(Winter winter, LocalDate day, int hour) {
    return winter.colderK()[24 * winter.index(day) + hour];
  }

  private double at(Winter winter, double[] byHour, int hour) {
    return byHour[24 * winter.index(DAY) + hour];
  }

  /** Readings that rise evenly from the minimum at midnight to {@code lastC} at 23 h. */
  private void measured(LocalDate day, double minC, double maxC, double lastC) {
    days.put(day, new DailyExtremes(minC, maxC));
    hours.put(day, IntStream.range(0, 24).mapToObj(h -> minC + (lastC - minC) * h / 23).toList());
  }

  private void fill(String fromInclusive, String toExclusive) {
    LocalDate.parse(fromInclusive)
        .datesUntil(LocalDate.parse(toExclusive))
        .forEach(day -> days.putIfAbsent(day, new DailyExtremes(-1, 5)));
  }

  private Winter winter(double siteColderByK) {
    return Winter.of(SEASON, new HourlyAir(series(), 50), siteColderByK);
  }

  private TemperatureSeries series() {
    return new TemperatureSeries("somewhere", days, hours, snowCm);
  }
}
