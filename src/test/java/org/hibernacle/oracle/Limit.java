package org.hibernacle.oracle;

import org.hibernacle.model.Group;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;

/** The cold that roots or shoots stand, night by night; docs/models/hardening.md. */
final class Limit {
  /**
   * One line of the page's table.
   *
   * @param thresholdC below it is cold, above it is warm
   * @param gainPerKd share of the span won a kelvin-day of cold
   * @param lossPerKd share of the span lost a kelvin-day of warmth
   */
  private record Rate(double thresholdC, double gainPerKd, double lossPerKd) {}

  private final double leastC;
  private final double hardestC;
  private final Rate atRest;
  private final Rate after;
  private double nowC;
  private boolean metCold;

  private Limit(double leastC, double hardestC, Rate atRest, Rate after) {
    this.leastC = Math.max(leastC, hardestC);
    this.hardestC = hardestC;
    this.atRest = atRest;
    this.after = after;
    this.nowC = this.leastC;
  }

  static Limit ofRoots(Plant plant, Season planned) {
    Species roots = plant.rootSpecies();
    double leastC = roots.unhardenedLimitC();
    double spanK = leastC - roots.rootLimitC();
    boolean disturbed =
        plant.lastRootWork().filter(d -> !d.isBefore(planned.start().minusMonths(6))).isPresent();
    if (disturbed) {
      spanK *= 0.25;
    }
    if (plant.vigour() == Plant.Vigour.WEAK) {
      spanK *= 0.75;
    }
    double hardestC = plant.ownRootLimitC().orElse(leastC - spanK);
    if (!plant.species().group().hardens()) {
      leastC = plant.ownRootLimitC().orElse(leastC);
      hardestC = leastC;
    }
    leastC = Math.max(leastC, hardestC);
    return new Limit(leastC, hardestC, new Rate(10, 0.012, 0.003), new Rate(5, 0.010, 0.004));
  }

  static Limit ofShoots(Species species) {
    double leastC = -7;
    double aboveZoneK = 5;
    if (species.group() == Group.TENDER_ROOTED_HARDY) {
      leastC = -5;
    }
    if (species.group() == Group.MEDITERRANEAN) {
      leastC = -4;
      aboveZoneK = 2.5;
    }
    double hardestC = Math.min(leastC, species.zone().coldEndC() + aboveZoneK);
    if (!species.group().hardens()) {
      leastC = species.unhardenedLimitC();
      hardestC = leastC;
    }
    return new Limit(leastC, hardestC, new Rate(12, 0.018, 0.003), new Rate(5, 0.012, 0.006));
  }

  double nowC() {
    return nowC;
  }

  /** How much of its hardness it has, 0..1; 1 for what never hardens. */
  double hardness(double limitC) {
    double spanK = leastC - hardestC;
    return spanK < 0.01 ? 1 : (leastC - limitC) / spanK;
  }

  /** Lets a night pass; readiness 0 (long days) to 1. */
  void night(double meanC, boolean resting, double readiness) {
    double spanK = leastC - hardestC;
    if (spanK > 0) {
      Rate rate = resting ? atRest : after;
      double toGo = (nowC - hardestC) / spanK;
      double coldK = Math.min(0, meanC - rate.thresholdC());
      double warmK = metCold ? Math.max(0, meanC - rate.thresholdC()) : 0;
      double gainK = coldK * rate.gainPerKd() * spanK * toGo * readiness;
      double lossK = warmK * rate.lossPerKd() * spanK * (1 - Math.pow(toGo, resting ? 1 : 3));
      nowC = Math.max(hardestC, Math.min(leastC, nowC + gainK + lossK));
    }
    metCold |= meanC < atRest.thresholdC();
  }
}
