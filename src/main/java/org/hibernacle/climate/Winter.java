package org.hibernacle.climate;

import java.time.LocalDate;
import java.util.NavigableMap;
import java.util.Objects;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;

/**
 * The air at the site, hour by hour, over the days of one season that are on file without a gap
 * around its core months.
 *
 * <p>The file's air is a station's air. On clear nights, taken as days with a range over {@value
 * #CLEAR_DAY_RANGE_K} K, an open bench is colder: each hour is lowered by the site's offset times
 * how far it lies below the day's maximum, so the minimum by all of it and the maximum by nothing.
 * The rule and its default are common practice, no source.
 */
public final class Winter {
  /** Daily range above which a night counts as clear, K. */
  static final double CLEAR_DAY_RANGE_K = 8;

  private final Season season;
  private final LocalDate first;
  private final double[] airC;
  private final double[] colderK;
  private final double[] dayLengthH;
  private final double[] snowCm;
  private final double[] stationMinC;

  private Winter(
      Season season,
      LocalDate first,
      double[] airC,
      double[] colderK,
      double[] dayLengthH,
      double[] snowCm) {
    this.season = season;
    this.first = first;
    this.airC = airC;
    this.colderK = colderK;
    this.dayLengthH = dayLengthH;
    this.snowCm = snowCm;
    stationMinC = new double[nights()];
    for (int night = 0; night < stationMinC.length; night++) {
      double lowest = Double.POSITIVE_INFINITY;
      for (int hour = 24 * night + 12; hour < 24 * night + 36; hour++) {
        lowest = Math.min(lowest, airC[hour] + colderK[hour]);
      }
      stationMinC[night] = lowest;
    }
  }

  /**
   * Builds the site's air.
   *
   * @param season which
   * @param air of a file with every day of the season's core months
   * @param siteColderByK offset on clear nights, K (0..10)
   * @throws IllegalArgumentException if a day of the core months is missing
   */
  public static Winter of(Season season, HourlyAir air, double siteColderByK) {
    NavigableMap<LocalDate, DailyExtremes> days = air.series().days();
    LocalDate first = season.coreStart();
    while (first.isAfter(season.start()) && days.containsKey(first.minusDays(1))) {
      first = first.minusDays(1);
    }
    LocalDate end = season.coreStart();
    while (end.isBefore(season.endExclusive()) && days.containsKey(end)) {
      end = end.plusDays(1);
    }
    if (end.isBefore(season.coreEndExclusive())) {
      throw new IllegalArgumentException("winter " + season + " lacks " + end);
    }
    int count = (int) (end.toEpochDay() - first.toEpochDay());
    double[] airC = new double[24 * count];
    double[] colderK = new double[24 * count];
    double[] dayLengthH = new double[count];
    double[] snowCm = new double[count];
    for (int i = 0; i < count; i++) {
      LocalDate day = first.plusDays(i);
      DailyExtremes today = Objects.requireNonNull(days.get(day));
      snowCm[i] = air.series().snowCm().getOrDefault(day, 0.0);
      dayLengthH[i] = air.sun(day).lengthH();
      double[] hours = air.on(day);
      double offsetK = today.rangeK() > CLEAR_DAY_RANGE_K ? siteColderByK : 0;
      for (int h = 0; h < 24; h++) {
        double below = Math.max(0, today.maxC() - hours[h]) / Math.max(0.1, today.rangeK());
        colderK[24 * i + h] = offsetK * Math.min(1, below);
        airC[24 * i + h] = hours[h] - colderK[24 * i + h];
      }
    }
    return new Winter(season, first, airC, colderK, dayLengthH, snowCm);
  }

  /** Which season. */
  public Season season() {
    return season;
  }

  /** First day with air; hour 0 of the arrays is its midnight. */
  public LocalDate first() {
    return first;
  }

  /** Days with air. */
  public int days() {
    return dayLengthH.length;
  }

  /**
   * Nights with air, counted from noon to noon: night {@code k} begins at noon of day {@code k}.
   */
  public int nights() {
    return days() - 1;
  }

  /** Days since {@link #first}; may be negative or beyond the end. */
  public int index(LocalDate day) {
    return (int) (day.toEpochDay() - first.toEpochDay());
  }

  /** Air at the site, °C, 24 values a day; not to be changed by callers. */
  public double[] airC() {
    return airC;
  }

  /**
   * By how much the site's air is colder than the station's, K (>= 0), 24 values a day; not to be
   * changed by callers.
   */
  public double[] colderK() {
    return colderK;
  }

  /** Lowest air of a night at the station of the file, °C: what a forecast would have said. */
  public double stationMinC(int night) {
    return stationMinC[night];
  }

  /** Day length, h, one value a day; not to be changed by callers. */
  public double[] dayLengthH() {
    return dayLengthH;
  }

  /**
   * Snow on the ground, cm, one value a day; 0 where the file says nothing; not to be changed by
   * callers.
   */
  public double[] snowCm() {
    return snowCm;
  }

  /** Mean over all hours, °C. */
  public double meanC() {
    double sum = 0;
    for (double t : airC) {
      sum += t;
    }
    return sum / airC.length;
  }
}
