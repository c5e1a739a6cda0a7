package org.hibernacle;

import java.time.LocalDate;
import java.util.TreeMap;
import java.util.function.Function;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;

/** An invented winter at 50° N, from a rule for each day's extremes. */
public final class SomeWinter {
  public static final double LATITUDE_DEG = 50;
  public static final Season SEASON = new Season(2020, false);

  private SomeWinter() {}

  /** The season from 1 July, all of it on file. */
  public static Winter wholeYear(Function<LocalDate, DailyExtremes> rule) {
    return from(SEASON.start(), rule);
  }

  /** The season from that day on. */
  public static Winter from(LocalDate first, Function<LocalDate, DailyExtremes> rule) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (LocalDate day = first; day.isBefore(SEASON.endExclusive()); day = day.plusDays(1)) {
      days.put(day, rule.apply(day));
    }
    TemperatureSeries series = new TemperatureSeries("invented", days, new TreeMap<>());
    return Winter.of(SEASON, new HourlyAir(series, LATITUDE_DEG), 0);
  }

  /** Every night clear, -10 to 2 °C at a station, with a site that is colder by so much. */
  public static Winter coldClear(double siteColderByK) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    SEASON
        .start()
        .datesUntil(SEASON.endExclusive())
        .forEach(d -> days.put(d, new DailyExtremes(-10, 2)));
    TemperatureSeries series = new TemperatureSeries("invented", days, new TreeMap<>());
    return Winter.of(SEASON, new HourlyAir(series, LATITUDE_DEG), siteColderByK);
  }

  /** The same temperature at all hours. */
  public static DailyExtremes steady(double airC) {
    return new DailyExtremes(airC, airC);
  }

  /** Half of a yearly wave with its lowest in the middle of January, and a day's swing. */
  public static DailyExtremes wave(LocalDate day, double meanC, double swingK, double rangeK) {
    double turn = (day.getDayOfYear() - 15) / 365.0;
    double airC = meanC - swingK * Math.cos(2 * Math.PI * turn);
    return new DailyExtremes(airC - rangeK / 2, airC + rangeK / 2);
  }
}
