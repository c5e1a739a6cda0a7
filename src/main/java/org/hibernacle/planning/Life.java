package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.physiology.PlantState;
import org.hibernacle.thermal.BallTrace;

/**
 * What one plant went through in one winter: arrays by night, where night {@code k} begins at noon
 * of day {@code k} of the winter, and by hour. Arrays are not to be changed by callers.
 *
 * @param placeByNight index of the place
 * @param trace of its root ball and the air around it
 * @param state of the plant
 * @param edgeC temperature at the edge of the root ball, °C, by hour
 * @param airC air around the plant, °C, by hour
 * @param weekMeanC mean air of the seven nights up to and with this one in the place of that night,
 *     °C, by night
 * @param dryness index of {@link org.hibernacle.physiology.Drying} after each night
 * @param limitsBroken limits crossed and other rules broken, without any safety margin, in order of
 *     nights
 * @param marginsBroken the same with the safety margin
 */
public record Life(
    int[] placeByNight,
    BallTrace trace,
    PlantState state,
    double[] edgeC,
    double[] airC,
    double[] weekMeanC,
    double[] dryness,
    List<OnNight> limitsBroken,
    List<OnNight> marginsBroken) {

  /**
   * A rule broken.
   *
   * @param night that it counts for
   * @param violation what was broken
   */
  public record OnNight(int night, Violation violation) {
    /** Whether a limit itself was missed by a tenth of a kelvin or more, not only a margin. */
    public boolean ofLimit() {
      return Cost.ticksOfLimit(violation) > 0;
    }
  }

  public Life {
    limitsBroken = List.copyOf(limitsBroken);
    marginsBroken = List.copyOf(marginsBroken);
  }

  /** Nights. */
  public int nights() {
    return placeByNight.length;
  }

  /** First day on which the plant, along these places, would have missed a margin or a rule. */
  public Optional<LocalDate> firstDanger(LocalDate firstDay) {
    return marginsBroken.stream().findFirst().map(b -> firstDay.plusDays(b.night()));
  }
}
