package org.hibernacle.model;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;

/** Runs of days that a file lacks between two days that it has. */
public final class Gaps {
  private Gaps() {}

  /**
   * The gaps that touch the span, each in its full length, in order. What lies before the first or
   * after the last day on file is not a gap.
   */
  public static List<DateSpan> within(
      NavigableMap<LocalDate, DailyExtremes> days, LocalDate fromInclusive, LocalDate toExclusive) {
    List<DateSpan> gaps = new ArrayList<>();
    LocalDate before = days.floorKey(fromInclusive);
    if (before == null) {
      before = days.firstKey();
    }
    for (LocalDate day : days.tailMap(before, false).keySet()) {
      if (!before.plusDays(1).isBefore(toExclusive)) {
        break;
      }
      if (day.isAfter(before.plusDays(1)) && day.isAfter(fromInclusive)) {
        gaps.add(new DateSpan(before.plusDays(1), day));
      }
      before = day;
    }
    return gaps;
  }

  /** Its length, days. */
  public static int days(DateSpan gap) {
    return (int) ChronoUnit.DAYS.between(gap.fromInclusive(), gap.toExclusive());
  }

  /** Fills the gap by a straight line from the day before to the day after, each extreme alone. */
  public static void bridge(NavigableMap<LocalDate, DailyExtremes> days, DateSpan gap) {
    Map.Entry<LocalDate, DailyExtremes> before = days.lowerEntry(gap.fromInclusive());
    DailyExtremes after = days.get(gap.toExclusive());
    if (before == null || after == null) {
      throw new IllegalArgumentException("no days on both sides of " + gap);
    }
    DailyExtremes from = before.getValue();
    int steps = days(gap) + 1;
    for (int i = 1; i < steps; i++) {
      double share = (double) i / steps;
      double minC = from.minC() + share * (after.minC() - from.minC());
      double maxC = from.maxC() + share * (after.maxC() - from.maxC());
      days.put(gap.fromInclusive().plusDays(i - 1), new DailyExtremes(minC, Math.max(minC, maxC)));
    }
  }
}
