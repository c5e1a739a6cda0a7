package org.hibernacle.oracle;

import java.time.LocalDate;
import org.hibernacle.model.Season;
import org.hibernacle.planning.Rule;

/**
 * A rule that the oracle sees broken.
 *
 * @param rule which
 * @param winter in which
 * @param day on which the night begins
 * @param place name of the place
 * @param found what was met: °C; for {@link Rule#BALL_FROZEN} the share of ice; infinite where a
 *     rule has no measure
 * @param needed what the rule asks for, in the same measure
 */
public record Finding(
    Rule rule, Season winter, LocalDate day, String place, double found, double needed) {
  /** By how much the rule is missed, always positive. */
  double miss() {
    return Math.abs(found - needed);
  }
}
