package org.hibernacle.climate;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.TemperatureSeries;

/**
 * The 24 hours of any day on file: as measured where the file has them, else by {@link DailyCurve}.
 *
 * @param series the file
 * @param latitudeDeg of the station, north positive, -66..66
 */
public record HourlyAir(TemperatureSeries series, double latitudeDeg) {

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
    DailyExtremes yesterday = series.days().getOrDefault(day.minusDays(1), today);
    DailyExtremes tomorrow = series.days().getOrDefault(day.plusDays(1), today);
    return DailyCurve.hours(yesterday, today, tomorrow, DayLength.at(latitudeDeg, day));
  }
}
