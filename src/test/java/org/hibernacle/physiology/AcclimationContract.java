package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.hibernacle.physiology.Acclimation.Phase;
import org.junit.jupiter.api.Test;

/**
 * What every set of constants of {@link Acclimation} has to keep, whatever it stands for: single
 * days whose outcome is known from elsewhere, and properties over the whole range. A set's own test
 * names its days, their source and their tolerance.
 */
abstract class AcclimationContract {
  private static final double[] LIMITS = {0, 0.03, 0.2, 0.5, 0.8, 0.97, 1};
  private static final double[] MEANS_C = {-40, -20, -8, 0, 3, 6, 9, 11, 12.5, 14, 18, 25, 35};

  /**
   * One day.
   *
   * @param name what it shows
   * @param kernel the constants
   * @param beforeC limit before it, °C
   * @param meanC mean temperature of the day, °C
   * @param restComplete whether rest is over
   * @param readiness 0..1
   * @param afterC limit after it, °C
   */
  record OneDay(
      String name,
      Acclimation kernel,
      double beforeC,
      double meanC,
      boolean restComplete,
      double readiness,
      double afterC) {}

  /** Constants to be held to the contract. */
  abstract List<Acclimation> sets();

  /** Days whose outcome was not computed with this program. */
  abstract List<OneDay> knownDays();

  /** How well they have to be met, K. */
  abstract double toleranceK();

  @Test
  void knownDaysComeOut() {
    for (OneDay day : knownDays()) {
      double afterC =
          day.kernel.next(day.beforeC, day.meanC, day.restComplete, true, day.readiness);
      assertEquals(day.afterC, afterC, toleranceK(), day.name);
    }
  }

  @Test
  void theLimitStaysBetweenItsEnds() {
    everywhere(
        (kernel, limitC, meanC, complete) -> {
          double nextC = kernel.next(limitC, meanC, complete, true, 1);
          assertTrue(nextC >= kernel.mostC() && nextC <= kernel.leastC(), nextC + "");
        });
  }

  @Test
  void coldNeverSoftensAndWarmthNeverHardens() {
    everywhere(
        (kernel, limitC, meanC, complete) -> {
          double nextC = kernel.next(limitC, meanC, complete, true, 1);
          double thresholdC = phase(kernel, complete).thresholdC();
          assertTrue((nextC - limitC) * (meanC - thresholdC) >= -1e-9, limitC + " at " + meanC);
          assertEquals(limitC, kernel.next(limitC, thresholdC, complete, true, 1), 1e-12);
        });
  }

  @Test
  void aColderDayNeverLeavesItLessHardy() {
    everywhere(
        (kernel, limitC, meanC, complete) -> {
          double nextC = kernel.next(limitC, meanC, complete, true, 1);
          assertTrue(kernel.next(limitC, meanC - 1, complete, true, 1) <= nextC);
        });
  }

  /** Nothing is gained at full hardness, nothing is lost without any. */
  @Test
  void theEndsAreReachedAndKept() {
    for (Acclimation kernel : sets()) {
      for (boolean complete : new boolean[] {false, true}) {
        assertEquals(kernel.mostC(), kernel.next(kernel.mostC(), -30, complete, true, 1));
        assertEquals(kernel.leastC(), kernel.next(kernel.leastC(), 30, complete, true, 1));
      }
      assertEquals(0, kernel.hardness(kernel.leastC()));
      assertEquals(0.5, kernel.hardness((kernel.leastC() + kernel.mostC()) / 2), 1e-12);
      assertEquals(1, kernel.hardness(kernel.mostC()));
    }
  }

  @Test
  void readinessScalesWhatColdGivesAndNothingElse() {
    everywhere(
        (kernel, limitC, meanC, complete) -> {
          double whole = kernel.next(limitC, meanC, complete, true, 1);
          double none = kernel.next(limitC, meanC, complete, true, 0);
          boolean cold = meanC < phase(kernel, complete).thresholdC();
          assertEquals(cold ? limitC : whole, none, 1e-12);
          double small = kernel.next(limitC, meanC, complete, true, 0.02);
          assertTrue(small <= none + 1e-9 && small >= whole - 1e-9, small + "");
        });
  }

  @Test
  void nothingIsLostBeforeAnyColdWasFelt() {
    everywhere(
        (kernel, limitC, meanC, complete) -> {
          double nextC = kernel.next(limitC, meanC, complete, false, 1);
          assertTrue(nextC <= limitC + 1e-9, nextC + "");
        });
  }

  /** Half-day steps at half the rates: a day is a step short enough, to a twelfth of the span. */
  @Test
  void halvingTheStepChangesLittle() {
    everywhere(
        (kernel, limitC, meanC, complete) -> {
          if (Math.abs(meanC) > 20) {
            return;
          }
          Acclimation half =
              new Acclimation(
                  kernel.leastC(),
                  kernel.mostC(),
                  halved(kernel.atRest()),
                  halved(kernel.quiescent()),
                  kernel.theta());
          double noonC = half.next(limitC, meanC, complete, true, 1);
          double twoC = half.next(noonC, meanC, complete, true, 1);
          double oneC = kernel.next(limitC, meanC, complete, true, 1);
          assertEquals(twoC, oneC, (kernel.leastC() - kernel.mostC()) / 12);
        });
  }

  /** Through whole autumns, from the same start and until rest is complete. */
  @Test
  void aColderAutumnNeverLeavesItLessHardy() {
    long seed = 8_102;
    SplittableRandom random = new SplittableRandom(seed);
    for (Acclimation kernel : sets()) {
      for (int run = 0; run < 20; run++) {
        double mildC = kernel.leastC();
        double coldC = mildC;
        for (int day = 0; day < 100; day++) {
          double meanC = random.nextDouble(-25, 25);
          double colderK = Math.max(0, random.nextDouble(-5, 10));
          mildC = kernel.next(mildC, meanC, false, true, 1);
          coldC = kernel.next(coldC, meanC - colderK, false, true, 1);
          assertTrue(coldC <= mildC + 1e-12, "seed " + seed + " run " + run + " day " + day);
        }
      }
    }
  }

  /** A property of one day. */
  interface Property {
    void holds(Acclimation kernel, double limitC, double meanC, boolean restComplete);
  }

  private void everywhere(Property property) {
    for (Acclimation kernel : sets()) {
      for (double share : LIMITS) {
        double limitC = kernel.mostC() + share * (kernel.leastC() - kernel.mostC());
        for (double meanC : MEANS_C) {
          property.holds(kernel, limitC, meanC, false);
          property.holds(kernel, limitC, meanC, true);
        }
      }
    }
  }

  private static Phase phase(Acclimation kernel, boolean restComplete) {
    return restComplete ? kernel.quiescent() : kernel.atRest();
  }

  private static Phase halved(Phase phase) {
    return new Phase(phase.thresholdC(), phase.acclimation() / 2, phase.deacclimation() / 2);
  }
}
