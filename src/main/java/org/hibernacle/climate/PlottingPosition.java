package org.hibernacle.climate;

/**
 * What chance each of some ordered values stands for: the i-th of n is taken to be reached with a
 * chance of {@code (i - a) / (n + 1 - 2a)}. Chances between two of them lie on a straight line.
 *
 * <p>Sources: Weibull 1939 and Hazen 1914, cited from memory; as quantiles of a sample they are
 * types 6 and 5 of Hyndman R.J., Fan Y. 1996, Sample quantiles in statistical packages, The
 * American Statistician 50:361-365. Equal to R's within 1e-6.
 */
public enum PlottingPosition {
  /** The first of nine values stands for 1 in 10: nothing is claimed beyond what a tenth tells. */
  WEIBULL(0),
  /** The first of five values stands for 1 in 10: dates lie closer together, so nearer to risk. */
  HAZEN(0.5);

  /** Nine tenths of ten are nine: the ends themselves are not reached, whatever the last bit. */
  private static final double ROUNDING_SHARE = 1e-9;

  private final double shift;

  PlottingPosition(double shift) {
    this.shift = shift;
  }

  /**
   * The value that is reached with that chance; the first or last one where the chance lies beyond.
   *
   * @param sorted at least one, smallest first
   * @param chance 0..1
   */
  public double quantile(double[] sorted, double chance) {
    return quantile(sorted, chance, shift);
  }

  /** Whether the chance lies between those of the first and the last of so many values. */
  public boolean reaches(int count, double chance) {
    double first = (1 - shift) / (count + 1 - 2 * shift) + ROUNDING_SHARE;
    return chance > first && chance < 1 - first;
  }

  static double quantile(double[] sorted, double chance, double shift) {
    double place = chance * (sorted.length + 1 - 2 * shift) + shift;
    double within = Math.max(1, Math.min(sorted.length, place));
    int below = (int) Math.min(sorted.length - 1, Math.floor(within));
    if (below < 1) {
      return sorted[0];
    }
    return sorted[below - 1] + (within - below) * (sorted[below] - sorted[below - 1]);
  }
}
