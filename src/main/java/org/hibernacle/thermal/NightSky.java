package org.hibernacle.thermal;

/**
 * What a surface loses to the night sky, which shines less warmth back than things at the
 * temperature of the air would.
 *
 * <p>Clear sky: {@code e = 1.24 (ea / T)^(1/7)}, ea in hPa, T in K (Brutsaert 1975, Water Resources
 * Research 11:742-744, cited from memory). It is good to about 0.03, or 10 W/m2, over dry and humid
 * lowland; high mountains lose more. Vapour is not on file: the air is taken to be saturated at the
 * day's lowest temperature (FAO Irrigation and Drainage Paper 56, eq. 11 and 48, from memory),
 * which in dry country tells too little of the loss. How clear it is is guessed from the day's
 * range as well, see {@link #clearShare}.
 */
final class NightSky {
  /** Emissivity of soil, bark, moss, and glazed or plain clay; a usual round figure. */
  static final double SURFACE_EMISSIVITY_SHARE = 0.95;

  private static final double STEFAN_W_PER_M2K4 = 5.670374419e-8;
  private static final double ZERO_C_IN_K = 273.15;

  private NightSky() {}

  /**
   * Emissivity of a clear sky against the temperature of the air near the ground, 0..1.
   *
   * @param airC near the ground, °C (-70..60)
   * @param vapourHPa vapour pressure there, hPa (> 0)
   */
  static double emissivity(double airC, double vapourHPa) {
    return Math.min(1, 1.24 * Math.pow(vapourHPa / (airC + ZERO_C_IN_K), 1.0 / 7));
  }

  /** Vapour pressure of air with that dew point, hPa (FAO 56, eq. 11). */
  static double vapourHPa(double dewPointC) {
    return 6.108 * Math.exp(17.27 * dewPointC / (dewPointC + 237.3));
  }

  /**
   * How much of a clear sky's loss remains under that day's clouds, 0.05..1: {@code 1.35 Rs / Rso -
   * 0.35} (FAO 56, eq. 39), with the sunshine {@code Rs} of {@link Sunshine} and three quarters of
   * the sun above the air for {@code Rso} (eq. 37 at sea level); all cited from memory.
   *
   * @param rangeK daily range of air temperature, K (>= 0)
   */
  static double clearShare(double rangeK) {
    double sun = Math.min(1, Sunshine.PER_ROOT_KELVIN_SHARE * Math.sqrt(rangeK) / 0.75);
    return Math.max(0.05, 1.35 * sun - 0.35);
  }

  /** Loss of a level surface at the temperature of the air, W/m2. */
  static double lossWPerM2(double airC, double aboveEmissivity) {
    return (1 - aboveEmissivity) * radiatedWPerM2(airC + ZERO_C_IN_K);
  }

  /** What a surface and black surroundings exchange by radiation per kelvin between them. */
  static double radiationWPerM2K(double airC) {
    return 4 * radiatedWPerM2(airC + ZERO_C_IN_K) / (airC + ZERO_C_IN_K);
  }

  /**
   * Temperature of a level surface that the air warms as fast as the sky cools it, °C: {@code h (Ta
   * - Ts) = eps sigma (Ts^4 - e Ta^4)}. Without warmth from below and without dew or hoar, so it is
   * the lowest it can get.
   *
   * @param airC °C
   * @param aboveEmissivity of all that the surface sees, 0..1
   * @param convectionWPerM2K from the air, without radiation
   */
  static double surfaceC(double airC, double aboveEmissivity, double convectionWPerM2K) {
    double air = airC + ZERO_C_IN_K;
    double surface = air;
    double step = 1;
    for (int i = 0; i < 20 && Math.abs(step) > 1e-9; i++) {
      double gain = convectionWPerM2K * (air - surface) + aboveEmissivity * radiatedWPerM2(air);
      double loss = radiatedWPerM2(surface);
      step = (gain - loss) / (convectionWPerM2K + 4 * loss / surface);
      surface += step;
    }
    return surface - ZERO_C_IN_K;
  }

  private static double radiatedWPerM2(double kelvin) {
    return SURFACE_EMISSIVITY_SHARE * STEFAN_W_PER_M2K4 * kelvin * kelvin * kelvin * kelvin;
  }
}
