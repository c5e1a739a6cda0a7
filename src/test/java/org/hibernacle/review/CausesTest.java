package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.hibernacle.model.Outcome;
import org.junit.jupiter.api.Test;

class CausesTest {
  private static final LocalDate FIRST = LocalDate.of(2014, 10, 1);

  private static Hazard hazard(Cause cause, IntToDoubleFunction chance) {
    return new Hazard() {
      @Override
      public double chance(int night) {
        return chance.applyAsDouble(night);
      }

      @Override
      public Cause cause(int night) {
        return cause;
      }
    };
  }

  private static List<ScoredCause> of(Outcome outcome, Hazard... hazards) {
    return Causes.of(List.of(hazards), 0, 100).of(outcome, FIRST);
  }

  /** Standard normal table: N(1) = 0.8413, N(-1.96) = 0.0250. */
  @Test
  void chancesFollowTheNormalDistribution() {
    assertEquals(0.8413, Hazard.normal(1), 5e-5);
    assertEquals(0.0250, Hazard.normal(-1.96), 5e-5);
    assertEquals(0.5, Hazard.below(0), 1e-12);
    assertEquals(0.8413, Hazard.below(-Math.sqrt(5)), 5e-5);
    assertEquals(0.5, Hazard.past(1.5, 1.5, 0.4), 1e-12);
    assertEquals(0, Hazard.past(0, 1.5, 0.4));
  }

  @Test
  void sharesSumToOneAndTheLargestComesFirst() {
    List<ScoredCause> causes =
        of(
            Outcome.DEAD,
            hazard(Cause.FROZEN_ROOTS, n -> n >= 50 ? 0.9 : 0),
            hazard(Cause.DRIED_WHILE_FROZEN, n -> n >= 60 ? 0.3 : 0));
    assertEquals(1, causes.stream().mapToDouble(ScoredCause::share).sum(), 0.01);
    assertEquals(Cause.FROZEN_ROOTS, causes.get(0).cause());
    assertEquals(Optional.of(FIRST.plusDays(50)), causes.get(0).day());
    assertTrue(causes.get(0).isClear());
  }

  /** By hand: 0.8 strikes first, and leaves 0.2 of the 0.9 that comes later. */
  @Test
  void whatStrikesFirstTakesMost() {
    List<ScoredCause> causes =
        of(
            Outcome.BRANCHES,
            hazard(Cause.CAUGHT_UNHARDENED, n -> n >= 20 ? 0.8 : 0),
            hazard(Cause.DRIED_WHILE_FROZEN, n -> n >= 80 ? 0.9 : 0));
    assertEquals(Cause.CAUGHT_UNHARDENED, causes.get(0).cause());
    double later =
        causes.stream()
            .filter(c -> c.cause() == Cause.DRIED_WHILE_FROZEN)
            .findFirst()
            .orElseThrow()
            .share();
    assertEquals(0.8 / 0.18, causes.get(0).share() / later, 1e-9);
  }

  /** The same night is met once: a chance that does not grow adds nothing. */
  @Test
  void aChanceThatStaysAddsNothing() {
    double once = of(Outcome.DEAD, hazard(Cause.CHILLED, n -> n == 99 ? 0.5 : 0)).get(0).share();
    double twice = of(Outcome.DEAD, hazard(Cause.CHILLED, n -> n >= 98 ? 0.5 : 0)).get(0).share();
    assertEquals(once, twice, 0.01);
  }

  @Test
  void whereNothingHappenedItWasSomethingElse() {
    List<ScoredCause> causes = of(Outcome.DEAD, hazard(Cause.FROZEN_ROOTS, n -> 0.02));
    assertEquals(Cause.NOT_TEMPERATURE, causes.get(0).cause());
    assertTrue(causes.get(0).isClear());
    assertEquals(Optional.empty(), causes.get(0).day());
  }

  @Test
  void theOutcomeDecidesBetweenEquals() {
    Hazard roots = hazard(Cause.FROZEN_ROOTS, n -> n >= 50 ? 0.5 : 0);
    Hazard growth = hazard(Cause.FROST_ON_WOKEN_GROWTH, n -> n >= 50 ? 0.5 : 0);
    assertEquals(Cause.FROZEN_ROOTS, of(Outcome.DEAD, roots, growth).get(0).cause());
    assertEquals(Cause.FROST_ON_WOKEN_GROWTH, of(Outcome.TIPS, roots, growth).get(0).cause());
  }

  @Test
  void tellsHowStrongACauseWasByItself() {
    Causes causes = Causes.of(List.of(hazard(Cause.CHILLED, n -> n == 40 ? 0.7 : 0.1)), 0, 100);
    assertEquals(0.7, causes.strength(Cause.CHILLED), 1e-12);
    assertEquals(0, causes.strength(Cause.FROZEN_ROOTS));
  }
}
