package org.hibernacle.review;

import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.physiology.Hardening;
import org.hibernacle.planning.Life;

/**
 * Roots or shoots: a part of the plant with a limit of its own.
 *
 * @param hoursC temperature by hour, °C
 * @param minC lowest of each night, °C
 * @param minHour hour at which that was
 * @param limitC of each night, °C
 * @param leastC limit when not hardened, °C
 * @param hardestC limit when fully hardened, °C
 * @param end night after the last that counts
 */
record Tissue(
    double[] hoursC,
    double[] minC,
    int[] minHour,
    double[] limitC,
    double leastC,
    double hardestC,
    int end) {
  /** From this hardness on a limit counts as hardened. */
  private static final double HARDENED = 0.8;

  /** Less of a span than this is none, K. */
  private static final double NO_SPAN_K = 0.01;

  static Tissue roots(Plant plant, Season season, Life life, int end) {
    double[] limitC = life.state().rootLimitC();
    return new Tissue(
        life.edgeC(),
        life.trace().ballMinC(),
        life.trace().ballMinHour(),
        limitC,
        limitC[0],
        Hardening.midwinterRootLimitC(plant, season),
        end);
  }

  /** Shoots count until buds break. */
  static Tissue shoots(Plant plant, Life life, int end) {
    double[] limitC = life.state().shootLimitC();
    return new Tissue(
        life.airC(),
        life.trace().airMinC(),
        life.trace().airMinHour(),
        limitC,
        limitC[0],
        Hardening.shootLimitC(plant.species()),
        Math.min(end, life.state().budBreak()));
  }

  /** Kelvins above the limit of the night. */
  double marginK(int night) {
    return minC[night] - limitC[night];
  }

  /** 0 unhardened to 1 fully hard; 1 for what never hardens. */
  double hardness(int night) {
    double spanK = leastC - hardestC;
    return spanK < NO_SPAN_K ? 1 : Math.max(0, Math.min(1, (leastC - limitC[night]) / spanK));
  }

  boolean isHardened(int night) {
    return hardness(night) >= HARDENED;
  }
}
