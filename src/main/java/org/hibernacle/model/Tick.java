package org.hibernacle.model;

import java.time.LocalDate;
import java.util.List;

/**
 * A tick that the keeper set in an earlier plan.
 *
 * @param where file and sheet
 * @param mark as the keeper wrote it; empty for the word that the plan offers
 * @param moving whether it is a move and not other work
 * @param kind name of the constant of the move or the work; empty where that can not be told
 * @param what in the words of that plan
 * @param from first day
 * @param to last day, inclusive
 * @param place name of the place; of a move, where the pot was carried to
 * @param plantIds which plants; empty for all of the place
 */
public record Tick(
    Phrase where,
    String mark,
    boolean moving,
    String kind,
    String what,
    LocalDate from,
    LocalDate to,
    String place,
    List<String> plantIds) {
  /** Code of the note that tells of a tick whose work a later plan lacks. */
  public static final String WITHOUT_WORK = "PL-460";

  public Tick {
    plantIds = List.copyOf(plantIds);
  }
}
