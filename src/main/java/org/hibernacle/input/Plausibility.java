package org.hibernacle.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.TemperatureSeries;

/**
 * Looks for days that can be true but seldom are. Only warns: the values are used as they stand.
 * The limits are common practice, without a source.
 */
final class Plausibility {
  /** Largest step of the lowest from a day to the next that raises no question, K. */
  private static final double JUMP_K = 25;

  /** Days with the very same extremes after which a probe is thought to be stuck. */
  private static final int STUCK_DAYS = 5;

  /** Smallest step of the lowest, on average, that weather has in the open, K. */
  private static final double SMOOTH_K = 0.3;

  /** The shortest month. */
  private static final int MONTH_DAYS = 28;

  /** Dates by which a table of months is known. */
  private static final int LEAST_MONTHS = 4;

  /** Days from one to the next after which that average means something. */
  private static final int SMOOTH_DAYS = 60;

  private static final int LISTED = 5;

  private Plausibility() {}

  static void look(TemperatureSeries series, String where, Problems problems) {
    tellSmooth(series, where, problems);
    List<LocalDate> jumps = new ArrayList<>();
    List<LocalDate> stuck = new ArrayList<>();
    int same = 1;
    Map.Entry<LocalDate, DailyExtremes> before = series.days().firstEntry();
    for (Map.Entry<LocalDate, DailyExtremes> day :
        series.days().tailMap(before.getKey(), false).entrySet()) {
      boolean next = before.getKey().plusDays(1).equals(day.getKey());
      if (next && Math.abs(day.getValue().minC() - before.getValue().minC()) > JUMP_K) {
        jumps.add(day.getKey());
      }
      same = next && day.getValue().equals(before.getValue()) ? same + 1 : 1;
      if (same == STUCK_DAYS) {
        stuck.add(day.getKey());
      }
      before = day;
    }
    if (!jumps.isEmpty()) {
      Phrase days = Phrase.listed(jumps, LISTED);
      problems.warning("IN-332", where, Math.round(JUMP_K), days);
    }
    if (!stuck.isEmpty()) {
      problems.warning("IN-333", where, STUCK_DAYS, Phrase.listed(stuck, LISTED));
    }
  }

  /** Whether there are dates of several months, and none is near another. */
  static boolean isMonthly(NavigableSet<LocalDate> days) {
    LocalDate before = LocalDate.MIN;
    for (LocalDate day : days) {
      if (day.minusDays(MONTH_DAYS).isBefore(before)) {
        return false;
      }
      before = day;
    }
    return days.size() >= LEAST_MONTHS;
  }

  /** Means of many years have no cold nights; a plan by them would be a plan for no winter. */
  private static void tellSmooth(TemperatureSeries series, String where, Problems problems) {
    double stepsK = 0;
    int steps = 0;
    for (LocalDate day : series.days().keySet()) {
      DailyExtremes next = series.days().get(day.plusDays(1));
      if (next != null) {
        stepsK += Math.abs(next.minC() - series.days().get(day).minC());
        steps++;
      }
    }
    if (steps >= SMOOTH_DAYS && stepsK / steps < SMOOTH_K) {
      problems.warning("IN-450", where, SMOOTH_K);
    }
  }
}
