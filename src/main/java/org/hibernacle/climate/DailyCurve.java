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
   * One of the three days that decide the hours of the middle one.
   *
   * @param air lowest and highest of the day
   * @param sun when it is up that day
   */
  public record Day(DailyExtremes air, DayLength sun) {

    /** {@code Tmin + (Tmax - Tmin) sin(pi (h - SR) / (DL + 4))}. */
    private double byDayC(double solarHour) {
      double sinceSunriseH = solarHour - sun.sunriseSolarH();
      double rise = Math.sin(Math.PI * sinceSunriseH / (sun.lengthH() + LAG_H));
      return air.minC() + air.rangeK() * rise;
    }

    /** {@code Tss - (Tss - Tmin') / ln(N + 1) ln(t + 1)}, on to the lowest of the next morning. */
    private double nightC(double sinceSunsetH, Day next) {
      double sunsetC = byDayC(sun.sunsetSolarH());
      double nightH = 24 - sun.sunsetSolarH() + next.sun.sunriseSolarH();
      return sunsetC - (sunsetC - next.air.minC()) * Math.log1p(sinceSunsetH) / Math.log1p(nightH);
    }
  }

  /**
   * The 24 hours of {@code today}: entry h is the temperature at solar hour h, °C. Never above
   * today's maximum, never below the lowest of the minima of today and tomorrow.
   */
  public static double[] hours(Day yesterday, Day today, Day tomorrow) {
    double[] airC = new double[24];
    for (int h = 0; h < 24; h++) {
      airC[h] = clamp(hour(h, yesterday, today, tomorrow), today.air, tomorrow.air);
    }
    return airC;
  }

  private static double hour(int h, Day yesterday, Day today, Day tomorrow) {
    DayLength sun = today.sun;
    if (sun.lengthH() == 0) {
      return today.air.meanC();
    }
    if (h < sun.sunriseSolarH()) {
      return yesterday.nightC(h + 24 - yesterday.sun.sunsetSolarH(), today);
    }
    return h <= sun.sunsetSolarH()
        ? today.byDayC(h)
        : today.nightC(h - sun.sunsetSolarH(), tomorrow);
  }

  private static double clamp(double airC, DailyExtremes today, DailyExtremes tomorrow) {
    double lowestC = Math.min(today.minC(), tomorrow.minC());
    return Math.max(lowestC, Math.min(today.maxC(), airC));
  }
}
