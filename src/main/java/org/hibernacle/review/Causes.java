package org.hibernacle.review;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.model.Outcome;

/**
 * Weighs what may have harmed a plant, by asking night after night what was likely to harm it
 * first. docs/review.md has the reasons for every figure here.
 *
 * <p>Each {@link Hazard} has a threshold that is not known well, so as the season goes on the
 * chance grows that it has been crossed. What a night adds to that chance, times the chance that no
 * other hazard had struck before, goes to the night's cause. Reasons that have nothing to do with
 * temperature strike with a fixed chance, spread over the season. All is weighed with how well the
 * cause goes with the outcome, and scaled to 1.
 */
final class Causes {
  /**
   * Weight of all that is not temperature; own choice: as much as a root ball and shoots that both
   * came as close as a safety margin of 2 K allows, {@code 1 - (1 - N(-2 / 2.24))^2}.
   */
  private static final double OTHER_REASONS = 0.35;

  /** Causes with less than this share are left out. */
  private static final double LEAST_SHARE = 0.005;

  private final Map<Cause, Double> weight = new EnumMap<>(Cause.class);
  private final Map<Cause, Double> strength = new EnumMap<>(Cause.class);
  private final Map<Cause, Integer> worstDay = new EnumMap<>(Cause.class);

  private Causes(List<Hazard> hazards, int from, int until) {
    double[] crossed = new double[hazards.size()];
    Map<Cause, Double> mostAdded = new EnumMap<>(Cause.class);
    double spared = 0;
    for (int night = from; night < until; night++) {
      double unharmed = 1;
      for (double chance : crossed) {
        unharmed *= 1 - chance;
      }
      spared += unharmed;
      for (int h = 0; h < crossed.length; h++) {
        double now = hazards.get(h).chance(night);
        Cause cause = hazards.get(h).cause(night);
        strength.merge(cause, now, Math::max);
        if (now > crossed[h]) {
          double added = (now - crossed[h]) * unharmed / Math.max(1e-12, 1 - crossed[h]);
          weight.merge(cause, added, Double::sum);
          if (added > mostAdded.getOrDefault(cause, 0.0)) {
            mostAdded.put(cause, added);
            worstDay.put(cause, hazards.get(h).day(night));
          }
          crossed[h] = now;
        }
      }
    }
    weight.put(Cause.NOT_TEMPERATURE, OTHER_REASONS * spared / Math.max(1, until - from));
    strength.put(Cause.NOT_TEMPERATURE, OTHER_REASONS);
  }

  /**
   * Goes through the nights of a life.
   *
   * @param hazards that it met
   * @param from first night that counts
   * @param until night after the last
   */
  static Causes of(List<Hazard> hazards, int from, int until) {
    return new Causes(hazards, from, until);
  }

  /** Chance that this cause alone would have harmed such a plant, 0..1. */
  double strength(Cause cause) {
    return strength.getOrDefault(cause, 0.0);
  }

  /** The causes of an outcome, likeliest first. */
  List<ScoredCause> of(Outcome outcome, LocalDate firstDay) {
    double sum = 0;
    for (Map.Entry<Cause, Double> w : weight.entrySet()) {
      sum += w.getValue() * fit(w.getKey(), outcome);
    }
    double all = sum;
    return Stream.of(Cause.values())
        .filter(weight::containsKey)
        .map(
            c ->
                new ScoredCause(
                    c,
                    strength(c),
                    weight.getOrDefault(c, 0.0) * fit(c, outcome) / all,
                    Optional.ofNullable(worstDay.get(c)).map(firstDay::plusDays)))
        .filter(c -> c.share() >= LEAST_SHARE)
        .sorted(Comparator.comparingDouble(ScoredCause::share).reversed())
        .toList();
  }

  /** How well a cause goes with an outcome, 0..1; common practice, no source. */
  private static double fit(Cause cause, Outcome outcome) {
    boolean tips = outcome == Outcome.TIPS;
    boolean dead = outcome == Outcome.DEAD;
    return switch (cause) {
      case FROZEN_ROOTS, CUT_ROOTS_FROZEN -> tips ? 0.5 : dead ? 1 : 0.8;
      case NOT_TEMPERATURE -> tips ? 0.7 : dead ? 1 : 0.8;
      case CAUGHT_UNHARDENED, DRIED_WHILE_FROZEN -> tips ? 0.8 : 1;
      case FROZEN_SHOOTS -> dead ? 0.6 : 1;
      case FROST_ON_WOKEN_GROWTH -> tips ? 1 : dead ? 0.5 : 0.8;
      case WOKE_IN_STORE -> tips ? 0.6 : 0.8;
      case CHILLED -> 0.8;
    };
  }
}
