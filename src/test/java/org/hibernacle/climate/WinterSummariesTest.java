package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

class WinterSummariesTest {
  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();

  /**
   * Extremes by formula, 183 days from 1 October at 50°; the sums were made elsewhere with
   * Linvill's curve and the R package chillR 0.77. Another night curve may differ by 3 %.
   */
  @Test
  void chillAndWarmthFromDailyExtremesAgreeWithAnIndependentRun() {
    for (int d = 0; d < 183; d++) {
      double meanC =
          8 + 9 * Math.cos(2 * Math.PI * (d + 73) / 365) + 3 * Math.sin(2 * Math.PI * d / 9.7);
      double halfK = 4 + 1.5 * Math.cos(d);
      days.put(
          LocalDate.of(2022, 10, 1).plusDays(d), new DailyExtremes(meanC - halfK, meanC + halfK));
    }
    WinterSummary whole = only(50, DayWindow.wholeSeason(false));
    assertEquals(2065, whole.chillingHours(), 0.03 * 2065);
    assertEquals(1827.5, whole.utahUnits(), 0.03 * 1827.5);
    assertEquals(117.346655, whole.chillPortions(), 0.03 * 117.3);
    assertEquals(3342.698, whole.growingDegreeHours(), 0.03 * 3342.698);
    WinterSummary middle = only(50, new DayWindow(MonthDay.of(10, 2), MonthDay.of(3, 31)));
    assertEquals(2049, middle.chillingHours(), 0.03 * 2049);
    assertEquals(1807, middle.utahUnits(), 0.03 * 1807);
    assertEquals(116.6493, middle.chillPortions(), 0.03 * 116.6);
    assertEquals(3203.109, middle.growingDegreeHours(), 0.03 * 3203.109);
    assertEquals(0, middle.windowMissingDays());
    assertEquals(365 - 183, whole.windowMissingDays());
  }

  @Test
  void thresholdsIncludeTheirOwnValue() {
    put("2021-01-01", 0);
    put("2021-01-02", 0.1);
    put("2021-01-03", -2.2);
    put("2021-01-04", -2.1);
    put("2021-01-05", -10);
    put("2021-01-06", 3);
    WinterSummary winter = only(50, DayWindow.wholeSeason(false));
    assertEquals(
        List.of(4, 2, 1, 1), winter.frosts().stream().map(WinterSummary.Frosts::days).toList());
    assertEquals(Optional.of(LocalDate.parse("2021-01-03")), winter.frosts().get(1).first());
    assertEquals(Optional.of(LocalDate.parse("2021-01-05")), winter.frosts().get(1).last());
    assertEquals(-10, winter.coldestNightC());
    assertEquals(LocalDate.parse("2021-01-05"), winter.coldestNight());
    assertEquals(6, winter.daysOnFile());
    assertEquals(359, winter.missingDays());
  }

  /** 28 °F is -2.22 °C and counts at -2.2 °C; 32 °F is exactly 0 °C. */
  @Test
  void degreesFahrenheitAreComparedBeforeRounding() {
    put("2021-01-01", (28 - 32) * 5 / 9.0);
    put("2021-01-02", (32 - 32) * 5 / 9.0);
    WinterSummary winter = only(50, DayWindow.wholeSeason(false));
    assertEquals(2, winter.frosts().get(0).days());
    assertEquals(1, winter.frosts().get(1).days());
  }

  @Test
  void aMissingDayEndsARunOfFrost() {
    for (int d = 1; d <= 9; d++) {
      put("2021-01-0" + d, -1);
    }
    days.remove(LocalDate.parse("2021-01-04"));
    put("2021-01-08", 0);
    assertEquals(3, only(50, DayWindow.wholeSeason(false)).longestFrostRunDays());
  }

  @Test
  void measuredHoursAreUsedBeforeTheCurve() {
    put("2021-01-01", 1);
    LocalDate day = LocalDate.parse("2021-01-01");
    TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();
    hours.put(day, Collections.nCopies(24, 14.5));
    TemperatureSeries series = new TemperatureSeries("somewhere", days, hours);
    assertArrayEquals(
        Collections.nCopies(24, 14.5).stream().mapToDouble(Double::doubleValue).toArray(),
        new HourlyAir(series, 50).on(day));
    WinterSummary winter = WinterSummaries.of(series, 50).get(0);
    assertEquals(24 * 10.5, winter.growingDegreeHours(), 1e-9);
    assertEquals(0, winter.chillingHours());
    assertThrows(
        IllegalArgumentException.class, () -> new HourlyAir(series, 50).on(day.plusDays(1)));
  }

  @Test
  void aSouthernFileIsCutAtNewYear() {
    put("2020-12-31", 12);
    put("2021-01-01", 14);
    List<WinterSummary> winters = WinterSummaries.of(series(), -37);
    assertEquals(
        List.of(new Season(2020, true), new Season(2021, true)),
        winters.stream().map(WinterSummary::season).toList());
    assertEquals(1, WinterSummaries.of(series(), 37).size());
  }

  @Test
  void aWindowMustLieInOnePieceInTheSeason() {
    DayWindow winterOfTheNorth = new DayWindow(MonthDay.of(10, 1), MonthDay.of(3, 31));
    assertTrue(winterOfTheNorth.fits(false));
    assertFalse(winterOfTheNorth.fits(true));
    DayWindow winterOfTheSouth = new DayWindow(MonthDay.of(4, 1), MonthDay.of(9, 30));
    assertTrue(winterOfTheSouth.fits(true));
    assertFalse(winterOfTheSouth.fits(false));
  }

  @Test
  void aWindowThatEndsOnTheLeapDayEndsOnTheTwentyEighthInOtherYears() {
    DayWindow window = new DayWindow(MonthDay.of(11, 1), MonthDay.of(2, 29));
    assertEquals(
        new DateSpan(LocalDate.parse("2020-11-01"), LocalDate.parse("2021-03-01")),
        window.in(new Season(2020, false)));
    assertEquals(
        new DateSpan(LocalDate.parse("2023-11-01"), LocalDate.parse("2024-03-01")),
        window.in(new Season(2023, false)));
  }

  private void put(String day, double minC) {
    days.put(LocalDate.parse(day), new DailyExtremes(minC, minC + 5));
  }

  private TemperatureSeries series() {
    return new TemperatureSeries("somewhere", days, new TreeMap<>());
  }

  private WinterSummary only(double latitudeDeg, DayWindow window) {
    List<WinterSummary> winters = WinterSummaries.of(series(), latitudeDeg, window);
    assertEquals(1, winters.size());
    return winters.get(0);
  }
}
