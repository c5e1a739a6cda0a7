package org.hibernacle.thermal;

/**
 * The steady heat balance of a glazed house.
 *
 * <p>{@code rise = tau G A_floor / (U A_cover + 1206 V n / 3600)}: the sun that comes in through
 * the glass against what cover and air changes carry off, 1206 J/m3K being the heat of air. Heat
 * stored in pots and soil is left out, so the rise is that of a long clear noon.
 *
 * @param lightShare of the sun that the cover lets in, tau, 0..1
 * @param floorM2 floor
 * @param coverM2 glass of roof and walls
 * @param coverWPerM2K loss through it, U: 5.7 to 6.8 for single glass or film, 3.4 to 4.0 double
 *     (US extension services)
 * @param volumeM3 air inside
 * @param changesPerH air changes through gaps, 1/h
 */
record Glasshouse(
    double lightShare,
    double floorM2,
    double coverM2,
    double coverWPerM2K,
    double volumeM3,
    double changesPerH) {
  /**
   * A small single-glazed house, neither new nor draughty: what a place of this kind is taken for.
   */
  static final Glasshouse SMALL = new Glasshouse(0.7, 6, 18, 6, 12, 1);

  private static final double AIR_J_PER_M3K = 1206;

  /** Heat it loses for each kelvin it is warmer than outside, W/K. */
  double lossWPerK() {
    return coverWPerM2K * coverM2 + AIR_J_PER_M3K * volumeM3 * changesPerH / 3600;
  }

  /** How much warmer it is than outside for each W/m2 of sun on the level, K. */
  double riseKPerWPerM2() {
    return lightShare * floorM2 / lossWPerK();
  }
}
