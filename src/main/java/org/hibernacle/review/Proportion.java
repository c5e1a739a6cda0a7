package org.hibernacle.review;

import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;

/**
 * A share of few, with how little it says.
 *
 * <p>The interval is Wilson's (1927, J. Amer. Statist. Assoc. 22:209-212), which keeps its promise
 * where the common one fails: with few trials and with shares near 0 or 1 (Newcombe 1998,
 * Statistics in Medicine 17:857-872).
 *
 * @param successes of {@code trials}
 * @param trials 1 or more
 * @param low lower end of the 95 % interval, 0..1
 * @param high upper end, 0..1
 */
public record Proportion(int successes, int trials, double low, double high) {
  private static final double CONFIDENCE = 0.95;

  /** So many of so many. */
  public static Proportion of(int successes, int trials) {
    double seen = (double) successes / trials;
    ConfidenceInterval wilson = BinomialProportion.getWilsonScoreInterval(trials, seen, CONFIDENCE);
    return new Proportion(
        successes,
        trials,
        Math.max(0, wilson.getLowerBound()),
        Math.min(1, wilson.getUpperBound()));
  }

  /** The share itself, 0..1. */
  public double share() {
    return (double) successes / trials;
  }
}
