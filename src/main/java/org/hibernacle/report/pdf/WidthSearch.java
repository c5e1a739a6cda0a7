package org.hibernacle.report.pdf;

import java.util.function.ToDoubleFunction;

/**
 * Shares a width among columns so that what stands in them gets as low as can be: width goes step
 * by step to the column that it helps most, from the one that misses it least.
 */
final class WidthSearch {
  /** From a broad step to a fine one, in points. */
  private static final float[] STEPS_PT = {96, 48, 24, 12};

  /** Of what all others can spare. */
  private static final float[] SHARES = {1, 0.75f, 0.5f, 0.25f};

  /** Less is no gain. */
  private static final double NO_GAIN = 0.01;

  private WidthSearch() {}

  /**
   * Better widths than those to begin with, of the same sum.
   *
   * @param start in points
   * @param least below which none goes that is not below from the start, in points
   * @param enough total height with which the search ends
   * @param total height under such widths
   */
  static float[] lowest(
      float[] start, float[] least, double enough, ToDoubleFunction<float[]> total) {
    Best best = new Best(total, enough);
    best.tried(start);
    for (float step : STEPS_PT) {
      boolean better = true;
      while (better && !best.isEnough()) {
        float[] widths = best.widths;
        better = false;
        for (int to = 0; to < widths.length; to++) {
          for (int from = 0; from < widths.length; from++) {
            if (from != to && widths[from] - step >= least[from]) {
              float[] tried = widths.clone();
              tried[from] -= step;
              tried[to] += step;
              better |= best.tried(tried);
            }
          }
          for (float share : SHARES) {
            better |= best.tried(gathered(widths, least, to, share));
          }
        }
      }
    }
    return best.widths;
  }

  /**
   * Takes a share of what all others can spare: a little width may help nobody, much of it does.
   */
  private static float[] gathered(float[] widths, float[] least, int to, float share) {
    float finest = STEPS_PT[STEPS_PT.length - 1];
    float[] gathered = widths.clone();
    for (int i = 0; i < widths.length; i++) {
      if (i != to && widths[i] > least[i]) {
        float taken = finest * (float) Math.floor(share * (widths[i] - least[i]) / finest);
        gathered[i] -= taken;
        gathered[to] += taken;
      }
    }
    return gathered;
  }

  /** The lowest so far. */
  private static final class Best {
    private final ToDoubleFunction<float[]> total;
    private final double enough;
    private float[] widths = {};
    private double lowest = Double.POSITIVE_INFINITY;

    Best(ToDoubleFunction<float[]> total, double enough) {
      this.total = total;
      this.enough = enough;
    }

    boolean isEnough() {
      return lowest <= enough;
    }

    /** Keeps these if they are lower, and tells whether they are. */
    boolean tried(float[] tried) {
      double height = total.applyAsDouble(tried);
      if (height < lowest - NO_GAIN) {
        lowest = height;
        widths = tried.clone();
        return true;
      }
      return false;
    }
  }
}
