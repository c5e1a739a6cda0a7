package org.hibernacle.climate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Gaps;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;

/**
 * A season in which some of the weather is known: what happened up to a day, and a forecast for the
 * days after it. An earlier winter can be made to follow it, day of the season by day of the
 * season, so that both are one winter without a break.
 *
 * <p>Gaps of up to {@value WinterSelection#LONGEST_BRIDGE_DAYS} days are bridged. Longer ones stay
 * open, and what follows stands in for them; a forecast ends at the first of them.
 */
public final class SeasonSoFar {
  private final Season season;
  private final LocalDate asOf;
  private final TemperatureSeries own;
  private final int leadDays;
  private final int missingDays;
  private final int forecastDropped;

  private SeasonSoFar(
      Season season,
      LocalDate asOf,
      TemperatureSeries own,
      int leadDays,
      int missingDays,
      int forecastDropped) {
    this.season = season;
    this.asOf = asOf;
    this.own = own;
    this.leadDays = leadDays;
    this.missingDays = missingDays;
    this.forecastDropped = forecastDropped;
  }

  /**
   * What a file knows of the season that holds a day.
   *
   * @param file history, and the forecast where there is one
   * @param asOf last day of the history
   * @param southern whether the site lies south of the equator
   */
  public static SeasonSoFar of(TemperatureSeries file, LocalDate asOf, boolean southern) {
    Season season = Season.containing(asOf, southern);
    NavigableMap<LocalDate, DailyExtremes> days =
        new TreeMap<>(file.days().headMap(season.endExclusive(), false));
    if (!days.isEmpty()) {
      for (DateSpan gap : Gaps.within(days, season.start(), season.endExclusive())) {
        if (Gaps.days(gap) <= WinterSelection.LONGEST_BRIDGE_DAYS) {
          Gaps.bridge(days, gap);
        }
      }
    }
    int lead = 0;
    while (days.containsKey(asOf.plusDays(lead + 1))) {
      lead++;
    }
    NavigableMap<LocalDate, DailyExtremes> known =
        new TreeMap<>(days.headMap(asOf.plusDays(lead), true));
    int history = known.subMap(season.start(), true, asOf, true).size();
    int missing = (int) ChronoUnit.DAYS.between(season.start(), asOf) + 1 - history;
    TemperatureSeries own =
        known.isEmpty()
            ? file
            : new TemperatureSeries(file.station(), known, file.hours(), file.snowCm());
    return new SeasonSoFar(season, asOf, own, lead, missing, days.size() - known.size());
  }

  /** Which season. */
  public Season season() {
    return season;
  }

  /** Last day of the history. */
  public LocalDate asOf() {
    return asOf;
  }

  /** Days of forecast after it, without a gap. */
  public int leadDays() {
    return leadDays;
  }

  /** Days up to {@link #asOf} that are not on file, bridged ones not counted. */
  public int missingDays() {
    return missingDays;
  }

  /** Days of a forecast that lie beyond a gap, and are not used. */
  public int forecastDropped() {
    return forecastDropped;
  }

  /** Last day of the forecast, or {@link #asOf} without one. */
  public LocalDate knownTo() {
    return asOf.plusDays(leadDays);
  }

  /** Known days of the season from {@link #asOf} to the end of the forecast, oldest first. */
  public List<DailyExtremes> forecast() {
    List<DailyExtremes> days = new ArrayList<>();
    for (LocalDate day = asOf.plusDays(1); !day.isAfter(knownTo()); day = day.plusDays(1)) {
      DailyExtremes extremes = own.days().get(day);
      if (extremes != null) {
        days.add(extremes);
      }
    }
    return days;
  }

  /**
   * Day of this season whose weather stands in for a day of an earlier one, if it is known.
   *
   * @param winter the earlier season
   * @param day of it
   * @return that day; {@code day} itself where this season knows nothing
   */
  public LocalDate measuredOn(Season winter, LocalDate day) {
    LocalDate here = day.plusYears(season.year() - winter.year());
    boolean known = season.contains(here) && !here.isAfter(knownTo());
    return known && own.days().containsKey(here) ? here : day;
  }

  /**
   * A file in which this season's known days stand in the place of an earlier winter's.
   *
   * @param file to take both from: of the air outside, or of a place
   * @param winter earlier season that is to follow; its days keep their dates
   * @return the file itself if it has no day for either
   */
  public TemperatureSeries followedBy(TemperatureSeries file, Season winter) {
    NavigableMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    NavigableMap<LocalDate, List<Double>> hours = new TreeMap<>();
    NavigableMap<LocalDate, Double> snowCm = new TreeMap<>();
    for (LocalDate day = winter.start().minusDays(1);
        !day.isAfter(winter.endExclusive());
        day = day.plusDays(1)) {
      LocalDate from = measuredOn(winter, day);
      copy(file.days(), from, days, day);
      copy(file.hours(), from, hours, day);
      copy(file.snowCm(), from, snowCm, day);
    }
    return days.isEmpty() ? file : new TemperatureSeries(file.station(), days, hours, snowCm);
  }

  /** A file of the air outside with the bridges of this season in it. */
  public TemperatureSeries bridged(TemperatureSeries file) {
    NavigableMap<LocalDate, DailyExtremes> days = new TreeMap<>(file.days());
    days.putAll(own.days());
    return new TemperatureSeries(file.station(), days, file.hours(), file.snowCm());
  }

  private static <T> void copy(
      NavigableMap<LocalDate, T> from, LocalDate day, NavigableMap<LocalDate, T> to, LocalDate as) {
    T value = from.get(day);
    if (value != null) {
      to.put(as, value);
    }
  }
}
