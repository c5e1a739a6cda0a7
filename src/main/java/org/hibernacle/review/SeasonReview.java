package org.hibernacle.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Season;

/**
 * The whole review of one season.
 *
 * @param season reviewed
 * @param inventory as planned
 * @param winter beside those planned for
 * @param plants one entry a plant, in the order of the inventory
 * @param places one entry a place, in the order of the inventory
 * @param punctuality one entry a kind of move that was planned or happened
 * @param survival across the collection: all, then by species, group, place, pot size, root work
 * @param doseResponses one a species with more than one row, by name
 * @param corrections proposed: root limits, places, dates
 * @param notes what was assumed and what is wrong
 */
public record SeasonReview(
    Season season,
    Inventory inventory,
    WinterCompared winter,
    List<PlantReview> plants,
    List<PlaceReview> places,
    List<Punctuality> punctuality,
    List<Survival> survival,
    List<DoseResponse> doseResponses,
    List<Correction> corrections,
    List<Diagnostic> notes) {
  public SeasonReview {
    plants = List.copyOf(plants);
    places = List.copyOf(places);
    punctuality = List.copyOf(punctuality);
    survival = List.copyOf(survival);
    doseResponses = List.copyOf(doseResponses);
    corrections = List.copyOf(corrections);
    notes = List.copyOf(notes);
  }

  /** Plants for which the plan itself failed; to be said first. */
  public Stream<PlantReview> planFailures() {
    return plants.stream().filter(p -> p.verdict() == PlanVerdict.FAILED);
  }

  /** Plants that were harmed. */
  public Stream<PlantReview> harmed() {
    return plants.stream().filter(p -> p.outcome().harmed());
  }

  /** Worth of the plants that died; empty if none of them has a value. */
  public OptionalDouble valueLost() {
    return plants.stream()
        .filter(p -> p.outcome() == Outcome.DEAD)
        .flatMapToDouble(p -> p.plant().value().stream())
        .reduce(Double::sum);
  }
}
