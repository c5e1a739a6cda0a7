package org.hibernacle.model;

/**
 * Lowest and highest air temperature of a day.
 *
 * @param minC lowest, °C (-70..60)
 * @param maxC highest, °C; not below {@code minC}
 */
public record DailyExtremes(double minC, double maxC) {
  public DailyExtremes {
    if (!(minC >= -70 && maxC <= 60 && minC <= maxC)) {
      throw new IllegalArgumentException("not a day's extremes: " + minC + " to " + maxC);
    }
  }

  /** Highest minus lowest, K. */
  public double rangeK() {
    return maxC - minC;
  }

  /** Middle of the two, °C. */
  public double meanC() {
    return (minC + maxC) / 2;
  }
}
