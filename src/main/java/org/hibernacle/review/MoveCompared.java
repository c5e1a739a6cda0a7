package org.hibernacle.review;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalInt;
import org.hibernacle.planning.Move;

/**
 * One move, planned and real.
 *
 * @param kind in the keeper's words
 * @param planned day; empty if it was not planned
 * @param real day; empty if it did not happen
 * @param assumed whether the real day is the planned one only because the log says nothing
 * @param harmBetween whether the plant's worst hour for its likely cause lies between the two days
 */
public record MoveCompared(
    Move.Kind kind,
    Optional<LocalDate> planned,
    Optional<LocalDate> real,
    boolean assumed,
    boolean harmBetween) {
  /** Days after the plan, below zero before it; empty unless both are known from the log. */
  public OptionalInt daysLate() {
    return planned.isPresent() && real.isPresent() && !assumed
        ? OptionalInt.of((int) ChronoUnit.DAYS.between(planned.get(), real.get()))
        : OptionalInt.empty();
  }
}
