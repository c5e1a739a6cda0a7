package org.hibernacle.physiology;

import java.util.OptionalDouble;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.ChillNeed;

/**
 * What ends a plant's rest and what wakes it afterwards.
 *
 * <p>Rest is complete at the earliest of three: chill portions, chilling hours at or below 7.2 °C
 * without lower end, or a calendar cap at the start of February (August in the south), because the
 * Dynamic Model gives almost nothing below 0 °C. The earliest is taken since waking early is the
 * risk. Portions are published for two rows of the species table only; the others are labelled
 * estimates by class. Six to eight weeks below 4.4 °C are the usual need of temperate woody plants
 * (Rutgers NJAES FS528), about 1000 to 1300 hours.
 *
 * @param portions chill portions that end rest
 * @param hours chilling hours that end rest
 * @param growingDegreeHours heat after rest at which buds break, K·h; own estimates by group
 */
public record Rest(double portions, double hours, double growingDegreeHours) {
  /** The needs of a species. */
  static Rest of(Species species) {
    double portions =
        species
            .chillPortionsLow()
            .orElse(
                switch (species.chillNeed()) {
                  case NONE -> 0;
                  case LOW -> 25;
                  case MEDIUM -> 50;
                  case HIGH -> 75;
                });
    double hours =
        switch (species.chillNeed()) {
          case NONE -> 0;
          case LOW -> 400;
          case MEDIUM -> 1000;
          case HIGH -> 1500;
        };
    return new Rest(portions, hours, heatToBudBreakKh(species).orElse(Double.POSITIVE_INFINITY));
  }

  /** Heat after rest at which buds break, K·h; empty for plants without a rest. An estimate. */
  public static OptionalDouble heatToBudBreakKh(Species species) {
    boolean early = species.newGrowthLimitC() <= -3;
    return switch (species.group()) {
      case HARDY_DECIDUOUS -> OptionalDouble.of(early ? 3600 : 5000);
      case TENDER_ROOTED_HARDY ->
          OptionalDouble.of(species.foliage() == Foliage.DECIDUOUS ? 5000 : 6500);
      case HARDY_CONIFER, HARDY_EVERGREEN, MEDITERRANEAN -> OptionalDouble.of(6500);
      case SUBTROPICAL, TROPICAL -> OptionalDouble.empty();
    };
  }

  /** Whether the plant has a rest that chilling must end. */
  static boolean rests(Species species) {
    return species.chillNeed() != ChillNeed.NONE && species.group().hardens();
  }
}
