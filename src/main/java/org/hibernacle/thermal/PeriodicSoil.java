package org.hibernacle.thermal;

/**
 * Soil under a yearly sine at its surface: where a column starts from.
 *
 * <p>{@code T(z, t) = Tm - As exp(-z sqrt(pi / (365 a))) cos(2 pi / 365 (t - t0 - z / 2 sqrt(365 /
 * (pi a))))}. No snow, no freezing. Source: Kusuda, Achenbach 1965, Earth temperature and thermal
 * diffusivity at selected stations in the United States, ASHRAE Transactions 71(1):61-75.
 *
 * @param meanC yearly mean of the surface, °C
 * @param amplitudeK half the yearly swing, K
 * @param coldestDay day of the year on which the surface is coldest, 0..365
 * @param diffusivityM2PerDay of the soil, m2/day (> 0)
 */
record PeriodicSoil(
    double meanC, double amplitudeK, double coldestDay, double diffusivityM2PerDay) {
  private static final double YEAR_DAYS = 365;

  /**
   * Temperature at a depth and time, °C.
   *
   * @param depthM m (>= 0)
   * @param day of the year, any real number
   */
  double at(double depthM, double day) {
    double damping = depthM * Math.sqrt(Math.PI / (YEAR_DAYS * diffusivityM2PerDay));
    double lag = depthM / 2 * Math.sqrt(YEAR_DAYS / (Math.PI * diffusivityM2PerDay));
    double phase = 2 * Math.PI / YEAR_DAYS * (day - coldestDay - lag);
    return meanC - amplitudeK * Math.exp(-damping) * Math.cos(phase);
  }
}
