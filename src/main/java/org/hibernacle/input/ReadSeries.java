package org.hibernacle.input;

import java.time.LocalDate;
import java.util.List;
import java.util.NavigableMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.TemperatureSeries;

/**
 * What all files say together, before anybody asks whether it can be true.
 *
 * @param station its name
 * @param days extremes by date
 * @param hours the 24 readings of days that have them, °C
 * @param snowCm depth of snow, cm
 * @param origins where each day was read first
 */
record ReadSeries(
    String station,
    NavigableMap<LocalDate, DailyExtremes> days,
    NavigableMap<LocalDate, List<Double>> hours,
    NavigableMap<LocalDate, Double> snowCm,
    NavigableMap<LocalDate, Origin> origins) {

  /** Where a day was read; where the days around it were if it was not. */
  Phrase where(LocalDate day) {
    var entry = origins.floorEntry(day);
    return (entry == null ? origins.firstEntry() : entry).getValue().where();
  }

  /** Leaves a day out. */
  void drop(LocalDate day) {
    days.remove(day);
    hours.remove(day);
  }

  TemperatureSeries series() {
    return new TemperatureSeries(station, days, hours, snowCm);
  }
}
