package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;

/**
 * How far a season has come.
 *
 * @param asOf day on whose evening the plan begins; the weather up to it has happened
 * @param made moves up to that day, by the keeper's log
 * @param planned moves of the plan that the log belongs to; none without one
 */
public record Progress(LocalDate asOf, List<MoveMade> made, List<MovePlanned> planned) {
  public Progress {
    made = List.copyOf(made);
    planned = List.copyOf(planned);
  }
}
