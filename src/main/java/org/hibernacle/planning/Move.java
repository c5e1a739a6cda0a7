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
 */
public record Move(Kind kind, LocalDate date, Place from, Place to, Optional<Violation> because) {
  /** In the keeper's words. */
  public enum Kind {
    /** Home to the ground. */
    MOVE_DOWN,
    /** To anything with a roof. */
    MOVE_IN,
    /** From a roofed place to the ground in spring. */
    STEP_OUT,
    /** Back home. */
    RETURN;

    /** What a move between two places is called for a plant of that home. */
    public static Kind of(Place from, Place to, String home) {
      if (to.name().equals(home)) {
        return RETURN;
      }
      if (to.roofed()) {
        return MOVE_IN;
      }
      return from.roofed() ? STEP_OUT : MOVE_DOWN;
    }
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
