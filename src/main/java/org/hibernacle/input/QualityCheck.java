package org.hibernacle.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Phrase;

/** Looks for days that are hard to believe; {@link QualityRule} has the reasons. */
final class QualityCheck {
  private record Day(LocalDate date, DailyExtremes air) {}

  private static final List<ToDoubleFunction<DailyExtremes>> BOTH =
      List.of(DailyExtremes::minC, DailyExtremes::maxC);

  private final List<Day> days = new ArrayList<>();
  private final Set<LocalDate> told = new HashSet<>();
  private final List<Suspicion> found = new ArrayList<>();

  private QualityCheck(NavigableMap<LocalDate, DailyExtremes> days) {
    days.forEach((date, air) -> this.days.add(new Day(date, air)));
  }

  /**
   * Everything suspicious, by its first day; a day is told for one of lost sign, spike and range.
   */
  static List<Suspicion> of(NavigableMap<LocalDate, DailyExtremes> days) {
    QualityCheck check = new QualityCheck(days);
    check.lostSigns();
    check.spikes();
    check.wideRanges();
    BOTH.forEach(check::stuck);
    check.copied();
    check.outliers();
    return check.found.stream()
        .sorted(
            Comparator.comparing((Suspicion s) -> s.days().get(0)).thenComparing(Suspicion::rule))
        .toList();
  }

  private void add(QualityRule rule, int from, int to) {
    DailyExtremes first = days.get(from).air();
    Phrase air =
        Phrase.of("min-to-max", DayFigures.round(first.minC()), DayFigures.round(first.maxC()));
    add(rule, from, to, to - from > 1 ? Phrase.of("on-the-first", air) : air);
  }

  private void add(QualityRule rule, int from, int to, Phrase stands) {
    List<LocalDate> dates = days.subList(from, to).stream().map(Day::date).toList();
    found.add(new Suspicion(rule, dates, stands));
  }

  /** Whether the day with that number follows on the one before it. */
  private boolean joined(int i) {
    return i > 0
        && i < days.size()
        && days.get(i - 1).date().plusDays(1).equals(days.get(i).date());
  }

  private void lostSigns() {
    for (int i = 1; i < days.size(); i++) {
      Optional<Integer> end = endOfTurned(i);
      if (end.isPresent()) {
        add(QualityRule.LOST_SIGN, i, end.get());
        days.subList(i, end.get()).forEach(day -> told.add(day.date()));
        i = end.get() - 1;
      }
    }
  }

  /** End, exclusive, of a run from that day on that only makes sense with the other sign. */
  private Optional<Integer> endOfTurned(int from) {
    if (!leapsUp(days.get(from - 1), days.get(from)) || !joined(from)) {
      return Optional.empty();
    }
    for (int to = from + 1; to <= from + QualityRule.SIGN_DAYS && joined(to); to++) {
      if (leapsUp(days.get(to), days.get(to - 1))) {
        return Optional.of(to);
      }
    }
    return Optional.empty();
  }

  /** Whether a day is far above a cold neighbour, and just like it with its signs turned. */
  private static boolean leapsUp(Day cold, Day suspect) {
    double minC = suspect.air().minC();
    double maxC = suspect.air().maxC();
    return minC > 0
        && minC - cold.air().minC() > QualityRule.SIGN_STEP_K
        && maxC - cold.air().maxC() > QualityRule.SIGN_STEP_K * 2 / 3
        && Math.abs(-maxC - cold.air().minC()) <= 2 * QualityRule.SIGN_FIT_K
        && Math.abs(-(minC + maxC) / 2 - middleC(cold)) <= QualityRule.SIGN_FIT_K;
  }

  private static double middleC(Day day) {
    return (day.air().minC() + day.air().maxC()) / 2;
  }

  private void spikes() {
    for (int i = 1; i < days.size() - 1; i++) {
      if (joined(i) && joined(i + 1) && !told.contains(days.get(i).date())) {
        int day = i;
        if (BOTH.stream().anyMatch(extreme -> isSpike(day, extreme))) {
          add(QualityRule.SPIKE, i, i + 1);
          told.add(days.get(i).date());
        }
      }
    }
  }

  private boolean isSpike(int i, ToDoubleFunction<DailyExtremes> extreme) {
    double before = step(i, i - 1, extreme);
    double after = step(i, i + 1, extreme);
    return Math.min(before, after) > QualityRule.SPIKE_K
        || Math.max(before, after) < -QualityRule.SPIKE_K;
  }

  private double step(int i, int other, ToDoubleFunction<DailyExtremes> extreme) {
    return extreme.applyAsDouble(days.get(i).air()) - extreme.applyAsDouble(days.get(other).air());
  }

  private void wideRanges() {
    for (int i = 1; i < days.size() - 1; i++) {
      if (joined(i) && joined(i + 1) && !told.contains(days.get(i).date())) {
        List<Day> three = days.subList(i - 1, i + 2);
        DailyExtremes air = days.get(i).air();
        double warmestLowestC = three.stream().mapToDouble(d -> d.air().minC()).max().orElseThrow();
        double coldestHighestC =
            three.stream().mapToDouble(d -> d.air().maxC()).min().orElseThrow();
        if (air.maxC() - warmestLowestC >= QualityRule.RANGE_K
            || coldestHighestC - air.minC() >= QualityRule.RANGE_K) {
          add(QualityRule.WIDE, i, i + 1);
        }
      }
    }
  }

  private void copied() {
    List<DailyExtremes> air = days.stream().map(Day::air).toList();
    for (CopiedDays.Copy copy : CopiedDays.in(air, this::joined)) {
      int last = copy.original() + copy.to() - copy.from() - 1;
      Phrase original =
          Phrase.of("figures-of", days.get(copy.original()).date(), days.get(last).date());
      add(QualityRule.COPIED, copy.from(), copy.to(), original);
    }
  }

  private void outliers() {
    TreeMap<LocalDate, DailyExtremes> believed = new TreeMap<>();
    Set<LocalDate> doubted = new HashSet<>();
    found.forEach(suspicion -> doubted.addAll(suspicion.days()));
    days.forEach(day -> believed.put(day.date(), day.air()));
    believed.keySet().removeAll(doubted);
    Set<LocalDate> outliers = Outliers.in(believed, BOTH);
    for (int i = 0; i < days.size(); i++) {
      if (outliers.contains(days.get(i).date())) {
        add(QualityRule.OUTLIER, i, i + 1);
      }
    }
  }

  private void stuck(ToDoubleFunction<DailyExtremes> extreme) {
    int from = 0;
    for (int i = 1; i <= days.size(); i++) {
      if (joined(i) && step(i, i - 1, extreme) == 0) {
        continue;
      }
      if (i - from >= QualityRule.STREAK_DAYS) {
        add(QualityRule.STUCK, from, i);
      }
      from = i;
    }
  }
}
