package org.hibernacle.review;

/**
 * A share of few, with how little it says.
 *
 * @param successes of {@code trials}
 * @param trials 1 or more
 * @param low lower end of Wilson's 95 % interval, 0..1
 * @param high upper end, 0..1
 */
public record Proportion(int successes, int trials, double low, double high) {
  /** The share itself, 0..1. */
  public double share() {
    return (double) successes / trials;
  }
}
