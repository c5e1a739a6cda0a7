package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hibernacle.climate.Winter;

/** How close lives come to what harms, and what of it happened. */
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

  /** The worst violation of any winter; ties by date. */
  static Optional<Violation> worst(List<Lived> lives) {
    return lives.stream()
        .flatMap(lived -> lived.violations().stream())
        .map(Lived.Broken::violation)
        .max(
            Comparator.comparingDouble(Violation::deficitK)
                .thenComparing(Violation::day, Comparator.reverseOrder()));
  }

  /** All violations, one a rule and winter: the worst of each, by date. */
  static List<Violation> summary(List<Lived> lives) {
    List<Violation> worst = new ArrayList<>();
    for (Lived lived : lives) {
      for (Rule rule : Rule.values()) {
        lived.violations().stream()
            .map(Lived.Broken::violation)
            .filter(v -> v.rule() == rule)
            .max(Comparator.comparingDouble(Violation::deficitK))
            .ifPresent(worst::add);
      }
    }
    worst.sort(Comparator.comparing(Violation::day).thenComparing(Violation::rule));
    return worst;
  }
}
