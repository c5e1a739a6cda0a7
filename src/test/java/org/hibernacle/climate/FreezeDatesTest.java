package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.climate.FreezeDates.Basis;
import org.hibernacle.climate.FreezeDates.ByChance;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

class FreezeDatesTest {
  /** Ten first frosts as days of an ordinary year; checks/SOURCES.md, freeze_date_quantiles.csv. */
  private static final List<Integer> CHECKED =
      List.of(288, 293, 297, 299, 302, 304, 305, 309, 311, 318);

  private static final double NORTH_DEG = 48;
  private static final double SOUTH_DEG = -38;

  private final TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();

  /** R's 288.5, 303 and 317.3 for 10, 50 and 90 %: 15.5 October, 30 October, 13.3 November. */
  @Test
  void tenWintersGiveTheDatesOfTheChecks() {
    tenAutumns();
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    assertEquals(10, dates.winters());
    assertEquals(10, dates.withFrost());
    assertOn("--10-15", dates.first().early());
    assertOn("--10-30", dates.first().typical());
    assertOn("--11-13", dates.first().late());
  }

  /** R's 290.5, 303 and 314.5 by Hazen. */
  @Test
  void hazenDrawsTheDatesTogether() {
    tenAutumns();
    FreezeDates dates = atZero(PlottingPosition.HAZEN);
    assertOn("--10-17", dates.first().early());
    assertOn("--10-30", dates.first().typical());
    assertOn("--11-10", dates.first().late());
  }

  /** Last frosts that lie as the checked days do, counted back from 1 July. */
  @Test
  void lastFrostsAreRoundedToTheLaterDay() {
    for (int i = 0; i < CHECKED.size(); i++) {
      wholeSeason(new Season(2001 + i, false));
      frost(LocalDate.of(2002 + i, 7, 1).minusDays(CHECKED.get(i) - 200));
    }
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    LocalDate july = LocalDate.of(2003, 7, 1);
    assertOn(MonthDay.from(july.minusDays(88)).toString(), dates.last().late());
    assertOn(MonthDay.from(july.minusDays(103)).toString(), dates.last().typical());
    assertOn(MonthDay.from(july.minusDays(117)).toString(), dates.last().early());
  }

  @Test
  void nineWintersTellTheMiddleAndNotATenth() {
    tenAutumns();
    days.tailMap(LocalDate.of(2010, 7, 1), true).clear();
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    assertEquals(9, dates.winters());
    assertEquals(Basis.TOO_FEW_WINTERS, dates.first().early().basis());
    assertOn("--10-29", dates.first().typical());
    assertEquals(Basis.TOO_FEW_WINTERS, dates.first().late().basis());
    assertEquals(Basis.ON_FILE, atZero(PlottingPosition.HAZEN).first().early().basis());
  }

  /** Seen in the checks too: with the event in 10 of 12 seasons there is no 90 % date. */
  @Test
  void wintersWithoutTheFrostPutDatesOffAndAwayAtLast() {
    tenAutumns();
    wholeSeason(new Season(2011, false));
    wholeSeason(new Season(2012, false));
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    assertEquals(12, dates.winters());
    assertEquals(10, dates.withFrost());
    assertOn("--10-16", dates.first().early());
    assertOn("--10-31", dates.first().typical());
    assertEquals(new ByChance(Basis.NONE_BY_THAT_CHANCE, Optional.empty()), dates.first().late());
    assertEquals(Basis.NONE_BY_THAT_CHANCE, dates.last().early().basis());
    assertEquals(Basis.ON_FILE, dates.last().late().basis());
  }

  @Test
  void aMissingDayBeforeTheFirstFrostMayHideAnEarlierOne() {
    tenAutumns();
    days.remove(LocalDate.of(2005, 10, 20));
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    assertEquals(9, dates.winters());
    assertEquals(9, dates.withFrost());
  }

  @Test
  void aMissingDayAfterTheLastFrostMayHideALaterOneAndOneInHighSummerNone() {
    tenAutumns();
    days.remove(LocalDate.of(2006, 6, 15));
    days.remove(LocalDate.of(2006, 7, 15));
    assertEquals(10, atZero(PlottingPosition.WEIBULL).winters());
    days.remove(LocalDate.of(2006, 5, 31));
    assertEquals(9, atZero(PlottingPosition.WEIBULL).winters());
  }

