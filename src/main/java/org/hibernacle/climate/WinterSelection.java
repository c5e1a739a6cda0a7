package org.hibernacle.climate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Gaps;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;

/**
 * Which winters on file can be planned with.
 *
 * <p>A winter counts if every day of its core months ({@link Season#coreStart} to {@link
 * Season#coreEndExclusive}) is on file. Gaps of at most {@value #LONGEST_BRIDGE_DAYS} days are
 * bridged by straight lines, at most {@value #MOST_BRIDGED_DAYS} core days a winter. In winters
 * that count, short gaps outside the core are bridged too; longer ones there stay. Nothing else is
 * ever filled in. The limits are common practice, without a source.
 *
 * @param series the file with the bridges in it
 * @param winters those that count, oldest first
 * @param leftOut those that do not, oldest first
 */
public record WinterSelection(
    TemperatureSeries series, List<UsableWinter> winters, List<LeftOut> leftOut) {
  /** Longest gap that is bridged, days. */
  public static final int LONGEST_BRIDGE_DAYS = 3;

  /** Most days bridged in the core of one winter. */
  public static final int MOST_BRIDGED_DAYS = 10;

  /** Why a winter does not count. */
  public enum Reason {
    /** The file begins after the first core day. */
    FILE_STARTS_TOO_LATE,
    /** The file ends before the last core day. */
    FILE_ENDS_TOO_EARLY,
    /** One gap is too long to be bridged. */
    GAP_TOO_LONG,
    /** Every gap is short, but there are too many. */
    TOO_MANY_GAPS
  }

  /**
   * A winter that does not count.
   *
   * @param season which
   * @param reason why
   * @param missing the core days at fault: the missing end, the first gap that is too long, or the
   *     first of too many
   * @param missingCoreDays core days that are not on file
   */
  public record LeftOut(Season season, Reason reason, DateSpan missing, int missingCoreDays) {}

  public WinterSelection {
    winters = List.copyOf(winters);
    leftOut = List.copyOf(leftOut);
  }

  /** Sorts the seasons that the file touches into those that count and those that do not. */
  public static WinterSelection of(TemperatureSeries series, boolean southern) {
    NavigableMap<LocalDate, DailyExtremes> days = new TreeMap<>(series.days());
    List<UsableWinter> winters = new ArrayList<>();
    List<LeftOut> leftOut = new ArrayList<>();
    Season last = Season.containing(series.days().lastKey(), southern);
    Season season = Season.containing(series.days().firstKey(), southern);
    for (; season.compareTo(last) <= 0; season = season.next()) {
      Optional<LeftOut> fault = fault(series, season);
      if (fault.isPresent()) {
        leftOut.add(fault.get());
        continue;
      }
      List<DateSpan> bridged = new ArrayList<>();
      for (DateSpan gap : Gaps.within(series.days(), season.start(), season.endExclusive())) {
        if (Gaps.days(gap) <= LONGEST_BRIDGE_DAYS) {
          bridged.add(gap);
          Gaps.bridge(days, gap);
        }
      }
      winters.add(new UsableWinter(season, bridged));
    }
    return new WinterSelection(
        new TemperatureSeries(series.station(), days, series.hours(), series.snowCm()),
        winters,
        leftOut);
  }

  /** Those that lie before a season. */
  public WinterSelection before(Season season) {
    return new WinterSelection(
        series,
        winters.stream().filter(w -> w.season().compareTo(season) < 0).toList(),
        leftOut.stream().filter(l -> l.season().compareTo(season) < 0).toList());
  }

  private static Optional<LeftOut> fault(TemperatureSeries series, Season season) {
    LocalDate start = season.coreStart();
    LocalDate end = season.coreEndExclusive();
    int onFile = series.days().subMap(start, end).size();
    int missing = (int) ChronoUnit.DAYS.between(start, end) - onFile;
    LocalDate first = series.days().firstKey();
    LocalDate afterLast = series.days().lastKey().plusDays(1);
    if (first.isAfter(start)) {
      DateSpan span = new DateSpan(start, first.isBefore(end) ? first : end);
      return Optional.of(new LeftOut(season, Reason.FILE_STARTS_TOO_LATE, span, missing));
    }
    if (afterLast.isBefore(end)) {
      DateSpan span = new DateSpan(afterLast.isAfter(start) ? afterLast : start, end);
      return Optional.of(new LeftOut(season, Reason.FILE_ENDS_TOO_EARLY, span, missing));
    }
    List<DateSpan> gaps = Gaps.within(series.days(), start, end);
    for (DateSpan gap : gaps) {
      if (Gaps.days(gap) > LONGEST_BRIDGE_DAYS) {
        return Optional.of(new LeftOut(season, Reason.GAP_TOO_LONG, gap, missing));
      }
    }
    return missing > MOST_BRIDGED_DAYS
        ? Optional.of(new LeftOut(season, Reason.TOO_MANY_GAPS, gaps.get(0), missing))
        : Optional.empty();
  }
}
