package org.hibernacle.review;

import java.util.List;
import org.hibernacle.review.DoseResponse.Point;
import org.hipparchus.special.Erf;

/**
 * Moves a root limit by what plants stood and did not stand, a little at a time.
 *
 * <p>The limit so far is taken as uncertain by {@value Hazard#LIMIT_SD_K} K (normal); a plant that
 * met cold {@code x} is harmed with the chance {@code e + (1 - e) N((limit - x) / s)}, where {@code
 * s} is {@value #PLANT_SD_K} K, for plants and places differ, and {@code e} = {@value #OTHER_HARM},
 * for plants die of other things. What is wanted is the mean of the limit given all plants (Bayes).
 * A plant that was never near its limit changes nothing by itself. One year moves a limit by no
 * more than {@value #MOST_K_A_YEAR} K. All figures are our own choice.
 */
final class LimitLearning {
  /** How far one year moves a limit at most, K. */
  static final double MOST_K_A_YEAR = 1;

  /** Less than this is not worth a change, K. */
  static final double LEAST_K = 0.2;

  private static final double PLANT_SD_K = 1.5;
  private static final double OTHER_HARM = 0.1;
  private static final double LUCK = 0.05;
  private static final double STEP_K = 0.02;
  private static final double REACH_K = 8;

  private LimitLearning() {}

  /** Where the limit would go without the bound on a year's step, °C. */
  static double wantedC(double oldC, List<Point> points) {
    double bestC = oldC;
    double most = Double.NEGATIVE_INFINITY;
    int steps = (int) Math.round(REACH_K / STEP_K);
    for (int i = -steps; i <= steps; i++) {
      double limitC = oldC + i * STEP_K;
      double offSd = (limitC - oldC) / Hazard.LIMIT_SD_K;
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

  /** The same with the bound, rounded to a tenth. */
  static double proposedC(double oldC, double wantedC) {
    double stepK = Math.max(-MOST_K_A_YEAR, Math.min(MOST_K_A_YEAR, wantedC - oldC));
    return Math.round((oldC + stepK) * 10) / 10.0;
  }

  /** Whether the plant's cold, given its fate, can tell something about the limit. */
  static boolean isInformative(double oldC, Point point) {
    return Math.abs(wantedC(oldC, List.of(point)) - oldC) >= 0.05;
  }

  private static double harmed(double limitC, double coldC) {
    double normal = Erf.erfc((coldC - limitC) / PLANT_SD_K / Math.sqrt(2)) / 2;
    return OTHER_HARM + (1 - OTHER_HARM - LUCK) * normal;
  }
}
