package org.hibernacle.oracle;

import static java.lang.Math.PI;
import static java.lang.Math.acos;
import static java.lang.Math.asin;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.tan;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;

import java.time.LocalDate;
import java.time.temporal.JulianFields;

/** The sun over a latitude. */
final class Sky {
  private Sky() {}

  /**
   * Hours from sunrise to sunset, h. Low-precision solar position of Meeus, Astronomical
   * Algorithms, as used by NOAA's solar calculator: zenith 90.833 degrees, at noon of the day.
   */
  static double dayLengthHours(double latitudeDeg, LocalDate day) {
    // The Julian day number is that of noon, universal time.
    double t = (day.getLong(JulianFields.JULIAN_DAY) - 2451545) / 36525.0;
    double meanLongitude = 280.46646 + t * (36000.76983 + 0.0003032 * t);
    double anomaly = toRadians(357.52911 + t * (35999.05029 - 0.0001537 * t));
    double centre =
        sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t))
            + sin(2 * anomaly) * (0.019993 - 0.000101 * t)
            + sin(3 * anomaly) * 0.000289;
    double node = toRadians(125.04 - 1934.136 * t);
    double longitude = toRadians(meanLongitude + centre - 0.00569 - 0.00478 * sin(node));
    double obliquity = toRadians(23.439291 - 0.0130042 * t + 0.00256 * cos(node));
    double declination = asin(sin(obliquity) * sin(longitude));
    double latitude = toRadians(latitudeDeg);
    double hourAngle =
        acos(
            cos(toRadians(90.833)) / (cos(latitude) * cos(declination))
                - tan(latitude) * tan(declination));
    return 2 * toDegrees(hourAngle) / 15;
  }

  /** Sunshine above the atmosphere, MJ/m2 a day. FAO paper 56, equations 21 to 25, from memory. */
  static double aboveTheAtmosphereMjPerM2(double latitudeDeg, LocalDate day) {
    double year = 2 * PI * day.getDayOfYear() / 365;
    double latitude = toRadians(latitudeDeg);
    double distance = 1 + 0.033 * cos(year);
    double declination = 0.409 * sin(year - 1.39);
    double sunset = acos(-tan(latitude) * tan(declination));
    return 24
        * 60
        / PI
        * 0.0820
        * distance
        * (sunset * sin(latitude) * sin(declination)
            + cos(latitude) * cos(declination) * sin(sunset));
  }
}
