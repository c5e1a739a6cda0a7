package org.hibernacle.review;

import java.util.List;
import java.util.Optional;
import org.hibernacle.review.DoseResponse.Point;

/**
 * Moves a root limit by what plants stood and did not stand, a little at a time.
 *
 * <p>The limit so far is held as if it were known to {@value #HELD_SD_K} K (normal), which is more
 * than is known, so that few plants move it little; a plant that met cold {@code x} is harmed with
 * the chance {@code e + (1 - e - f) N((limit - x) / s)}, where {@code s} is {@value #PLANT_SD_K} K,
 * for plants and places differ, {@code e} is {@value #OTHER_HARM}, for plants die of other things,
 * and {@code f} is {@value #LUCK}, for some are lucky and some logs are wrong. What is wanted is
 * the limit that is likeliest given all plants (Bayes).
 *
 * <p>Only plants that contradict the limit may move it: down at most to the coldest that one stood
 * below it, up at most to the warmest that harmed one less than {@value #FARTHEST_K} K above it,
 * and by no more than {@value #MOST_K_A_YEAR} K a year. All figures are our own choice.
 */
final class LimitLearning {
  /** How far one year moves a limit at most, K. */
  static final double MOST_K_A_YEAR = 1;

  /** Less than this is not worth a change, K. */
  static final double LEAST_K = 0.2;

  private static final double HELD_SD_K = 1;
  private static final double PLANT_SD_K = 1.5;
  private static final double OTHER_HARM = 0.1;
  private static final double LUCK = 0.05;

  /** Harm further above the limit than this is laid to something else, K. */
  private static final double FARTHEST_K = 3;

  private static final double STEP_K = 0.02;
  private static final double REACH_K = 8;

  private LimitLearning() {}

  /** The correction of one species, if there is any. */
  static Optional<Correction> correction(String taxon, double oldC, List<Point> points) {
    List<Point> stood = points.stream().filter(p -> !p.harmed()).toList();
    List<Point> harmed =
        points.stream().filter(p -> p.harmed() && p.coldC() < oldC + FARTHEST_K).toList();
    int survivedBelow = (int) stood.stream().filter(p -> p.coldC() < oldC).count();
    int harmedAbove = (int) harmed.stream().filter(p -> p.coldC() > oldC).count();
    double coldestSurvivedC = stood.stream().mapToDouble(Point::coldC).min().orElse(Double.NaN);
    double warmestHarmedC = harmed.stream().mapToDouble(Point::coldC).max().orElse(Double.NaN);
    double wantedC = wantedC(oldC, points);
    double lowestC = survivedBelow > 0 ? Math.max(coldestSurvivedC, oldC - MOST_K_A_YEAR) : oldC;
    double highestC = harmedAbove > 0 ? Math.min(warmestHarmedC, oldC + MOST_K_A_YEAR) : oldC;
    double proposedC = Math.round(10 * Math.max(lowestC, Math.min(highestC, wantedC))) / 10.0;
    if (Math.abs(proposedC - oldC) < LEAST_K - 1e-9) {
      return Optional.empty();
    }
    return Optional.of(
        new Correction.RootLimit(
            taxon,
            oldC,
            proposedC,
            wantedC,
            points.size(),
            survivedBelow,
            harmedAbove,
            coldestSurvivedC,
            warmestHarmedC));
  }

  /** The likeliest limit, °C. */
  static double wantedC(double oldC, List<Point> points) {
    double bestC = oldC;
    double most = Double.NEGATIVE_INFINITY;
    int steps = (int) Math.round(REACH_K / STEP_K);
    for (int i = -steps; i <= steps; i++) {
      double limitC = oldC + i * STEP_K;
      double offSd = (limitC - oldC) / HELD_SD_K;
      double likely = -offSd * offSd / 2;
      for (Point point : points) {
        double harmed = harmed(limitC, point.coldC());
        likely += Math.log(point.harmed() ? harmed : 1 - harmed);
      }
      if (likely > most) {
        most = likely;
        bestC = limitC;
      }
    }
    return bestC;
  }

  private static double harmed(double limitC, double coldC) {
    double normal = Hazard.normal((limitC - coldC) / PLANT_SD_K);
    return OTHER_HARM + (1 - OTHER_HARM - LUCK) * normal;
  }
}
