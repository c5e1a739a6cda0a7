package org.hibernacle.report.pdf;

import java.util.function.ToDoubleFunction;

/**
 * Shares a width among columns so that what stands in them gets as low as can be: width goes step
 * by step to the column that it helps most, from the one that misses it least.
 */
final class WidthSearch {
  /** From a broad step to a fine one, in points. */
  private static final float[] STEPS_PT = {96, 48, 24, 12};

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
    float[] widths = start.clone();
    double lowest = total.applyAsDouble(widths);
    for (float step : STEPS_PT) {
      boolean better = true;
      while (better && lowest > enough) {
        better = false;
        float[] best = widths;
        for (int from = 0; from < widths.length; from++) {
          for (int to = 0; to < widths.length && widths[from] - step >= least[from]; to++) {
            float[] tried = widths.clone();
            tried[from] -= step;
            tried[to] += step;
            double height = to == from ? lowest : total.applyAsDouble(tried);
            if (height < lowest - NO_GAIN) {
              lowest = height;
              best = tried;
              better = true;
            }
          }
        }
        widths = best;
      }
    }
    return widths;
  }
}
