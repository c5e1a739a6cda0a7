package org.hibernacle.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.physiology.Hardening;
import org.hibernacle.review.DoseResponse.Bounds;
import org.hibernacle.review.DoseResponse.Found;
import org.hibernacle.review.DoseResponse.Lt50;
import org.hibernacle.review.DoseResponse.Point;
import org.hibernacle.review.DoseResponse.Why;

/** Sets the cold that roots met beside what came of it, species by species. */
final class DoseResponses {
  private static final int FEWEST_ROWS = 6;

  private DoseResponses() {}

  /** One entry a species with two points or more, by name. */
  static List<DoseResponse> of(List<PlantReview> plants, Season season) {
    return points(plants, season).entrySet().stream()
        .filter(e -> e.getValue().size() > 1)
        .map(e -> new DoseResponse(e.getKey(), e.getValue(), found(e.getValue())))
        .toList();
  }

  /** Points by species whose roots they are, coldest first. */
  static Map<String, List<Point>> points(List<PlantReview> plants, Season season) {
    Map<String, List<Point>> points = new TreeMap<>();
    for (PlantReview p : plants) {
      point(p, season)
          .ifPresent(
              point ->
                  points
                      .computeIfAbsent(p.plant().rootSpecies().taxon(), t -> new ArrayList<>())
                      .add(point));
    }
    points
        .values()
        .forEach(
            list -> list.sort(Comparator.comparingDouble(Point::coldC).thenComparing(Point::id)));
    return points;
  }

  /**
   * A row that can tell something: its outcome is in the log, its roots harden, are those of the
   * species and not weakened or young, and its harm, if any, was likely done to hardened roots; or
   * it lost branches or died of nothing that is known.
   */
  private static Optional<Point> point(PlantReview p, Season season) {
    Plant plant = p.plant();
    boolean plain =
        plant.ownRootLimitC().isPresent()
            || Hardening.midwinterRootLimitC(plant, season) == plant.rootSpecies().rootLimitC();
    boolean hardens = plant.rootSpecies().group().hardens();
    boolean harmed = p.outcome().harmed();
    if (p.outcomeAssumed()
        || p.outcome() == Outcome.GONE
        || !plain
        || !hardens
        || (harmed && !tells(p))) {
      return Optional.empty();
    }
    return p.lived()
        .hardRoots()
        .map(cold -> new Point(plant.id(), cold.hardestC() + cold.marginK(), harmed));
  }

  private static boolean tells(PlantReview p) {
    return switch (p.likeliest().orElseThrow().cause()) {
      case FROZEN_ROOTS -> true;
      case NOT_TEMPERATURE -> p.outcome() != Outcome.TIPS;
      default -> false;
    };
  }

  /** What the points say. */
  static Found found(List<Point> points) {
    List<Point> harmed = points.stream().filter(Point::harmed).toList();
    List<Point> survivors = points.stream().filter(p -> !p.harmed()).toList();
    double warmestHarmedC = harmed.stream().mapToDouble(Point::coldC).max().orElse(Double.NaN);
    double coldestSurvivedC = survivors.stream().mapToDouble(Point::coldC).min().orElse(Double.NaN);
    Optional<Why> why = Optional.empty();
    if (harmed.isEmpty()) {
      why = Optional.of(Why.NONE_HARMED);
    } else if (survivors.isEmpty()) {
      why = Optional.of(Why.ALL_HARMED);
    } else if (points.size() < FEWEST_ROWS) {
      why = Optional.of(Why.TOO_FEW);
    } else if (warmestHarmedC <= coldestSurvivedC || isReversed(harmed, survivors)) {
      why = Optional.of(isReversed(harmed, survivors) ? Why.FLAT : Why.SEPARATED);
    }
    if (why.isEmpty()) {
      Optional<Lt50> figure = figure(points);
      if (figure.isPresent()) {
        return figure.get();
      }
    }
    return new Bounds(
        why.orElse(Why.FLAT), survivors.size(), coldestSurvivedC, harmed.size(), warmestHarmedC);
  }

  /** Whether all survivors met more cold than all that were harmed. */
  private static boolean isReversed(List<Point> harmed, List<Point> survivors) {
    double coldestHarmedC = harmed.stream().mapToDouble(Point::coldC).min().orElseThrow();
    double warmestSurvivedC = survivors.stream().mapToDouble(Point::coldC).max().orElseThrow();
    return warmestSurvivedC <= coldestHarmedC;
  }

  private static Optional<Lt50> figure(List<Point> points) {
    List<LogisticFit.Group> groups =
        points.stream()
            .map(p -> new LogisticFit.Group(new double[] {1, p.coldC()}, 1, p.harmed() ? 1 : 0))
            .toList();
    return LogisticFit.of(groups)
        .filter(fit -> fit.coefficients().getEntry(1) < 0)
        .flatMap(
            fit -> {
              LogisticFit.Dose dose = fit.dose(0.5, 0, 1);
              return fit.interval(0, 1)
                  .map(ends -> new Lt50(dose.value(), dose.standardError(), ends[0], ends[1]));
            });
  }
}
