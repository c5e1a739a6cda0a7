package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.Move;
import org.hibernacle.thermal.ModelError;

/** Proposes what to change before the next season is planned. */
final class Corrections {
  /** Hours of a logger from which a place is judged: four weeks. */
  private static final int FEWEST_HOURS = 28 * 24;

  /** A place's warmth is changed if the model was off by this on average, K. */
  private static final double LEAST_PLACE_K = 0.5;

  /** Most that one season changes it, K. */
  private static final double MOST_PLACE_K = 3;

  /** Most that one season makes a date later, days. */
  private static final int MOST_DAYS = 7;

  /** Fewer days than this are not needless. */
  private static final int FEWEST_DAYS = 4;

  private Corrections() {}

  /** Root limits of species, by name. */
  static List<Correction> rootLimits(
      List<PlantReview> plants, Map<String, List<DoseResponse.Point>> points) {
    List<Correction> corrections = new ArrayList<>();
    points.forEach(
        (taxon, all) ->
            LimitLearning.correction(taxon, limitC(plants, taxon), all)
                .ifPresent(corrections::add));
    return corrections;
  }

  private static double limitC(List<PlantReview> plants, String taxon) {
    return plants.stream()
        .map(p -> p.plant().rootSpecies())
        .filter(s -> s.taxon().equals(taxon))
        .findFirst()
        .orElseThrow()
        .rootLimitC();
  }

  /** Warmth of places whose logger shows the model to be always too warm or too cold. */
  static List<Correction> places(List<PlaceReview> places) {
    List<Correction> corrections = new ArrayList<>();
    for (PlaceReview p : places) {
      Optional<ModelError> error = p.modelError().filter(e -> e.hours() >= FEWEST_HOURS);
      if (error.isEmpty() || isHeld(p.place()) || isWithin(error.get().meanK())) {
        continue;
      }
      double stepK = Math.max(-MOST_PLACE_K, Math.min(MOST_PLACE_K, -error.get().meanK()));
      double oldK = p.place().warmerByK();
      double proposedK = Math.round((oldK + stepK) * 10) / 10.0;
      corrections.add(
          new Correction.PlaceWarmth(
              p.place().name(), oldK, proposedK, error.get().meanK(), error.get().hours()));
    }
    return corrections;
  }

  private static boolean isWithin(double meanK) {
    return Math.abs(meanK) < LEAST_PLACE_K;
  }

  /** What a thermostat holds, or the sun warms, is not mended by warmth at night. */
  private static boolean isHeld(Place place) {
    return place.lowestHeldC().isPresent()
        || place.highestHeldC().isPresent()
        || place.kind() == PlaceKind.GLASSHOUSE;
  }

  /**
   * A plant's first move away from home, if it came at least four days before home was dangerous in
   * a winter that was no milder than most of those planned for.
   *
   * @param dangerFrom first day on which home would have broken the safety margin
   */
  static Optional<Correction> laterMove(
      PlantReview plant, Optional<LocalDate> dangerFrom, WinterCompared winter, Settings settings) {
    Optional<Move.Kind> first =
        plant.plannedStays().size() < 2
            ? Optional.empty()
            : Optional.of(
                Move.Kind.of(
                    plant.plannedStays().get(0).place(),
                    plant.plannedStays().get(1).place(),
                    plant.plant().home()));
    if (first.isEmpty() || dangerFrom.isEmpty() || 2 * winter.rank() > winter.known().size() + 1) {
      return Optional.empty();
    }
    LocalDate planned = plant.plannedStays().get(1).fromInclusive();
    LocalDate danger = dangerFrom.get();
    return Stream.iterate(planned.plusDays(MOST_DAYS), d -> d.minusDays(1))
        .takeWhile(d -> !d.isBefore(planned.plusDays(FEWEST_DAYS)))
        .filter(d -> !d.isAfter(danger) && settings.isMovingDay(d))
        .findFirst()
        .map(
            d ->
                new Correction.LaterMove(
                    plant.plant().id(), first.get(), planned, d, danger, winter.rank()));
  }
}
