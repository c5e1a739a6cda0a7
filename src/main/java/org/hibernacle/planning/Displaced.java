package org.hibernacle.planning;

import java.time.LocalDate;
import org.hibernacle.model.Place;

/**
 * Why a plant does not get what would suit it best.
 *
 * @param kind what others have taken
 * @param place it would go to on that day
 * @param day first day on which it is missing
 */
public record Displaced(Kind kind, Place place, LocalDate day) {
  /** What is scarce. */
  public enum Kind {
    /** The place is full. */
    ROOM,
    /** Enough is carried on that day. */
    HANDS
  }
}
