package org.hibernacle.oracle;

import java.time.LocalDate;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;

/** When mulch and fleece lie, and what lets heat through; docs/models/soil.md and root-ball.md. */
final class Covers {
  static final double MULCH_W_PER_MK = 0.3;
  static final double FLEECE_M2K_PER_W = 0.06;

  private Covers() {}

  /**
   * From the day that the plan gives the place, or else 1 November in the north and 1 May in the
   * south, to 15 April or 15 October. A wrapped pot is wrapped as long as it stands there.
   */
  static boolean lie(Place place, Season season, LocalDate day) {
    if (place.wrapOf().isPresent()) {
      return true;
    }
    LocalDate from = place.coverFrom().map(season::sameDay).orElse(season.start().plusMonths(4));
    LocalDate to = season.start().plusMonths(9).plusDays(14);
    return !day.isBefore(from) && day.isBefore(to);
  }
}
