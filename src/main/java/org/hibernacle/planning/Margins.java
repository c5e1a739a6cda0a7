package org.hibernacle.planning;

import java.util.List;
import org.hibernacle.climate.Winter;

/** How close root balls come to their limits. */
final class Margins {
  private Margins() {}

  /** The closest approach of all lives, over the nights that are judged. */
  static PlantPlan.Tightest tightest(WintersOnFile winters, List<Lived> lives) {
    Lived closest = lives.get(0);
    int night = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Lived lived : lives) {
      Winter winter = winters.winter(lived.winter());
      for (int n = winters.firstJudged(lived.winter()); n < Rules.endJudged(winter); n++) {
        double marginK = lived.trace().ballMinC()[n] - lived.state().rootLimitC()[n];
        if (marginK < least) {
          least = marginK;
          closest = lived;
          night = n;
        }
      }
    }
    Winter winter = winters.winter(closest.winter());
    return new PlantPlan.Tightest(
        winter.season(),
        winters.measuredOn(closest.winter(), closest.trace().ballMinHour()[night] / 24),
        winters.places().get(closest.path()[night]).name(),
        closest.trace().ballMinC()[night],
        closest.state().rootLimitC()[night]);
  }
}
