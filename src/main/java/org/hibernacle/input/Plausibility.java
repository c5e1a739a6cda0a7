package org.hibernacle.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

  private static final int LISTED = 5;

  private Plausibility() {}

  static void look(TemperatureSeries series, String where, Problems problems) {
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
}
