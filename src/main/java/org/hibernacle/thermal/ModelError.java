package org.hibernacle.thermal;

import java.time.LocalDate;
import java.util.Optional;
import org.hibernacle.climate.Winter;

/**
 * How far the modelled air of a place was from its logger: model minus logger, so above zero the
 * model was too warm.
 *
 * @param winters in which the logger has hours
 * @param hours compared, at least 1
 * @param meanK mean difference, K
 * @param rmsK root mean square of the differences, K
 * @param largestK difference furthest from zero, K
 * @param largestOn its day
 */
public record ModelError(
    int winters, int hours, double meanK, double rmsK, double largestK, LocalDate largestOn) {

  /**
   * Compares over one winter; empty if the logger has nothing there.
   *
   * @param modelC air of the place as if there were no logger, one value an hour, °C
   */
  static Optional<ModelError> of(double[] modelC, LoggedAir logged, Winter winter) {
    int hours = 0;
    double sumK = 0;
    double squares = 0;
    double largestK = 0;
    int largestHour = 0;
    for (int hour = 0; hour < modelC.length; hour++) {
      if (!logged.has(hour)) {
        continue;
      }
      double offK = modelC[hour] - logged.airC(hour);
      if (hours == 0 || Math.abs(offK) > Math.abs(largestK)) {
        largestK = offK;
        largestHour = hour;
      }
      hours++;
      sumK += offK;
      squares += offK * offK;
    }
    return hours == 0
        ? Optional.empty()
        : Optional.of(
            new ModelError(
                1,
                hours,
                sumK / hours,
                Math.sqrt(squares / hours),
                largestK,
                winter.first().plusDays(largestHour / 24)));
  }

  /** Both together, each hour counting the same. */
  public ModelError and(ModelError other) {
    int both = hours + other.hours;
    double squares = hours * rmsK * rmsK + other.hours * other.rmsK * other.rmsK;
    ModelError larger = Math.abs(other.largestK) > Math.abs(largestK) ? other : this;
    return new ModelError(
        winters + other.winters,
        both,
        (hours * meanK + other.hours * other.meanK) / both,
        Math.sqrt(squares / both),
        larger.largestK,
        larger.largestOn);
  }
}
