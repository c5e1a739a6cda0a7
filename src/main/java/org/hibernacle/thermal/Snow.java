package org.hibernacle.thermal;

/**
 * Snow as a blanket: how well it insulates by how dense it is.
 *
 * <p>{@code k = 0.023 + 0.234 rho} below 0.156 g/cm3, {@code k = 0.138 - 1.01 rho + 3.233 rho^2}
 * from there to 0.6, rho in g/cm3. Source: Sturm, Holmgren, König, Morris 1997, The thermal
 * conductivity of seasonal snow, Journal of Glaciology 43(143):26-41. The two branches differ by
 * 0.0004 W/mK where they meet; single measurements lie up to half of the value away.
 */
final class Snow {
  /**
   * Density planned with, kg/m3: snow that has lain and settled for weeks. It insulates half as
   * well as fresh snow, so the plan errs to the cold side. Own choice.
   */
  static final double SETTLED_KG_PER_M3 = 300;

  private static final double LOOSE_BELOW_G_PER_CM3 = 0.156;

  private Snow() {}

  /**
   * Conductivity, W/mK.
   *
   * @param densityKgPerM3 0..600; else {@link IllegalArgumentException}
   */
  static double conductivityWPerMK(double densityKgPerM3) {
    if (!(densityKgPerM3 >= 0 && densityKgPerM3 <= 600)) {
      throw new IllegalArgumentException("densityKgPerM3 must be 0..600 but is " + densityKgPerM3);
    }
    double rho = densityKgPerM3 / 1000;
    return rho < LOOSE_BELOW_G_PER_CM3
        ? 0.023 + 0.234 * rho
        : 0.138 - 1.01 * rho + 3.233 * rho * rho;
  }

  /**
   * Resistance of a layer, m2K/W: {@code d / k}.
   *
   * @param depthM m (>= 0)
   * @param densityKgPerM3 0..600
   */
  static double resistanceM2KPerW(double depthM, double densityKgPerM3) {
    return depthM / conductivityWPerMK(densityKgPerM3);
  }

  /** Resistance of settled snow of that depth, m2K/W. */
  static double settledM2KPerW(double depthM) {
    return depthM == 0 ? 0 : resistanceM2KPerW(depthM, SETTLED_KG_PER_M3);
  }
}
