package org.hibernacle.oracle;

import java.time.LocalDate;
import org.hibernacle.model.Season;

/** When mulch and fleece lie, and what lets heat through; docs/models/soil.md and root-ball.md. */
final class Covers {
  static final double MULCH_W_PER_MK = 0.3;
  static final double FLEECE_M2K_PER_W = 0.06;

  private Covers() {}

  /** From 1 November to 15 April in the north, from 1 May to 15 October in the south. */
  static boolean lie(Season season, LocalDate day) {
    LocalDate from = season.start().plusMonths(4);
    LocalDate to = season.start().plusMonths(9).plusDays(14);
    return !day.isBefore(from) && day.isBefore(to);
  }
}
