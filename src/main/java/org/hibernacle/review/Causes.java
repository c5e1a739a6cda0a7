package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hibernacle.model.Outcome;
import org.hibernacle.physiology.ChillingInjury;
import org.hipparchus.special.Erf;

/**
 * Weighs what may have harmed a plant. docs/review.md has the reasons for every figure here.
 *
 * <p>Limits are uncertain by {@value #LIMIT_SD_K} K and the air at the plant by {@value #AIR_SD_K}
 * K, so a plant that missed its limit by {@code m} was harmed with the chance that a normal deviate
 * of that spread is below {@code m}. Other harm is measured by an index that is 1 where it is
 * likely to begin. Each strength is weighed with how well the cause fits the outcome, and against a
 * fixed weight for all reasons that have nothing to do with temperature.
 */
final class Causes {
  static final double LIMIT_SD_K = 2;
  static final double AIR_SD_K = 1;

  /** A cause this weak does not outweigh all other reasons; own choice. */
  static final double OTHER_REASONS = 0.3;

  private static final double MARGIN_SD_K = Math.hypot(LIMIT_SD_K, AIR_SD_K);

  /**
   * Index of {@link org.hibernacle.physiology.Drying} at which half would be harmed; own choice.
   */
  private static final double DRYING_HALF = 1.5;

  private static final double DRYING_SPREAD = 0.4;

  /** Four weeks at 10 °C while at rest, in kelvins above 5 °C times nights; own choice. */
  private static final double WARMTH_HALF_K_NIGHTS = 140;

  /** Awake for that long in the dark; own choice. */
  private static final double DARK_HALF_NIGHTS = 21;

  private static final double WARMTH_SPREAD = 0.5;

  /** Storage limits of plants that do not harden are laid on the careful side by that much, K. */
  private static final double CHILL_CAUTION_K = 2;

  private static final double CUT_ROOTS_STRENGTH = 0.8;

  private Causes() {}

  /** All causes that left any trace, likeliest first. */
  static List<ScoredCause> of(Exposure lived, Outcome outcome) {
    record Weighed(Strength strength, double weight) {}
    List<Weighed> all = new ArrayList<>();
    for (Strength s : strengths(lived)) {
      all.add(new Weighed(s, s.value() * fit(s.cause(), outcome)));
    }
    all.add(
        new Weighed(
            new Strength(Cause.NOT_TEMPERATURE, OTHER_REASONS, Optional.empty()), OTHER_REASONS));
    double sum = all.stream().mapToDouble(Weighed::weight).sum();
    return all.stream()
        .sorted(
            Comparator.comparingDouble(Weighed::weight)
                .reversed()
                .thenComparing(w -> w.strength().cause()))
        .map(
            w ->
                new ScoredCause(
                    w.strength().cause(),
                    w.strength().value(),
                    w.weight() / sum,
                    w.strength().day()))
        .filter(c -> c.share() >= 0.005)
        .toList();
  }

  /** How strongly that life speaks for the cause, 0..1. */
  static double strength(Exposure lived, Cause cause) {
    return strengths(lived).stream()
        .filter(s -> s.cause() == cause)
        .mapToDouble(Strength::value)
        .findFirst()
        .orElse(0);
  }

  private record Strength(Cause cause, double value, Optional<LocalDate> day) {}

  private static List<Strength> strengths(Exposure lived) {
    Optional<Strength> roots =
        cold(Cause.FROZEN_ROOTS, lived.hardRoots(), Cold::marginK)
            .or(() -> cold(Cause.FROZEN_ROOTS, Optional.of(lived.roots()), Cold::marginIfHardK));
    Optional<Strength> shoots = cold(Cause.FROZEN_SHOOTS, lived.hardShoots(), Cold::marginK);
    Optional<Strength> caught = cold(Cause.CAUGHT_UNHARDENED, lived.unhardened(), Cold::marginK);
    double frost =
        Stream.of(roots, shoots, caught)
            .flatMap(Optional::stream)
            .mapToDouble(Strength::value)
            .max()
            .orElse(0);
    return Stream.of(
            roots,
            caught,
            shoots,
            lived.growth().map(Causes::growth),
            lived.frozen().map(Causes::dried),
            lived.store().flatMap(Causes::woke),
            lived.chill().map(c -> chilled(c, frost)),
            lived
                .cutRootsFrozenOn()
                .map(d -> new Strength(Cause.CUT_ROOTS_FROZEN, CUT_ROOTS_STRENGTH, Optional.of(d))))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Strength> cold(
      Cause cause, Optional<Cold> cold, ToDoubleFunction<Cold> marginK) {
    return cold.map(
        c -> new Strength(cause, belowLimit(marginK.applyAsDouble(c)), Optional.of(c.day())));
  }

  private static Strength growth(NewGrowth growth) {
    return new Strength(
        Cause.FROST_ON_WOKEN_GROWTH, belowLimit(growth.marginK()), Optional.of(growth.day()));
  }

  private static Strength dried(FrozenSpell spell) {
    double value = normal(Math.log(spell.dryingIndex() / DRYING_HALF) / DRYING_SPREAD);
    LocalDate end = spell.from().plusDays(spell.days() - 1);
    return new Strength(Cause.DRIED_WHILE_FROZEN, value, Optional.of(end));
  }

  private static Optional<Strength> woke(StoreWarmth store) {
    double index =
        store.warmthKNights() / WARMTH_HALF_K_NIGHTS + store.darkNightsAwake() / DARK_HALF_NIGHTS;
    return index <= 0
        ? Optional.empty()
        : Optional.of(
            new Strength(
                Cause.WOKE_IN_STORE,
                normal(Math.log(index) / WARMTH_SPREAD),
                Optional.of(store.warmestOn())));
  }

  /** Frost does more than chill does: what frost explains is not laid to chill. */
  private static Strength chilled(Chill chill, double frost) {
    double overK = ChillingInjury.excessK(chill.doseK());
    double value = normal((overK - CHILL_CAUTION_K) / LIMIT_SD_K) * (1 - frost);
    return new Strength(Cause.CHILLED, value, Optional.of(chill.day()));
  }

  /** Chance that a limit missed by less than nothing was missed indeed. */
  private static double belowLimit(double marginK) {
    return normal(-marginK / MARGIN_SD_K);
  }

  /** The normal distribution. */
  private static double normal(double deviate) {
    return Erf.erfc(-deviate / Math.sqrt(2)) / 2;
  }

  /** How well a cause goes with an outcome, 0..1; common practice, no source. */
  private static double fit(Cause cause, Outcome outcome) {
    boolean tips = outcome == Outcome.TIPS;
    boolean dead = outcome == Outcome.DEAD;
    return switch (cause) {
      case FROZEN_ROOTS, CUT_ROOTS_FROZEN -> tips ? 0.5 : dead ? 1 : 0.8;
      case CAUGHT_UNHARDENED, DRIED_WHILE_FROZEN -> tips ? 0.8 : 1;
      case FROZEN_SHOOTS -> dead ? 0.6 : 1;
      case FROST_ON_WOKEN_GROWTH -> tips ? 1 : dead ? 0.5 : 0.8;
      case WOKE_IN_STORE -> tips ? 0.6 : 0.8;
      case CHILLED -> 0.8;
      case NOT_TEMPERATURE -> 1;
    };
  }
}
