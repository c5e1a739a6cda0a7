package org.hibernacle.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What an earlier plan of the season told calendar programs.
 *
 * @param revision its number, which grows when what they are told changes
 * @param dated the day it carried as the day of writing
 * @param digest of what it told
 * @param events planned and cancelled ones
 */
public record Published(int revision, LocalDate dated, String digest, List<Event> events) {
  public Published {
    events = List.copyOf(events);
  }

  /**
   * One event.
   *
   * @param id of it
   * @param day on which it was
   * @param title of it
   * @param kind name of the constant of the work; empty for a moving day
   * @param place of the work, empty where it has none
   * @param dropped whether it was cancelled
   */
  public record Event(
      UUID id, LocalDate day, String title, String kind, String place, boolean dropped) {}

  /** The later one of two. */
  public static Optional<Published> later(Optional<Published> one, Optional<Published> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.or(() -> other);
    }
    return one.get().revision() >= other.get().revision() ? one : other;
  }
}
