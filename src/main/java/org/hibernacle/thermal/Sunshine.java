package org.hibernacle.thermal;

import java.time.LocalDate;

/**
 * Sun on a level surface, guessed from the daily temperature range, for files without sun.
 *
 * <p>Daily sum {@code Rs = 0.16 sqrt(Tmax - Tmin) Ra} (Hargreaves and Samani's inland form, FAO
 * Irrigation and Drainage Paper 56, eq. 50) with extraterrestrial {@code Ra} of its eq. 21 (both
 * cited from memory), spread over the day as a half sine. Good to about a quarter on single days:
 * enough to see a glasshouse warm up.
 */
final class Sunshine {
  /** Hargreaves and Samani's inland coefficient, of the sun above the air per root of a kelvin. */
  static final double PER_ROOT_KELVIN_SHARE = 0.16;

  private static final double SOLAR_MJ_PER_M2_MIN = 0.0820;

  private Sunshine() {}

  /**
   * Mean flux over one hour, W/m2.
   *
   * @param latitudeDeg -66..66
   * @param day of the year matters
   * @param rangeK daily range of air temperature, K
   * @param dayLengthH h
   * @param hour 0..23, solar
   */
  static double wattPerM2(
      double latitudeDeg, LocalDate day, double rangeK, double dayLengthH, int hour) {
    double fromSunrise = hour + 0.5 - (12 - dayLengthH / 2);
    if (fromSunrise <= 0 || fromSunrise >= dayLengthH) {
      return 0;
    }
    double dailyMJ =
        PER_ROOT_KELVIN_SHARE
            * Math.sqrt(Math.max(0, rangeK))
            * extraterrestrialMJ(latitudeDeg, day);
    double peakW = dailyMJ * 1e6 * Math.PI / 2 / (dayLengthH * 3600);
    return peakW * Math.sin(Math.PI * fromSunrise / dayLengthH);
  }

  /** Daily extraterrestrial radiation, MJ/m2. */
  static double extraterrestrialMJ(double latitudeDeg, LocalDate day) {
    double angle = 2 * Math.PI * day.getDayOfYear() / 365;
    double distance = 1 + 0.033 * Math.cos(angle);
    double declination = 0.409 * Math.sin(angle - 1.39);
    double latitude = Math.toRadians(latitudeDeg);
    double cosSunset = -Math.tan(latitude) * Math.tan(declination);
    double sunset = Math.acos(Math.max(-1, Math.min(1, cosSunset)));
    return 24
        * 60
        / Math.PI
        * SOLAR_MJ_PER_M2_MIN
        * distance
        * (sunset * Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
  }
}
