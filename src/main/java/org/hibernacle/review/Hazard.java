package org.hibernacle.review;

import org.hipparchus.special.Erf;

/** Something that may harm a plant, night by night. */
interface Hazard {
  /** How far limits are off, standard deviation, K. */
  double LIMIT_SD_K = 2;

  /** How far the air at a plant is off, standard deviation, K. */
  double AIR_SD_K = 1;

  /** Both together. */
  double MARGIN_SD_K = Math.hypot(LIMIT_SD_K, AIR_SD_K);

  /** Chance that this night, or what it adds up to, crosses the threshold, 0..1. */
  double chance(int night);

  /** What the harm of this night would be called. */
  Cause cause(int night);

  /**
   * Chance that a limit is crossed by which the plant stayed above it by so much, as far as told.
   */
  static double below(double marginK) {
    return normal(-marginK / MARGIN_SD_K);
  }

  /** Day of the winter, counted from its first, on which the worst of that night fell. */
  default int day(int night) {
    return night;
  }

  /**
   * Chance that an index is past its threshold.
   *
   * @param index 0 or more
   * @param half index at which the chance is one half
   * @param spread standard deviation of the threshold's logarithm
   */
  static double past(double index, double half, double spread) {
    return index <= 0 ? 0 : normal(Math.log(index / half) / spread);
  }

  /** The normal distribution. */
  static double normal(double deviate) {
    return Erf.erfc(-deviate / Math.sqrt(2)) / 2;
  }
}
