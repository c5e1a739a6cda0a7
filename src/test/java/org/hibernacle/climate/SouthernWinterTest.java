package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/**
 * The same weather on both halves of the Earth: each day of a northern season from 1 July is laid
 * on the day of a southern season from 1 January that has the same number. Neither has a leap day,
 * so all counts, sums and dates must be the same.
 */
class SouthernWinterTest {
  private static final Season NORTH = new Season(2021, false);
  private static final Season SOUTH = new Season(2021, true);
  private static final double LATITUDE_DEG = 46;
  private static final long SEED = 20210701;

  @Test
  void measuredHoursGiveTheSameWinterToTheLastDigit() {
    WinterSummary north = only(weather(NORTH, true), LATITUDE_DEG);
    WinterSummary south = only(weather(SOUTH, true), -LATITUDE_DEG);
    assertSameFrosts(north, south);
    assertEquals(north.chillPortions(), south.chillPortions());
    assertEquals(north.chillingHours(), south.chillingHours());
    assertEquals(north.utahUnits(), south.utahUnits());
    assertEquals(north.growingDegreeHours(), south.growingDegreeHours());
  }

  /**
   * From daily extremes the Sun has its part: the Earth is nearest to it in January, and its
   * declination on day n of the two seasons differs by up to two days' worth. The sums differ by
   * less than 3 %.
   */
  @Test
  void dailyExtremesGiveTheSameWinterButForTheLengthOfDays() {
    WinterSummary north = only(weather(NORTH, false), LATITUDE_DEG);
    WinterSummary south = only(weather(SOUTH, false), -LATITUDE_DEG);
    assertSameFrosts(north, south);
    assertEquals(1, south.chillPortions() / north.chillPortions(), 0.03);
    assertEquals(1, south.chillingHours() / north.chillingHours(), 0.03);
    assertEquals(1, south.utahUnits() / north.utahUnits(), 0.03);
    assertEquals(1, south.growingDegreeHours() / north.growingDegreeHours(), 0.03);
  }

  @Test
  void theWinterCountsForPlanningOnBothHalves() {
    WinterSelection north = WinterSelection.of(weather(NORTH, false), false);
    WinterSelection south = WinterSelection.of(weather(SOUTH, false), true);
    assertEquals(List.of(new UsableWinter(NORTH, List.of())), north.winters());
    assertEquals(List.of(new UsableWinter(SOUTH, List.of())), south.winters());
    Winter here = Winter.of(NORTH, new HourlyAir(weather(NORTH, true), LATITUDE_DEG), 1.5);
    Winter there = Winter.of(SOUTH, new HourlyAir(weather(SOUTH, true), -LATITUDE_DEG), 1.5);
    assertEquals(here.days(), there.days());
    assertEquals(here.meanC(), there.meanC());
  }

  /** The longest night is the one at the solstice, and as long on both sides. */
  @Test
  void theShortestDayOfTheSouthIsInJune() {
    DayLength june = DayLength.at(-LATITUDE_DEG, LocalDate.of(2021, 6, 21));
    DayLength december = DayLength.at(LATITUDE_DEG, LocalDate.of(2021, 12, 21));
    assertEquals(december.lengthH(), june.lengthH(), 0.01);
    for (LocalDate day = SOUTH.start(); day.isBefore(SOUTH.endExclusive()); day = day.plusDays(1)) {
      double lengthH = DayLength.at(-LATITUDE_DEG, day).lengthH();
      assertTrue(lengthH >= june.lengthH() - 0.001, day.toString());
    }
  }

  private static void assertSameFrosts(WinterSummary north, WinterSummary south) {
    assertEquals(SOUTH, south.season());
    assertEquals(north.coldestNightC(), south.coldestNightC());
    assertEquals(NORTH.index(north.coldestNight()), SOUTH.index(south.coldestNight()));
    assertEquals(north.longestFrostRunDays(), south.longestFrostRunDays());
    for (int i = 0; i < WinterSummary.THRESHOLDS_C.size(); i++) {
      WinterSummary.Frosts here = north.frosts().get(i);
      WinterSummary.Frosts there = south.frosts().get(i);
      assertEquals(here.days(), there.days());
      assertEquals(here.first().map(NORTH::index), there.first().map(SOUTH::index));
      assertEquals(here.last().map(NORTH::index), there.last().map(SOUTH::index));
    }
    assertTrue(north.frosts().get(3).days() > 0, "seed " + SEED);
  }

  private static WinterSummary only(TemperatureSeries series, double latitudeDeg) {
    List<WinterSummary> winters = WinterSummaries.of(series, latitudeDeg);
    assertEquals(1, winters.size());
    return winters.get(0);
  }

  private static TemperatureSeries weather(Season season, boolean byTheHour) {
    SplittableRandom random = new SplittableRandom(SEED);
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    TreeMap<LocalDate, List<Double>> hours = new TreeMap<>();
    for (int i = 0; i < season.days(); i++) {
      double meanC = 9 - 11 * Math.cos(2 * Math.PI * (i - 198) / 365) + 8 * random.nextDouble() - 4;
      double halfK = 2 + 5 * random.nextDouble();
      days.put(season.day(i), new DailyExtremes(meanC - halfK, meanC + halfK));
      if (byTheHour) {
        List<Double> readings = new ArrayList<>();
        for (int h = 0; h < 24; h++) {
          readings.add(meanC - halfK * Math.cos(2 * Math.PI * (h - 3) / 24));
        }
        hours.put(season.day(i), readings);
      }
    }
    return new TemperatureSeries("somewhere", days, hours);
  }
}
