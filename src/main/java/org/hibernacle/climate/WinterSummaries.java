package org.hibernacle.climate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;

/** Tells what each winter on file was like. */
public final class WinterSummaries {
  private WinterSummaries() {}

  /** Like the other form, over the whole of each season. */
  public static List<WinterSummary> of(TemperatureSeries series, double latitudeDeg) {
    return of(series, latitudeDeg, DayWindow.wholeSeason(latitudeDeg < 0));
  }

  /**
   * One summary for each season that the file touches, oldest first. Days that are not on file are
   * left out of every count and never filled in.
   *
   * @param latitudeDeg of the station, -66..66; its sign decides when seasons begin
   * @param window over which chill and warmth are summed; must fit the hemisphere
   */
  public static List<WinterSummary> of(
      TemperatureSeries series, double latitudeDeg, DayWindow window) {
    boolean southern = latitudeDeg < 0;
    HourlyAir air = new HourlyAir(series, latitudeDeg);
    return series.days().keySet().stream()
        .map(day -> Season.containing(day, southern))
        .distinct()
        .map(season -> summary(season, air, window.in(season)))
        .toList();
  }

  private static WinterSummary summary(Season season, HourlyAir air, DateSpan window) {
    NavigableMap<LocalDate, DailyExtremes> days =
        air.series().days().subMap(season.start(), true, season.endExclusive(), false);
    Map.Entry<LocalDate, DailyExtremes> coldest = coldest(days);
    List<WinterSummary.Frosts> frosts = new ArrayList<>();
    for (double thresholdC : WinterSummary.THRESHOLDS_C) {
      frosts.add(frosts(days, thresholdC));
    }
    Sums sums = new Sums();
    NavigableSet<LocalDate> summed =
        days.navigableKeySet().subSet(window.fromInclusive(), true, window.toExclusive(), false);
    summed.forEach(day -> sums.add(air.on(day)));
    long windowDays = ChronoUnit.DAYS.between(window.fromInclusive(), window.toExclusive());
    return new WinterSummary(
        season,
        days.size(),
        season.days() - days.size(),
        coldest.getValue().minC(),
        coldest.getKey(),
        frosts,
        longestRunBelowZero(days),
        window,
        (int) windowDays - summed.size(),
        sums.chillingHours,
        sums.utahUnits,
        sums.portions.portions(),
        sums.growingDegreeHours);
  }

  /** The first of the coldest nights. */
  private static Map.Entry<LocalDate, DailyExtremes> coldest(
      NavigableMap<LocalDate, DailyExtremes> days) {
    Map.Entry<LocalDate, DailyExtremes> coldest = days.firstEntry();
    for (Map.Entry<LocalDate, DailyExtremes> day : days.entrySet()) {
      if (day.getValue().minC() < coldest.getValue().minC()) {
        coldest = day;
      }
    }
    return coldest;
  }

  private static WinterSummary.Frosts frosts(
      NavigableMap<LocalDate, DailyExtremes> days, double thresholdC) {
    TreeSet<LocalDate> nights =
        days.entrySet().stream()
            .filter(day -> day.getValue().minC() <= thresholdC)
            .map(Map.Entry::getKey)
            .collect(Collectors.toCollection(TreeSet::new));
    return nights.isEmpty()
        ? new WinterSummary.Frosts(thresholdC, Optional.empty(), Optional.empty(), 0)
        : new WinterSummary.Frosts(
            thresholdC, Optional.of(nights.first()), Optional.of(nights.last()), nights.size());
  }

  /** A missing day ends a run. */
  private static int longestRunBelowZero(NavigableMap<LocalDate, DailyExtremes> days) {
    int longest = 0;
    int run = 0;
    LocalDate expected = days.firstKey();
    for (Map.Entry<LocalDate, DailyExtremes> day : days.entrySet()) {
      boolean joins = day.getKey().equals(expected);
      boolean frozen = day.getValue().minC() < 0;
      run = frozen ? (joins ? run + 1 : 1) : 0;
      longest = Math.max(longest, run);
      expected = day.getKey().plusDays(1);
    }
    return longest;
  }

  private static final class Sums {
    private final DynamicModel portions = new DynamicModel();
    private double chillingHours;
    private double utahUnits;
    private double growingDegreeHours;

    void add(double[] hourlyAirC) {
      for (double airC : hourlyAirC) {
        chillingHours += ChillingHours.ofHour(airC);
        utahUnits += UtahUnits.ofHour(airC);
        portions.add(airC);
        growingDegreeHours += GrowingDegreeHours.ofHour(airC);
      }
    }
  }
}
