package org.hibernacle.physiology;

import org.hibernacle.model.Group;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Plant.Vigour;
import org.hibernacle.model.Season;
import org.hibernacle.model.Species;

/**
 * Fits {@link Acclimation} to the roots and the shoots of a plant. All constants here are our own
 * choices, with their basis:
 *
 * <ul>
 *   <li>Rates are per kelvin of span between the unhardened and the midwinter limit. Shoots harden
 *       within about three weeks of near-freezing days, roots over about six, and roots lose
 *       hardness more slowly (Smit-Spinks et al. 1985; Mityga and Lanphear 1971; Lindström and
 *       Nyström 1987).
 *   <li>Roots follow the root ball and do not answer to day length; shoots gain nothing at days
 *       over 13.5 h and all of it below 11.5 h (two-stage hardening: Howell and Weiser 1970).
 *   <li>Unhardened shoots of hardy trees are this year's wood in early autumn; a light frost takes
 *       leaves that are about to fall and no wood (common practice, no source).
 *   <li>Midwinter shoot limit: the zone's cold end plus 5 K for fine twigs, 2.5 K for Mediterranean
 *       plants, an estimate.
 *   <li>Subtropical and tropical plants do not harden: their unhardened limit counts for both.
 *   <li>Roots disturbed within the season's year count as young: a quarter of the span (young roots
 *       hardly harden: Mityga and Lanphear 1971; pairs of young and old in
 *       docs/models/hardening.md). A weak plant keeps three quarters of it. A keeper's own root
 *       limit replaces the midwinter limit as it stands.
 *   <li>A species known only by its genus has the cautious row's limits.
 * </ul>
 */
public final class Hardening {
  /** Fine twigs die back this much above the cold end of the zone, K; own choice. */
  static final double TWIGS_OVER_ZONE_K = 5;

  /**
   * Leathery Mediterranean evergreens come closer to it, K: olives of zone 8b (-9.4 °C) take harm
   * from about -7 °C, a tender cultivar from -9.5 (Barranco et al. 2005; docs/sources.md).
   */
  static final double LEATHERY_OVER_ZONE_K = 2.5;

  private static final double YOUNG_ROOT_SHARE = 0.25;
  private static final double WEAK_SHARE = 0.75;

  private Hardening() {}

  /** Midwinter shoot limit, °C, an estimate. */
  public static double shootLimitC(Species species) {
    return species.group().hardens()
        ? Math.min(unhardenedShootC(species), species.zone().coldEndC() + overZoneK(species))
        : species.unhardenedLimitC();
  }

  private static double overZoneK(Species species) {
    return species.group() == Group.MEDITERRANEAN ? LEATHERY_OVER_ZONE_K : TWIGS_OVER_ZONE_K;
  }

  /** Unhardened shoot limit, °C, an estimate. */
  static double unhardenedShootC(Species species) {
    return switch (species.group()) {
      case HARDY_CONIFER, HARDY_DECIDUOUS, HARDY_EVERGREEN -> -7;
      case TENDER_ROOTED_HARDY -> -5;
      case MEDITERRANEAN -> -4;
      case SUBTROPICAL, TROPICAL -> species.unhardenedLimitC();
    };
  }

  /** How the plant's shoots harden. */
  static Acclimation shoots(Species species) {
    double least = unhardenedShootC(species);
    double most = shootLimitC(species);
    double span = least - most;
    return new Acclimation(
        least,
        most,
        new Acclimation.Phase(12, 0.018 * span, 0.003 * span),
        new Acclimation.Phase(5, 0.012 * span, 0.006 * span),
        3);
  }

  /** How the plant's roots harden in that season. */
  static Acclimation roots(Plant plant, Season season) {
    double most = midwinterRootLimitC(plant, season);
    boolean hardens = plant.rootSpecies().group().hardens();
    double least = hardens ? Math.max(plant.rootSpecies().unhardenedLimitC(), most) : most;
    double span = least - most;
    return new Acclimation(
        least,
        most,
        new Acclimation.Phase(10, 0.012 * span, 0.003 * span),
        new Acclimation.Phase(5, 0.010 * span, 0.004 * span),
        3);
  }

  /** Midwinter root limit of this plant in this season, °C, after root work and vigour. */
  public static double midwinterRootLimitC(Plant plant, Season season) {
    Species species = plant.rootSpecies();
    double least = species.unhardenedLimitC();
    if (plant.ownRootLimitC().isPresent()) {
      return plant.ownRootLimitC().getAsDouble();
    }
    if (!species.group().hardens()) {
      return least;
    }
    double share = 1;
    boolean young =
        plant
            .lastRootWork()
            .filter(day -> !day.isBefore(season.start().minusMonths(6)))
            .filter(day -> day.isBefore(season.endExclusive()))
            .isPresent();
    if (young) {
      share *= YOUNG_ROOT_SHARE;
    }
    if (plant.vigour() == Vigour.WEAK) {
      share *= WEAK_SHARE;
    }
    return least + share * (species.rootLimitC() - least);
  }

  /** Share of the gain that day length allows shoots, 0..1. */
  static double shortDayReadiness(double dayLengthH) {
    return Math.max(0, Math.min(1, (13.5 - dayLengthH) / 2));
  }
}
