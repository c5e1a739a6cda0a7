package org.hibernacle.physiology;

import java.util.OptionalDouble;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.Place.Wind;
import org.hibernacle.model.Species;

/**
 * How far a plant has dried out while its root ball was frozen through: leaves and twigs lose water
 * that the roots can not take up.
 *
 * <p>A run of frozen days adds up to an index. At {@value #THAW_AND_WATER} it is time to thaw and
 * water. One night at which the core was not frozen through ends the run: the plant can drink. Each
 * frozen day adds {@code foliage * habit * sun * wind * air * (1 - snow) / 25}, so that an
 * evergreen of middling habit, in full sun and open to wind, in air of -4 °C, has 25 days. That 3
 * to 4 weeks, and all weights: common practice, no source. The weight of the air is what it could
 * take up, in proportion to the saturation pressure over ice (Magnus' formula, from memory).
 */
public final class Drying {
  /** Index at which the ball is thawed and watered. */
  public static final double THAW_AND_WATER = 1;

  /** Ice share of a core at and above which the ball counts as frozen through. */
  public static final double FROZEN_THROUGH_SHARE = 0.99;

  private static final double DAYS_IN_THE_OPEN_DAYS = 25;
  private static final double ANCHOR_AIR_C = -4;

  private Drying() {}

  /**
   * The index after one more day and night.
   *
   * @param before index so far
   * @param coreIceShare least ice in the core, 0..1
   * @param species of the top: the leaves lose the water
   * @param place where it stands
   * @param airMeanC mean air around it, °C
   * @param snowCoverShare share of the crown that lies in snow, 0..1; empty where not known
   */
  public static double next(
      double before,
      double coreIceShare,
      Species species,
      Place place,
      double airMeanC,
      OptionalDouble snowCoverShare) {
    if (coreIceShare < FROZEN_THROUGH_SHARE) {
      return 0;
    }
    double bareShare = 1 - Math.min(1, Math.max(0, snowCoverShare.orElse(0)));
    double weight = foliage(species) * habit(species) * sun(place) * wind(place);
    return before + weight * air(airMeanC) * bareShare / DAYS_IN_THE_OPEN_DAYS;
  }

  private static double foliage(Species species) {
    return switch (species.foliage()) {
      case EVERGREEN -> 1;
      case SEMI_EVERGREEN -> 0.7;
      case DECIDUOUS -> 0.35;
    };
  }

  private static double habit(Species species) {
    return switch (species.dryingRisk()) {
      case LOW -> 0.9;
      case MEDIUM -> 1;
      case HIGH -> 1.15;
    };
  }

  private static double sun(Place place) {
    if (place.sun() == Sun.FULL) {
      return 1;
    }
    return place.sun() == Sun.PART ? 0.85 : 0.7;
  }

  private static double wind(Place place) {
    if (place.roofed()) {
      return 0.5;
    }
    return place.wind() == Wind.OPEN ? 1 : 0.7;
  }

  /** Saturation pressure over ice against that at the anchor, at most doubled. */
  private static double air(double airMeanC) {
    return Math.min(2, saturationOverIce(airMeanC) / saturationOverIce(ANCHOR_AIR_C));
  }

  private static double saturationOverIce(double airC) {
    return Math.exp(22.46 * airC / (272.62 + airC));
  }
}
