package org.hibernacle.review;

import org.hibernacle.climate.Winter;
import org.hibernacle.model.Group;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Life;
import org.hibernacle.planning.OneWinter;

/**
 * What warmth under a roof took from a hardy plant's rest: from the first of the cold months until
 * rest is complete, by how much each week's mean air was above both 5 °C and what home had.
 *
 * @param overK of each night, K (>= 0)
 */
record Warmth(double[] overK) {
  /** Week's mean above which a roof is too warm for a plant at rest, as for plans, °C. */
  private static final double REST_CEILING_C = 5;

  static Warmth of(OneWinter one, Plant plant, Life life, Life atHome) {
    double[] overK = new double[life.nights()];
    Group group = plant.species().group();
    Winter winter = one.winter();
    if (group.restsCold() && group != Group.TENDER_ROOTED_HARDY) {
      int from = Math.max(0, winter.index(winter.season().coreStart()));
      for (int n = from; n < Math.min(overK.length, life.state().restEnd()); n++) {
        if (one.simulator().places().get(life.placeByNight()[n]).roofed()) {
          double outsideC = Math.max(REST_CEILING_C, atHome.weekMeanC()[n]);
          overK[n] = Math.max(0, life.weekMeanC()[n] - outsideC);
        }
      }
    }
    return new Warmth(overK);
  }

  /** Nights before that one that were too warm. */
  int nights(int until) {
    int nights = 0;
    for (int n = 0; n < Math.min(until, overK.length); n++) {
      nights += overK[n] > 0 ? 1 : 0;
    }
    return nights;
  }

  /** All of it before a night, kelvin times nights. */
  double sumK(int until) {
    double sum = 0;
    for (int n = 0; n < Math.min(until, overK.length); n++) {
      sum += overK[n];
    }
    return sum;
  }
}
