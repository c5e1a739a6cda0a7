package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Optional;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;

/**
 * The change between two stays.
 *
 * @param kind in the keeper's words
 * @param date on which the pot is carried
 * @param from where it stood
 * @param to where it goes
 * @param because going away, the first rule broken if the plant stayed until its next move; coming
 *     back, the rule broken had it come some moving days earlier; empty where none is
 * @param made whether it was made already, by the keeper's log
 */
public record Move(
    Kind kind, LocalDate date, Place from, Place to, Optional<Violation> because, boolean made) {
  /** A move that is still to come. */
  public Move(Kind kind, LocalDate date, Place from, Place to, Optional<Violation> because) {
    this(kind, date, from, to, because, false);
  }

  /** In the keeper's words. */
  public enum Kind {
    /** Home to the ground. */
    MOVE_DOWN,
    /** To anything with a roof. */
    MOVE_IN,
    /** From a roofed place to the ground in spring. */
    STEP_OUT,
    /** Back home. */
    RETURN
  }

  /**
   * Nothing goes home before this day, a fortnight past midwinter: what was put away stays away
   * until the coldest time is past (common practice, no source). A few winters on file may show no
   * frost after December, which is luck and no rule.
   */
  public static LocalDate earliestReturn(Season season) {
    return season.midwinter().plusDays(14);
  }
}
