package org.hibernacle.physiology;

import org.hibernacle.model.Foliage;

/**
 * Forecasts when a deciduous plant stands bare: once days are shorter than 12 h, cold below 12 °C
 * is summed, and 60 K·d of it bring the last leaf down; a frost of -4 °C does so a week later. Own
 * estimate: gives the second half of October in an inland garden at 50° N, early November in a mild
 * coastal one.
 */
final class LeafFall {
  private static final double SHORT_DAY_H = 12;
  private static final double COLD_BELOW_C = 12;
  private static final double COLD_DEGREE_DAYS = 60;
  private static final double KILLING_FROST_C = -4;
  private static final int NIGHTS_AFTER_FROST = 7;

  private double coldDegreeDays;
  private int nightsSinceFrost = -1;
  private boolean dormant;

  /**
   * Lets one day pass.
   *
   * @param meanC air around the plant, °C
   * @param minC air around the plant, °C
   * @param dayLengthH h
   * @param secondHalf whether the season's coldest time is past, when short days no longer count
   */
  void day(double meanC, double minC, double dayLengthH, boolean secondHalf) {
    if (dayLengthH >= SHORT_DAY_H || secondHalf) {
      return;
    }
    coldDegreeDays += Math.max(0, COLD_BELOW_C - meanC);
    if (nightsSinceFrost >= 0) {
      nightsSinceFrost++;
    } else if (minC <= KILLING_FROST_C) {
      nightsSinceFrost = 0;
    }
    dormant |= coldDegreeDays >= COLD_DEGREE_DAYS || nightsSinceFrost >= NIGHTS_AFTER_FROST;
  }

  /** Whether the plant has gone to rest; a deciduous one is bare by then. */
  boolean dormant() {
    return dormant;
  }

  /** Whether a plant of that foliage is bare. */
  boolean bare(Foliage foliage) {
    return dormant && foliage == Foliage.DECIDUOUS;
  }
}
