package org.hibernacle.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the keeper wrote about one plant in the log of a season plan.
 *
 * @param id of the plant
 * @param movedDown real day of the move to the ground
 * @param movedIn real day of the move under a roof
 * @param steppedOut real day on which it left the roof for the ground in spring
 * @param returned real day on which it came home
 * @param stoodIn where it spent the winter, if that was not the planned place
 * @param ifBlank what a blank day means
 * @param outcome how it came through
 * @param noticed day on which harm was first seen
 * @param remark empty if none
 */
public record LogEntry(
    String id,
    Optional<LocalDate> movedDown,
    Optional<LocalDate> movedIn,
    Optional<LocalDate> steppedOut,
    Optional<LocalDate> returned,
    Optional<String> stoodIn,
    Optional<IfBlank> ifBlank,
    Optional<Outcome> outcome,
    Optional<LocalDate> noticed,
    String remark) {

  /** What a blank day of a planned move means. */
  public enum IfBlank {
    /** It happened on the planned day. */
    AS_PLANNED,
    /** It did not happen. */
    NOT_MOVED
  }

  /** An entry that says nothing. */
  public static LogEntry blank(String id) {
    return new LogEntry(
        id,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "");
  }
}
