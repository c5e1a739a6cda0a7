package org.hibernacle.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.hibernacle.model.DailyExtremes;

/**
 * Finds runs of days that say again, in the same order, what earlier days said: a month that was
 * filled from another, or a year from the year before.
 */
final class CopiedDays {
  /** Fewer different days than that among so many are air that stands still, not a copy. */
  private static final int LEAST_DIFFERENT = 5;

  /**
   * A copy.
   *
   * @param from number of its first day
   * @param to number of the day after its last
   * @param original number of the first of the days that it repeats
   */
  record Copy(int from, int to, int original) {}

  private final List<DailyExtremes> days;
  private final IntPredicate joined;

  private CopiedDays(List<DailyExtremes> days, IntPredicate joined) {
    this.days = days;
    this.joined = joined;
  }

  /**
   * Every run of {@link QualityRule#COPIED_DAYS} or more days that are all there before.
   *
   * @param joined whether the day of that number follows on the one before it
   */
  static List<Copy> in(List<DailyExtremes> days, IntPredicate joined) {
    return new CopiedDays(days, joined).find();
  }

  private List<Copy> find() {
    List<Copy> copies = new ArrayList<>();
    Map<List<DailyExtremes>, Integer> seen = new HashMap<>();
    int run = 0;
    int done = 0;
    for (int i = 0; i < days.size(); i++) {
      run = joined.test(i) ? run + 1 : 1;
      int from = i + 1 - QualityRule.COPIED_DAYS;
      if (run < QualityRule.COPIED_DAYS) {
        continue;
      }
      List<DailyExtremes> here = days.subList(from, i + 1);
      Integer first = seen.putIfAbsent(here, from);
      boolean apart = first != null && first + QualityRule.COPIED_DAYS <= from;
      if (apart && from >= done && new HashSet<>(here).size() >= LEAST_DIFFERENT) {
        done = end(first, i + 1);
        copies.add(new Copy(from, done, first));
      }
    }
    return copies;
  }

  /** The day after the last that is repeated, if the days before that number are. */
  private int end(int original, int from) {
    int to = from;
    int twin = original + QualityRule.COPIED_DAYS;
    while (to < days.size()
        && joined.test(to)
        && joined.test(twin)
        && days.get(to).equals(days.get(twin))) {
      to++;
      twin++;
    }
    return to;
  }
}
