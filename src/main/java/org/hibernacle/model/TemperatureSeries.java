package org.hibernacle.model;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Air temperature of one station by day. A day that the file lacks is absent here.
 *
 * @param station name of the station or of the file
 * @param days extremes by date
 * @param hours the 24 readings of a day, °C, hour 0 first, for days that have them all; empty for a
 *     daily file
 * @param snowCm depth of snow on the ground, cm, of days on file that have a figure for it; empty
 *     for a file without snow
 */
public record TemperatureSeries(
    String station,
    NavigableMap<LocalDate, DailyExtremes> days,
    NavigableMap<LocalDate, List<Double>> hours,
    NavigableMap<LocalDate, Double> snowCm) {
  public TemperatureSeries {
    days = Collections.unmodifiableNavigableMap(new TreeMap<>(days));
    hours = Collections.unmodifiableNavigableMap(new TreeMap<>(hours));
    snowCm = Collections.unmodifiableNavigableMap(new TreeMap<>(snowCm));
    if (days.isEmpty()) {
      throw new IllegalArgumentException("a series needs at least one day");
    }
    hours.forEach(
        (day, readings) -> {
          if (readings.size() != 24) {
            throw new IllegalArgumentException(day + " has " + readings.size() + " hours, not 24");
          }
        });
  }

  /** A series without snow. */
  public TemperatureSeries(
      String station,
      NavigableMap<LocalDate, DailyExtremes> days,
      NavigableMap<LocalDate, List<Double>> hours) {
    this(station, days, hours, Collections.emptyNavigableMap());
  }
}
