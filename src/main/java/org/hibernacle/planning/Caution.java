package org.hibernacle.planning;

import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;

/**
 * How careful a plan is: what it keeps in hand above every limit, and in how many winters on file
 * it may use that up.
 *
 * <p>Few winters on file know little of what may come, so more is kept in hand: {@value
 * #ONE_WINTER_K} K more with one, half of that with each further one, nothing from the {@value
 * #WINTERS_ENOUGH}th on. The figure is our own choice: coldest nights of winters differ by some
 * kelvin, of which sheltered root balls feel a part.
 *
 * @param marginK kept above every limit, K
 * @param winters on file
 * @param acceptedRiskOfTen seasons out of ten in which the keeper lets the margin be broken
 */
public record Caution(double marginK, int winters, int acceptedRiskOfTen) {
  private static final double ONE_WINTER_K = 2;
  private static final int WINTERS_ENOUGH = 4;

  /** With this many winters on file or fewer no risk is taken: one of three is no small part. */
  private static final int WINTERS_WITHOUT_RISK = 3;

  /** A plant of this priority or more takes no risk. */
  private static final int PRIORITY_WITHOUT_RISK = 4;

  /** The caution of the settings, with so many winters on file. */
  static Caution of(Settings settings, int winters) {
    return new Caution(
        settings.safetyMarginK() + widenedByK(winters), winters, settings.acceptedRiskOfTen());
  }

  /** What is added to the safety margin for want of winters, K. */
  static double widenedByK(int winters) {
    return winters >= WINTERS_ENOUGH ? 0 : ONE_WINTER_K / (1 << (winters - 1));
  }

  /** Winters on file in which a margin may be broken: the accepted risk of them, rounded down. */
  public int failuresAllowed() {
    return winters <= WINTERS_WITHOUT_RISK ? 0 : winters * acceptedRiskOfTen / 10;
  }

  /** The same for one plant: the dearest take no risk. */
  int failuresAllowed(Plant plant) {
    return plant.priority() >= PRIORITY_WITHOUT_RISK ? 0 : failuresAllowed();
  }
}
