package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Gaps;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/** Ties, the equator, the leap day, bridges of either extreme. */
class ClimateEdgesTest {
  private static final LocalDate DAY = LocalDate.of(2021, 1, 10);

  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();

  @Test
  void ofEquallyColdNightsTheFirstIsNamed() {
    days.put(DAY, new DailyExtremes(-3, 2));
    days.put(DAY.plusDays(1), new DailyExtremes(-9, 2));
    days.put(DAY.plusDays(2), new DailyExtremes(-9, 2));
    assertEquals(DAY.plusDays(1), WinterSummaries.of(series(), 50).get(0).coldestNight());
  }

  /** On the equator seasons begin as in the north: 10 January 2021 is in the season 2020/21. */
  @Test
  void theEquatorCountsAsNorth() {
    days.put(DAY, new DailyExtremes(20, 30));
    WinterSummary winter = WinterSummaries.of(series(), 0).get(0);
    assertEquals(new Season(2020, false), winter.season());
    assertEquals(LocalDate.of(2020, 7, 1), winter.window().fromInclusive());
  }

  @Test
  void aWindowThatWouldEndBeforeItBeginsFitsNowhereNotEvenOnTheLeapDay() {
    DayWindow backwards = new DayWindow(MonthDay.of(2, 29), MonthDay.of(2, 28));
    assertFalse(backwards.fits(false));
    assertFalse(backwards.fits(true));
    DayWindow oneDay = new DayWindow(MonthDay.of(2, 29), MonthDay.of(2, 29));
    assertTrue(oneDay.fits(false) && oneDay.fits(true));
  }

  /** From -8/2 to 4/10 over two missing days: thirds of 12 K and of 8 K. */
  @Test
  void bothExtremesAreBridgedEachByItsOwnLine() {
    days.put(DAY, new DailyExtremes(-8, 2));
    days.put(DAY.plusDays(3), new DailyExtremes(4, 10));
    Gaps.bridge(days, new DateSpan(DAY.plusDays(1), DAY.plusDays(3)));
    assertEquals(
        List.of(-8.0, -4.0, 0.0, 4.0),
        days.values().stream().map(DailyExtremes::minC).map(ClimateEdgesTest::round).toList());
    assertEquals(
        List.of(2.0, 2 + 8 / 3.0, 2 + 16 / 3.0, 10.0).stream()
            .map(ClimateEdgesTest::round)
            .toList(),
        days.values().stream().map(DailyExtremes::maxC).map(ClimateEdgesTest::round).toList());
  }

  private static double round(double valueC) {
    return Math.round(valueC * 1e9) / 1e9;
  }

  private TemperatureSeries series() {
    return new TemperatureSeries("somewhere", days, new TreeMap<>());
  }
}
