package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;

/**
 * How far a season has come.
 *
 * @param asOf day on whose evening the plan begins; the weather up to it has happened
 * @param made moves up to that day, by the keeper's log
 * @param planned moves of the plan that the log belongs to; none without one
 * @param ticked Ids of plants with moves up to that day that the keeper ticked
 */
public record Progress(
    LocalDate asOf, List<MoveMade> made, List<MovePlanned> planned, Set<String> ticked) {
  /** Nothing was ticked. */
  public Progress(LocalDate asOf, List<MoveMade> made, List<MovePlanned> planned) {
    this(asOf, made, planned, Set.of());
  }

  public Progress {
    ticked = Set.copyOf(ticked);
    made = List.copyOf(made);
    planned = List.copyOf(planned);
  }
}
