package org.hibernacle.thermal;

import java.time.LocalDate;
import java.util.Arrays;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;

/**
 * What a logger in a place read on the days of a winter, whole days only.
 *
 * @param airByDayC 24 hours a day, °C; an empty array where the logger has nothing
 */
record LoggedAir(double[][] airByDayC) {
  private static final double[] NOTHING_C = {};

  /** No logger. */
  static LoggedAir none(Winter winter) {
    double[][] airByDayC = new double[winter.days()][];
    Arrays.fill(airByDayC, NOTHING_C);
    return new LoggedAir(airByDayC);
  }

  /** The logger's days that lie in the winter; hours that it lacks are drawn as for any file. */
  static LoggedAir of(HourlyAir logger, Winter winter) {
    LoggedAir logged = none(winter);
    for (int i = 0; i < winter.days(); i++) {
      LocalDate day = winter.first().plusDays(i);
      if (logger.series().days().containsKey(day)) {
        logged.airByDayC[i] = logger.on(day);
      }
    }
    return logged;
  }

  /** Whether the logger tells the air of that hour of the winter. */
  boolean has(int hour) {
    return airByDayC[hour / 24].length > 0;
  }

  /** Air of that hour, °C. */
  double airC(int hour) {
    return airByDayC[hour / 24][hour % 24];
  }
}