  @Test
  void aMissingDayBetweenTheTwoHidesNeither() {
    tenAutumns();
    frost(LocalDate.of(2006, 3, 1));
    days.remove(LocalDate.of(2006, 1, 15));
    assertEquals(10, atZero(PlottingPosition.WEIBULL).winters());
    assertEquals(9, dates(PlottingPosition.WEIBULL, NORTH_DEG).get(3).winters(), "-10 °C");
  }

  @Test
  void aFileOfTheColdMonthsAloneTellsNothing() {
    tenAutumns();
    days.keySet().removeIf(day -> day.getMonthValue() >= 5 && day.getMonthValue() <= 9);
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    assertEquals(0, dates.winters());
    assertEquals(Basis.NONE_BY_THAT_CHANCE, dates.first().typical().basis());
  }

  /**
   * The same weather half a year later, counted from the start of each season. Leap days fall
   * before the autumn there, after it here, so one day's difference is right.
   */
  @Test
  void southOfTheEquatorTheDatesAreMirrored() {
    tenAutumns();
    FreezeDates north = atZero(PlottingPosition.WEIBULL);
    TreeMap<LocalDate, DailyExtremes> mirrored = new TreeMap<>();
    days.forEach(
        (day, extremes) -> {
          Season season = Season.containing(day, false);
          Season south = new Season(season.year(), true);
          if (season.index(day) < south.days()) {
            mirrored.put(south.day(season.index(day)), extremes);
          }
        });
    for (int year = 2001; year <= 2010; year++) {
      mirrored.putIfAbsent(LocalDate.of(year, 12, 31), new DailyExtremes(10, 15));
    }
    days.clear();
    days.putAll(mirrored);
    FreezeDates south = dates(PlottingPosition.WEIBULL, SOUTH_DEG).get(0);
    assertEquals(north.winters(), south.winters());
    assertEquals(north.withFrost(), south.withFrost());
    assertEquals(daysIn(north.first().early()), daysIn(south.first().early()), 1);
    assertEquals(daysIn(north.first().typical()), daysIn(south.first().typical()), 1);
    assertEquals(daysIn(north.first().late()), daysIn(south.first().late()), 1);
  }

  /** Days from the start of the season: 1 July, or 1 January before that. */
  private static int daysIn(ByChance date) {
    LocalDate day = date.day().orElseThrow().atYear(2001);
    return Season.containing(day, day.getMonthValue() < 7).index(day);
  }

  /** One frost on 29 February moves no date of the other winters. */
  @Test
  void aLeapDayIsADayOfItsOwn() {
    for (int year = 2001; year <= 2012; year++) {
      wholeSeason(new Season(year, false));
      frost(year == 2003 ? LocalDate.of(2004, 2, 29) : LocalDate.of(year + 1, 2, 28));
    }
    FreezeDates dates = atZero(PlottingPosition.WEIBULL);
    assertOn("--02-28", dates.first().typical());
    assertOn("--02-28", dates.last().typical());
    assertOn("--02-29", dates.last().late());
  }

  private void tenAutumns() {
    for (int i = 0; i < CHECKED.size(); i++) {
      wholeSeason(new Season(2001 + i, false));
      LocalDate ordinary = LocalDate.ofYearDay(2001, CHECKED.get(i));
      frost(ordinary.withYear(2001 + i));
    }
  }

  private void wholeSeason(Season season) {
    season
        .start()
        .datesUntil(season.endExclusive())
        .forEach(day -> days.put(day, new DailyExtremes(10, 15)));
  }

  private void frost(LocalDate day) {
    days.put(day, new DailyExtremes(0, 5));
  }

  private FreezeDates atZero(PlottingPosition position) {
    return dates(position, NORTH_DEG).get(0);
  }

  private List<FreezeDates> dates(PlottingPosition position, double latitudeDeg) {
    TemperatureSeries series = new TemperatureSeries("somewhere", days, new TreeMap<>());
    return FreezeDates.of(WinterSummaries.of(series, latitudeDeg), series, position);
  }

  private static void assertOn(String monthDay, ByChance date) {
    assertEquals(new ByChance(Basis.ON_FILE, Optional.of(MonthDay.parse(monthDay))), date);
  }
}
