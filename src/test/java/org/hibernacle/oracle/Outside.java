package org.hibernacle.oracle;

import java.time.LocalDate;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;

/**
 * One winter's air at the site, hour by hour; docs/models/air.md and air-and-chill.md. Hour 0 is
 * the first midnight of the season.
 */
final class Outside {
  private final Season season;
  private final TemperatureSeries file;
  private final Settings settings;
  private final double[] airC;
  private final double[] sunWPerM2;

  Outside(Season season, TemperatureSeries file, Settings settings) {
    this.season = season;
    this.file = file;
    this.settings = settings;
    airC = new double[season.days() * 24];
    sunWPerM2 = new double[airC.length];
    if (!file.hours().isEmpty()) {
      throw new IllegalArgumentException("only daily files are judged");
    }
    for (int hour = 0; hour < airC.length; hour++) {
      LocalDate day = season.day(hour / 24);
      airC[hour] = atTheBench(day, airAt(day, hour % 24));
      sunWPerM2[hour] = sunAt(day, hour % 24);
    }
  }

  Season season() {
    return season;
  }

  Settings settings() {
    return settings;
  }

  int hours() {
    return airC.length;
  }

  double airC(int hour) {
    return airC[hour];
  }

  /** Sun on the level, W/m2. */
  double sunWPerM2(int hour) {
    return sunWPerM2[hour];
  }

  double dayLengthHours(LocalDate day) {
    return Sky.dayLengthHours(settings.latitudeDeg(), day);
  }

  /** What the site's offset has taken from the station's air, K. */
  double offsetK(int hour) {
    return airAt(season.day(hour / 24), hour % 24) - airC[hour];
  }

  /** Snow on the ground on a day of the season, m; none where the file does not say. */
  double snowM(int index) {
    return file.snowCm().getOrDefault(season.day(index), 0.0) / 100;
  }

  double meanC() {
    double sum = 0;
    for (double air : airC) {
      sum += air;
    }
    return sum / airC.length;
  }

  private double airAt(LocalDate day, double hour) {
    if (hour < sunrise(day)) {
      return night(day.minusDays(1), hour + 24);
    }
    return hour <= sunset(day) ? byDay(day, hour) : night(day, hour);
  }

  private double byDay(LocalDate day, double hour) {
    DailyExtremes of = atTheStation(day);
    double angle = Math.PI * (hour - sunrise(day)) / (dayLengthHours(day) + 4);
    return of.minC() + of.rangeK() * Math.sin(angle);
  }

  private double night(LocalDate evening, double hour) {
    LocalDate morning = evening.plusDays(1);
    double atSunsetC = byDay(evening, sunset(evening));
    double lengthHours = 24 + sunrise(morning) - sunset(evening);
    double fall = Math.log(hour - sunset(evening) + 1) / Math.log(lengthHours + 1);
    double airC = atSunsetC - (atSunsetC - atTheStation(morning).minC()) * fall;
    double lowestC = Math.min(atTheStation(evening).minC(), atTheStation(morning).minC());
    return Math.max(lowestC, Math.min(atTheStation(evening).maxC(), airC));
  }

  private double sunrise(LocalDate day) {
    return 12 - dayLengthHours(day) / 2;
  }

  private double sunset(LocalDate day) {
    return 12 + dayLengthHours(day) / 2;
  }

  /** Clear days are colder at the bench: by all of the offset at the minimum or below it. */
  private double atTheBench(LocalDate day, double airC) {
    DailyExtremes of = atTheStation(day);
    if (of.rangeK() <= 8) {
      return airC;
    }
    double share = (of.maxC() - airC) / of.rangeK();
    return airC - settings.siteColderByK() * Math.max(0, Math.min(1, share));
  }

  /** The day before and after the season may be off the file: the nearest day stands in. */
  private DailyExtremes atTheStation(LocalDate day) {
    DailyExtremes of = file.days().get(day);
    if (of != null) {
      return of;
    }
    if (season.contains(day)) {
      throw new IllegalArgumentException("only whole winters are judged; missing: " + day);
    }
    return atTheStation(day.isBefore(season.start()) ? season.start() : day.minusDays(1));
  }

  /** Sunshine guessed from the daily range, as a half sine from sunrise to sunset. */
  private double sunAt(LocalDate day, double hour) {
    double length = dayLengthHours(day);
    double share = (hour - sunrise(day)) / length;
    if (share <= 0 || share >= 1) {
      return 0;
    }
    double megajoules =
        0.16
            * Math.sqrt(atTheStation(day).rangeK())
            * Sky.aboveTheAtmosphereMjPerM2(settings.latitudeDeg(), day);
    double meanWPerM2 = megajoules * 1e6 / (length * 3600);
    return meanWPerM2 * Math.PI / 2 * Math.sin(Math.PI * share);
  }
}
