package org.hibernacle.climate;

/**
 * Warmth that wakes a plant, hour by hour: half a cosine wave from 4 °C up to an optimum of 25 °C,
 * a steeper one down to nothing at 36 °C.
 *
 * <p>Source: the asymmetric curvilinear form of Anderson J.L., Richardson E.A., Kesner C.D. 1986,
 * Validation of chill unit and flower bud phenology models for 'Montmorency' sour cherry, Acta
 * Hort. 184:71-78, without stress factor.
 */
public final class GrowingDegreeHours {
  private static final double BASE_C = 4;
  private static final double BEST_C = 25;
  private static final double TOP_C = 36;
  private static final double RANGE_K = BEST_C - BASE_C;

  private GrowingDegreeHours() {}

  /**
   * Degree hours of one hour, K·h (0..21).
   *
   * @param airC mean of the hour, °C
   */
  public static double ofHour(double airC) {
    if (airC <= BASE_C || airC >= TOP_C) {
      return 0;
    } else if (airC <= BEST_C) {
      return RANGE_K / 2 * (1 - Math.cos(Math.PI * (airC - BASE_C) / RANGE_K));
    }
    return RANGE_K * (1 - Math.sin(Math.PI / 2 * (airC - BEST_C) / (TOP_C - BEST_C)));
  }
}
