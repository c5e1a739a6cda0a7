package org.hibernacle.climate;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * When the Sun is up, in solar hours: 12 is noon, and the day lies evenly around it.
 *
 * @param sunriseSolarH upper limb on the horizon in the morning, h (0..12)
 * @param sunsetSolarH the same in the evening, h (12..24)
 */
public record DayLength(double sunriseSolarH, double sunsetSolarH) {
  /** Wide enough for the longest day, with noon up to 17 minutes away from 12 h. */
  private static final Duration HALF_DAY = Duration.ofHours(13);

  public DayLength {
    if (!(sunriseSolarH >= 0 && sunriseSolarH <= 12 && sunsetSolarH >= 12 && sunsetSolarH <= 24)) {
      throw new IllegalArgumentException("not a day: " + sunriseSolarH + " to " + sunsetSolarH);
    }
  }

  /**
   * The day at that latitude. The library's own horizon (upper limb, refraction) is used as it is:
   * lowering it further by the Sun's radius would count that radius twice.
   *
   * <p>Within 0.02 h of the NOAA formulas up to 65° (see the test). Polar day is 0 to 24, polar
   * night 12 to 12.
   *
   * @param latitudeDeg north positive, -90..90
   */
  public static DayLength at(double latitudeDeg, LocalDate day) {
    ZonedDateTime noon = day.atTime(12, 0).atZone(ZoneOffset.UTC);
    SunTimes.Parameters here = SunTimes.compute().at(latitudeDeg, 0).on(noon).limit(HALF_DAY);
    SunTimes morning = here.copy().reverse().execute();
    SunTimes evening = here.copy().forward().execute();
    ZonedDateTime rise = morning.getRise();
    ZonedDateTime set = evening.getSet();
    if (rise == null || set == null) {
      return morning.isAlwaysDown() || evening.isAlwaysDown()
          ? new DayLength(12, 12)
          : new DayLength(0, 24);
    }
    double halfH = Math.min(12, Duration.between(rise, set).toMillis() / 7.2e6);
    return new DayLength(12 - halfH, 12 + halfH);
  }

  /** Sunrise to sunset, h (0..24). */
  public double lengthH() {
    return sunsetSolarH - sunriseSolarH;
  }
}
