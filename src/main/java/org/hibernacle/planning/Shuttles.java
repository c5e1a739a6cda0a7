package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Plant;

/**
 * Brings a plant home by the time its buds break, where frost would keep it away longer, by
 * carrying it back on the few frosty nights that follow. Only for plants that rest in the cold (the
 * others may wake in the light of their winter place), only small pots, and few nights: it is work
 * on evenings that nobody can choose.
 */
final class Shuttles {
  /** Most nights in any winter on file. */
  static final int MOST_NIGHTS = 8;

  /** Heaviest pot for it, kg. */
  static final double HEAVIEST_KG = 15;

  /** Being away for a night changes what the next ones meet; tried this often. */
  private static final int MOST_ROUNDS = 4;

  private static final Set<Rule> FROST = Set.of(Rule.ROOT_BALL, Rule.SHOOTS, Rule.OUT_OF_THE_WARM);

  private final Plant plant;
  private final WintersOnFile winters;
  private final Trial trial;
  private final int home;

  Shuttles(Plant plant, WintersOnFile winters, Trial trial, int home) {
    this.plant = plant;
    this.winters = winters;
    this.trial = trial;
    this.home = home;
  }

  /**
   * The plant with its path and with what it meets along it.
   *
   * @param path by nights of the plan, without the nights back
   * @param lived with the nights back
   * @param shuttle the nights back
   */
  record Brought(Path path, List<Lived> lived, Shuttle shuttle) {}

  /**
   * Home by waking, if that can be had.
   *
   * @param found path that breaks nothing
   * @param excused winters from the safety margin
   * @param mayReturn moving days on which the plant may be carried home from where it is
   */
  Optional<Brought> bring(
      Path found, List<Lived> lived, Set<Integer> excused, IntPredicate mayReturn) {
    List<Integer> moves = found.moveNights();
    boolean small = Mass.wetKg(plant.container()) < HEAVIEST_KG;
    if (moves.size() < 2 || !small || !plant.species().group().restsCold()) {
      return Optional.empty();
    }
    int back = moves.get(moves.size() - 1);
    int away = moves.get(moves.size() - 2);
    int waking = waking(lived);
    for (int n = Math.min(waking, back - 1); n >= away + Stay.LEAST_NIGHTS && waking < back; n--) {
      if (mayReturn.test(n)) {
        int refuge = found.placeByNight()[back - 1];
        return withNightsBack(found.with(n, back, home), n, refuge, waking, excused);
      }
    }
    return Optional.empty();
  }

  /** First night of the plan by which buds break in any winter. */
  private int waking(List<Lived> lived) {
    return lived.stream()
        .filter(l -> l.state().budBreak() < l.path().length)
        .mapToInt(l -> winters.planNight(l.winter(), l.state().budBreak()))
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private Optional<Brought> withNightsBack(
      Path path, int from, int refuge, int waking, Set<Integer> excused) {
    List<Lived> atHome = trial.live(path);
    List<Set<Integer>> harmful = new ArrayList<>();
    for (Lived lived : atHome) {
      harmful.add(harmful(lived, from, refuge, excused));
    }
    int last = last(harmful);
    if (last < 0) {
      return Optional.empty();
    }
    double triggerC = triggerC(atHome, harmful, from, last);
    List<Lived> lives = new ArrayList<>();
    List<Shuttle.Night> all = new ArrayList<>();
    for (Lived lived : atHome) {
      int w = lived.winter();
      Set<Integer> nights = new TreeSet<>(harmful.get(w));
      window(lived, from, last)
          .filter(n -> lived.trace().airMinC()[n] < triggerC)
          .forEach(nights::add);
      Lived withNightsBack = back(lived, nights, refuge);
      if (nights.size() > MOST_NIGHTS || KnownBreaks.ticks(List.of(withNightsBack), excused) > 0) {
        return Optional.empty();
      }
      Winter winter = winters.winter(w);
      nights.forEach(n -> all.add(new Shuttle.Night(winter.season(), winters.measuredOn(w, n))));
      lives.add(withNightsBack);
    }
    return Optional.of(
        new Brought(
            path,
            lives,
            new Shuttle(
                winters.places().get(refuge),
                winters.season().day(from),
                winters.season().day(last),
                winters.season().day(waking),
                all,
                triggerC)));
  }

  /** Nights on which frost breaks a rule at home, until none does with the others spent away. */
  private Set<Integer> harmful(Lived atHome, int from, int refuge, Set<Integer> excused) {
    Set<Integer> nights = new TreeSet<>();
    Lived lived = atHome;
    for (int round = 0; round < MOST_ROUNDS && !frosts(lived, from, excused).isEmpty(); round++) {
      nights.addAll(frosts(lived, from, excused));
      lived = back(atHome, nights, refuge);
    }
    return nights;
  }

  private Lived back(Lived atHome, Set<Integer> nights, int refuge) {
    int[] shuttled = atHome.path().clone();
    nights.forEach(n -> shuttled[n] = refuge);
    return trial.live(atHome.winter(), shuttled);
  }

  /** Last night of the plan with harm in any winter; -1 if there is none. */
  private int last(List<Set<Integer>> harmful) {
    int last = -1;
    for (int w = 0; w < harmful.size(); w++) {
      for (int n : harmful.get(w)) {
        last = Math.max(last, winters.planNight(w, n));
      }
    }
    return last;
  }

  /** Nights of a winter between two nights of the plan, both counted. */
  private IntStream window(Lived lived, int from, int last) {
    return IntStream.range(0, lived.path().length)
        .filter(n -> winters.planNight(lived.winter(), n) >= from)
        .filter(n -> winters.planNight(lived.winter(), n) <= last);
  }

  /** The coldest night that did no harm, of those warmer than all that did. */
  private double triggerC(List<Lived> atHome, List<Set<Integer>> harmful, int from, int last) {
    double warmestHarmC = Double.NEGATIVE_INFINITY;
    for (Lived lived : atHome) {
      for (int n : harmful.get(lived.winter())) {
        warmestHarmC = Math.max(warmestHarmC, lived.trace().airMinC()[n]);
      }
    }
    double triggerC = Double.POSITIVE_INFINITY;
    for (Lived lived : atHome) {
      for (int n : window(lived, from, last).toArray()) {
        double airC = lived.trace().airMinC()[n];
        triggerC = airC > warmestHarmC ? Math.min(triggerC, airC) : triggerC;
      }
    }
    return triggerC;
  }

  /** Nights of that winter, from a night of the plan on, on which frost breaks a rule at home. */
  private List<Integer> frosts(Lived lived, int from, Set<Integer> excused) {
    boolean limitsOnly = excused.contains(lived.winter());
    return lived.violations().stream()
        .filter(b -> b.place() == home && FROST.contains(b.violation().rule()))
        .filter(b -> winters.planNight(lived.winter(), b.night()) >= from)
        .filter(b -> !limitsOnly || Cost.ticksOfLimit(b.violation()) > 0)
        .map(Lived.Broken::night)
        .distinct()
        .toList();
  }
}
