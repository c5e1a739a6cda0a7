package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Optional;
import org.hibernacle.model.Place;

/**
 * The change between two stays.
 *
 * @param kind in the keeper's words
 * @param date on which the pot is carried
 * @param from where it stood
 * @param to where it goes
 * @param because what would happen on the next moving day in autumn, or would have happened on the
 *     one before in spring; empty where the date follows from another move
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
    RETURN
  }
}
