package org.hibernacle.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Stay;

/**
 * One plant's winter in hindsight.
 *
 * @param plant as in the inventory
 * @param outcome of the log; no damage where the log says nothing
 * @param outcomeAssumed whether the log says nothing
 * @param noticed when harm was first seen
 * @param remark of the keeper
 * @param realStays as logged, blanks filled
 * @param plannedStays of the plan
 * @param moves planned and real, in order of the season
 * @param lived along the real stays
 * @param asPlanned along the planned stays, in the same weather
 * @param verdict on the plan
 * @param causes of the harm, likeliest first; empty if there was none
 * @param prevention what the plan would have done; empty if there was no harm
 */
public record PlantReview(
    Plant plant,
    Outcome outcome,
    boolean outcomeAssumed,
    Optional<LocalDate> noticed,
    String remark,
    List<Stay> realStays,
    List<Stay> plannedStays,
    List<MoveCompared> moves,
    Exposure lived,
    Exposure asPlanned,
    PlanVerdict verdict,
    List<ScoredCause> causes,
    Optional<Prevention> prevention) {
  public PlantReview {
    realStays = List.copyOf(realStays);
    plannedStays = List.copyOf(plannedStays);
    moves = List.copyOf(moves);
    causes = List.copyOf(causes);
  }

  /** The likeliest cause; empty if there was no harm. */
  public Optional<ScoredCause> likeliest() {
    return causes.stream().findFirst();
  }

  /** Where it spent midwinter. */
  public String winterPlace(LocalDate midwinter) {
    return realStays.stream()
        .filter(s -> !midwinter.isBefore(s.fromInclusive()) && midwinter.isBefore(s.toExclusive()))
        .findFirst()
        .orElseThrow()
        .place()
        .name();
  }
}
