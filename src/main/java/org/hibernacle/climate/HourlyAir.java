package org.hibernacle.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.TemperatureSeries;

/**
 * The 24 hours of any day on file: as measured where the file has them, else by {@link DailyCurve}.
 * The Sun of one day of the calendar serves all years: it differs by a minute between them. Safe
 * for several threads.
 */
public final class HourlyAir {
  /** A leap year, so that every day of the calendar is in it. */
  private static final int SUN_YEAR = 2024;

  private final TemperatureSeries series;
  private final double latitudeDeg;
  private final Map<Integer, DayLength> sun = new ConcurrentHashMap<>();

  /**
   * The air of a file.
   *
   * @param series the file
   * @param latitudeDeg of the station, north positive, -66..66
   */
  public HourlyAir(TemperatureSeries series, double latitudeDeg) {
    this.series = series;
    this.latitudeDeg = latitudeDeg;
  }

  /** The file. */
  public TemperatureSeries series() {
    return series;
  }

  /** When the Sun is up on that day. */
  public DayLength sun(LocalDate day) {
    LocalDate sameDay = day.withYear(SUN_YEAR);
    return sun.computeIfAbsent(sameDay.getDayOfYear(), key -> DayLength.at(latitudeDeg, sameDay));
  }

  /**
   * Air temperature by hour, hour 0 first, °C. A neighbouring day that is not on file is taken to
   * be like the day itself.
   *
   * @param day on file; else {@link IllegalArgumentException}
   */
  public double[] on(LocalDate day) {
    List<Double> measured = series.hours().get(day);
    if (measured != null) {
      return measured.stream().mapToDouble(Double::doubleValue).toArray();
    }
    DailyExtremes today = series.days().get(day);
    if (today == null) {
      throw new IllegalArgumentException(day + " is not on file");
    }
    return DailyCurve.hours(
        curveDay(day.minusDays(1), today), curveDay(day, today), curveDay(day.plusDays(1), today));
  }

  private DailyCurve.Day curveDay(LocalDate day, DailyExtremes otherwise) {
    return new DailyCurve.Day(series.days().getOrDefault(day, otherwise), sun(day));
  }
}
