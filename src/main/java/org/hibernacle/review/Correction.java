package org.hibernacle.review;

import java.time.LocalDate;
import org.hibernacle.planning.Move;

/** Something to change before the next season is planned. Always a proposal. */
public sealed interface Correction {

  /**
   * Another midwinter root limit for a species.
   *
   * @param taxon of the species table, whose roots are meant
   * @param oldC limit used so far, °C
   * @param proposedC limit proposed, °C
   * @param wantedC limit that agrees best with all rows, before any bound, °C
   * @param rows whose outcome and cold tell something of these roots
   * @param survivedBelow of these, rows unharmed although below the limit
   * @param harmedAbove of these, rows harmed although above it
   * @param coldestSurvivedC coldest that an unharmed row met, as for hardened roots, °C; not a
   *     number if none
   * @param warmestHarmedC warmest that a harmed row met, °C; not a number if none
   */
  record RootLimit(
      String taxon,
      double oldC,
      double proposedC,
      double wantedC,
      int rows,
      int survivedBelow,
      int harmedAbove,
      double coldestSurvivedC,
      double warmestHarmedC)
      implements Correction {}

  /**
   * Another warmth of a place.
   *
   * @param place name
   * @param oldWarmerByK so far, K
   * @param proposedWarmerByK proposed, K
   * @param meanErrorK model less logger, K
   * @param hours of the logger compared
   */
  record PlaceWarmth(
      String place, double oldWarmerByK, double proposedWarmerByK, double meanErrorK, int hours)
      implements Correction {}

  /**
   * A move away from home that came before there was any need.
   *
   * @param id of the plant
   * @param kind of the move
   * @param planned day
   * @param proposed day: the last moving day before home grew dangerous, at most a week after the
   *     planned one
   * @param dangerFrom first day on which home would have broken the safety margin; the day after
   *     the season's last if it never did
   * @param rank of the winter: 1 was colder than any planned for
   */
  record LaterMove(
      String id,
      Move.Kind kind,
      LocalDate planned,
      LocalDate proposed,
      LocalDate dangerFrom,
      int rank)
      implements Correction {}
}
