package org.hibernacle.model;

import java.util.List;
import java.util.Optional;

/**
 * What a season changes in the inventory that the next one is planned from.
 *
 * @param season that is over
 * @param years one entry a plant, in the order of the inventory
 * @param rootLimits proposed for species
 * @param warmths proposed for places
 */
public record Revision(
    Season season, List<PlantYear> years, List<RootLimit> rootLimits, List<Warmth> warmths) {
  /**
   * How one plant came through.
   *
   * @param id of the plant
   * @param name for people
   * @param species its taxon
   * @param place where it spent midwinter
   * @param smallestMarginK closest that its root ball came to the limit, K; below zero it fell
   *     short
   * @param outcome of the log; empty where the log says nothing
   * @param cause likeliest, in words; empty without harm
   * @param remark of the keeper
   */
  public record PlantYear(
      String id,
      String name,
      String species,
      String place,
      double smallestMarginK,
      Optional<Outcome> outcome,
      String cause,
      String remark) {
    /** Whether the plant is there no more. */
    public boolean hasLeft() {
      return outcome.filter(o -> o == Outcome.DEAD || o == Outcome.GONE).isPresent();
    }
  }

  /**
   * Another midwinter root limit for a species.
   *
   * @param taxon whose roots are meant
   * @param oldC so far, °C
   * @param proposedC proposed, °C
   * @param reason in a sentence
   */
  public record RootLimit(String taxon, double oldC, double proposedC, String reason) {}

  /**
   * Another night warmth of a place.
   *
   * @param place its name
   * @param oldK so far, K
   * @param proposedK proposed, K
   * @param reason in a sentence
   */
  public record Warmth(String place, double oldK, double proposedK, String reason) {}

  public Revision {
    years = List.copyOf(years);
    rootLimits = List.copyOf(rootLimits);
    warmths = List.copyOf(warmths);
  }
}
