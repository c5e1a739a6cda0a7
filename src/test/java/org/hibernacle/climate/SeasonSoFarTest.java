package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/** Dates by the calendar: 2020 and 2024 are leap years. The extremes of each day tell its date. */
class SeasonSoFarTest {
  private static final Season OF_2019 = new Season(2019, false);
  private static final Season OF_2021 = new Season(2021, false);

  private static LocalDate day(String text) {
    return LocalDate.parse(text);
  }

  private static DailyExtremes extremes(LocalDate d) {
    double lowest = d.getYear() - 2000 + d.getDayOfYear() / 1000.0;
    return new DailyExtremes(lowest, lowest + 5);
  }

  /** Two whole seasons and what follows up to a day, without the days named. */
  private static TemperatureSeries file(String last, String... without) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    day("2019-07-01")
        .datesUntil(day(last).plusDays(1))
        .filter(d -> !List.of(without).contains(d.toString()))
        .forEach(d -> days.put(d, extremes(d)));
    return new TemperatureSeries("invented", days, new TreeMap<>());
  }

  @Test
  void historyAndForecastStandInThePlaceOfTheEarlierWinterAndItsOwnDaysFollow() {
    TemperatureSeries file = file("2021-11-14");
    SeasonSoFar soFar = SeasonSoFar.of(file, day("2021-11-10"), false);
    assertEquals(4, soFar.leadDays());
    assertEquals(0, soFar.missingDays());
    assertEquals(day("2021-11-14"), soFar.knownTo());
    TemperatureSeries joined = soFar.followedBy(file, OF_2019);
    assertEquals(extremes(day("2021-11-14")), joined.days().get(day("2019-11-14")));
    assertEquals(extremes(day("2019-11-15")), joined.days().get(day("2019-11-15")));
    long days = joined.days().subMap(OF_2019.start(), OF_2019.endExclusive()).size();
    assertEquals(366, days, "no day is left out at the join");
    assertEquals(day("2021-11-14"), soFar.measuredOn(OF_2019, day("2019-11-14")));
    assertEquals(day("2019-11-15"), soFar.measuredOn(OF_2019, day("2019-11-15")));
  }

  @Test
  void aLeapDayOfTheEarlierWinterHasTheWeatherOfThe28th() {
    SeasonSoFar soFar = SeasonSoFar.of(file("2022-03-10"), day("2022-03-10"), false);
    assertEquals(day("2022-02-28"), soFar.measuredOn(OF_2019, day("2020-02-29")));
    assertEquals(day("2022-03-01"), soFar.measuredOn(OF_2019, day("2020-03-01")));
  }

  @Test
  void shortGapsAreBridgedAndLongOnesStayOpenAndCounted() {
    SeasonSoFar bridged =
        SeasonSoFar.of(
            file("2021-11-10", "2021-10-04", "2021-10-05", "2021-10-06"), day("2021-11-10"), false);
    assertEquals(0, bridged.missingDays());
    SeasonSoFar open =
        SeasonSoFar.of(
            file("2021-11-10", "2021-10-04", "2021-10-05", "2021-10-06", "2021-10-07"),
            day("2021-11-10"),
            false);
    assertEquals(4, open.missingDays());
    assertEquals(day("2019-10-05"), open.measuredOn(OF_2019, day("2019-10-05")));
    assertEquals(day("2021-10-08"), open.measuredOn(OF_2019, day("2019-10-08")));
  }

  @Test
  void aForecastEndsAtItsFirstGapAndTheRestIsCounted() {
    SeasonSoFar soFar =
        SeasonSoFar.of(
            file("2021-11-20", "2021-11-13", "2021-11-14", "2021-11-15", "2021-11-16"),
            day("2021-11-10"),
            false);
    assertEquals(2, soFar.leadDays());
    assertEquals(4, soFar.forecastDropped());
    assertEquals(day("2019-11-18"), soFar.measuredOn(OF_2019, day("2019-11-18")));
  }

  @Test
  void withoutARowOfTheSeasonNothingIsKnown() {
    SeasonSoFar soFar = SeasonSoFar.of(file("2021-06-30"), day("2021-07-01"), false);
    assertEquals(OF_2021, soFar.season());
    assertEquals(0, soFar.leadDays());
    assertEquals(1, soFar.missingDays());
    assertEquals(day("2019-07-01"), soFar.measuredOn(OF_2019, day("2019-07-01")));
  }

  @Test
  void earlierSeasonsOfTheSouthAreOneYear() {
    SeasonSoFar soFar = SeasonSoFar.of(file("2021-05-12"), day("2021-05-10"), true);
    assertEquals(new Season(2021, true), soFar.season());
    assertEquals(2, soFar.leadDays());
    assertEquals(day("2021-05-12"), soFar.measuredOn(new Season(2020, true), day("2020-05-12")));
  }
}
