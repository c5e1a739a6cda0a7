package org.hibernacle.model;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the Settings sheet says.
 *
 * @param site name of the garden
 * @param siteColderByK how much colder than the station clear nights are at the bench, K
 * @param latitudeDeg north positive, -66..66
 * @param longitudeDeg east positive
 * @param zone time zone of the site
 * @param units display units
 * @param safetyMarginK kept above every limit, K (0..10)
 * @param acceptedRiskOfTen seasons out of ten in which a margin may be broken
 * @param movingDays weekdays on which the keeper carries pots
 * @param away spans without anyone
 * @param plantsPerMovingDay most plants on one day
 * @param minutesPerMovingDay most minutes on one day
 * @param paper for print-outs
 * @param firstDayOfWeek in calendars
 * @param language for dates and numbers
 * @param extraMovingDays single days on which the keeper carries pots all the same, whatever the
 *     weekday and the spans without anyone say
 * @param labels how pot labels stand on a sheet
 */
public record Settings(
    String site,
    double siteColderByK,
    double latitudeDeg,
    double longitudeDeg,
    ZoneId zone,
    Units units,
    double safetyMarginK,
    int acceptedRiskOfTen,
    Set<DayOfWeek> movingDays,
    List<DateSpan> away,
    OptionalInt plantsPerMovingDay,
    OptionalInt minutesPerMovingDay,
    Paper paper,
    DayOfWeek firstDayOfWeek,
    Locale language,
    Set<LocalDate> extraMovingDays,
    LabelGrid labels) {

  /** Display units. */
  public enum Units {
    METRIC,
    US
  }

  /** Paper size. */
  public enum Paper {
    A4,
    LETTER
  }

  public Settings {
    if (!(latitudeDeg >= -66 && latitudeDeg <= 66)) {
      throw new IllegalArgumentException("latitudeDeg must be -66..66 but is " + latitudeDeg);
    }
    if (movingDays.isEmpty()) {
      throw new IllegalArgumentException("movingDays must not be empty");
    }
    movingDays = java.util.Collections.unmodifiableSet(EnumSet.copyOf(movingDays));
    away = List.copyOf(away);
    extraMovingDays = Set.copyOf(extraMovingDays);
  }

  /** Settings without extra moving days, with the usual labels. */
  public Settings(
      String site,
      double siteColderByK,
      double latitudeDeg,
      double longitudeDeg,
      ZoneId zone,
      Units units,
      double safetyMarginK,
      int acceptedRiskOfTen,
      Set<DayOfWeek> movingDays,
      List<DateSpan> away,
      OptionalInt plantsPerMovingDay,
      OptionalInt minutesPerMovingDay,
      Paper paper,
      DayOfWeek firstDayOfWeek,
      Locale language) {
    this(
        site,
        siteColderByK,
        latitudeDeg,
        longitudeDeg,
        zone,
        units,
        safetyMarginK,
        acceptedRiskOfTen,
        movingDays,
        away,
        plantsPerMovingDay,
        minutesPerMovingDay,
        paper,
        firstDayOfWeek,
        language,
        Set.of(),
        LabelGrid.USUAL);
  }

  /** The same keeper who accepts another risk, in seasons out of ten. */
  public Settings withAcceptedRisk(int ofTen) {
    return with(ofTen, movingDays, away, plantsPerMovingDay, minutesPerMovingDay, extraMovingDays);
  }

  /** The same keeper who carries pots on one more day. */
  public Settings withExtraMovingDay(LocalDate day) {
    Set<LocalDate> days = new TreeSet<>(extraMovingDays);
    days.add(day);
    return with(acceptedRiskOfTen, movingDays, away, plantsPerMovingDay, minutesPerMovingDay, days);
  }

  /** The same keeper who is there every day. */
  public Settings withEveryDay() {
    return with(
        acceptedRiskOfTen,
        EnumSet.allOf(DayOfWeek.class),
        List.of(),
        plantsPerMovingDay,
        minutesPerMovingDay,
        extraMovingDays);
  }

  /** The same keeper with other hands. */
  public Settings withHands(OptionalInt plants, OptionalInt minutes) {
    return with(acceptedRiskOfTen, movingDays, away, plants, minutes, extraMovingDays);
  }

  private Settings with(
      int risk,
      Set<DayOfWeek> weekdays,
      List<DateSpan> spans,
      OptionalInt plants,
      OptionalInt minutes,
      Set<LocalDate> extra) {
    return new Settings(
        site,
        siteColderByK,
        latitudeDeg,
        longitudeDeg,
        zone,
        units,
        safetyMarginK,
        risk,
        weekdays,
        spans,
        plants,
        minutes,
        paper,
        firstDayOfWeek,
        language,
        extra,
        labels);
  }

  /** The same with other moving days. */
  public Settings withMovingDays(Set<DayOfWeek> days) {
    return new Settings(
        site,
        siteColderByK,
        latitudeDeg,
        longitudeDeg,
        zone,
        units,
        safetyMarginK,
        acceptedRiskOfTen,
        days,
        away,
        plantsPerMovingDay,
        minutesPerMovingDay,
        paper,
        firstDayOfWeek,
        language);
  }

  /** Whether the keeper carries pots on that day. */
  public boolean isMovingDay(LocalDate day) {
    return extraMovingDays.contains(day)
        || (movingDays.contains(day.getDayOfWeek())
            && away.stream().noneMatch(span -> span.contains(day)));
  }

  /** Whether the site lies south of the equator. */
  public boolean southern() {
    return latitudeDeg < 0;
  }
}
