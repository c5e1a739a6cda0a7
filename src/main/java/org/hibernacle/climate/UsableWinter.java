package org.hibernacle.climate;

import java.util.List;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;

/**
 * A season on file that is complete enough to plan with.
 *
 * @param season which
 * @param bridged short gaps of that season that were closed by straight lines, in order
 */
public record UsableWinter(Season season, List<DateSpan> bridged) {
  public UsableWinter {
    bridged = List.copyOf(bridged);
  }
}
