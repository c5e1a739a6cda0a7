package org.hibernacle.planning;

import java.time.LocalDate;
import org.hibernacle.model.Season;

/**
 * A rule broken on one day of one winter.
 *
 * @param rule which
 * @param winter on file in which it happened
 * @param day in that winter
 * @param place name of the place where the plant stood
 * @param foundC the temperature that broke it, °C (for {@link Rule#BALL_FROZEN} the root ball's)
 * @param limitC the limit of that day without the safety margin, °C
 * @param deficitK by how much limit and margin were missed, K (> 0)
 */
public record Violation(
    Rule rule,
    Season winter,
    LocalDate day,
    String place,
    double foundC,
    double limitC,
    double deficitK) {

  /** By how much the limit itself was missed, K; zero where only the safety margin was. */
  public double belowLimitK() {
    return rule.asksForMore() ? Math.max(0, limitC - foundC) : deficitK;
  }
}
