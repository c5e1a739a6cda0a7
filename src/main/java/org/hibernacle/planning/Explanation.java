package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;

/**
 * One plant's whole season: what was thought of, what was chosen, how it fared in every winter on
 * file, and what other dates would have done.
 *
 * @param season all plants of the season
 * @param plan of this plant
 * @param places every place of the inventory and why it was, or was not, an answer
 * @param ease what the plan costs the keeper
 * @param winters along the plan, oldest first
 * @param whatIfs other dates for each move, in order
 */
public record Explanation(
    SeasonPlan season,
    PlantPlan plan,
    List<PlaceTrial> places,
    Ease ease,
    List<WinterLived> winters,
    List<WhatIf> whatIfs) {

  public Explanation {
    places = List.copyOf(places);
    winters = List.copyOf(winters);
    whatIfs = List.copyOf(whatIfs);
  }

  /**
   * A place as if the plant stood there all season, with the limits that it has at home.
   *
   * @param place which
   * @param fit whether it was thought of at all
   * @param wintersBroken winters on file in which a rule breaks there; zero if not thought of
   * @param worst of what breaks there
   * @param unsafeFrom first day, of the season planned, on which a rule breaks there in any winter
   * @param unsafeTo last such day
   */
  public record PlaceTrial(
      Place place,
      PlaceFit fit,
      int wintersBroken,
      Optional<Violation> worst,
      Optional<LocalDate> unsafeFrom,
      Optional<LocalDate> unsafeTo) {}

  /**
   * What is kept small once no rule is broken, most important first.
   *
   * @param moves carried
   * @param autumnNightsAway nights away from home before midwinter
   * @param roofNights nights under a roof other than home's
   * @param springNightsAway nights away after midwinter
   * @param storageDegreeDays degree-days outside the species' storage range, K·d
   */
  public record Ease(
      int moves,
      int autumnNightsAway,
      int roofNights,
      int springNightsAway,
      int storageDegreeDays) {}

  /**
   * One winter along the plan.
   *
   * @param winter on file
   * @param tightest closest approach to the root limit
   * @param worst rule broken, if any
   * @param excused whether the accepted risk allows the margin to be broken in it
   * @param restComplete day on which rest was complete
   * @param budBreak day on which buds broke
   */
  public record WinterLived(
      Season winter,
      PlantPlan.Tightest tightest,
      Optional<Violation> worst,
      boolean excused,
      Optional<LocalDate> restComplete,
      Optional<LocalDate> budBreak) {}

  /**
   * A move on another date.
   *
   * @param move as planned
   * @param kind of change
   * @param date on which it would be made; empty for never
   * @param wintersBroken winters on file in which a rule breaks then
   * @param worst of what breaks
   */
  public record WhatIf(
      Move move,
      Kind kind,
      Optional<LocalDate> date,
      int wintersBroken,
      Optional<Violation> worst) {
    /** The changes thought of. */
    public enum Kind {
      EARLIER,
      LATER,
      NEVER
    }
  }
}
