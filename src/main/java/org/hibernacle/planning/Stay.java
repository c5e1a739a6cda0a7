package org.hibernacle.planning;

import java.time.LocalDate;
import org.hibernacle.model.Place;

/**
 * A plant in a place over a run of days.
 *
 * @param place where
 * @param fromInclusive first day there; the start of the season for the first stay
 * @param toExclusive day of the move away; the end of the season for the last stay
 */
public record Stay(Place place, LocalDate fromInclusive, LocalDate toExclusive) {
  /** A pot that was carried stands at least this long before it is carried again. */
  public static final int LEAST_NIGHTS = 14;

  public Stay {
    if (!fromInclusive.isBefore(toExclusive)) {
      throw new IllegalArgumentException("empty stay from " + fromInclusive + " to " + toExclusive);
    }
  }
}
