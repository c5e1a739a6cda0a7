package org.hibernacle.model;

import java.util.List;
import java.util.Set;

/**
 * Dates and places of a plan made before.
 *
 * @param plantIds every plant that it was for
 * @param moves it had for them
 */
public record AsPlanned(Set<String> plantIds, List<MovePlanned> moves) {
  public AsPlanned {
    plantIds = Set.copyOf(plantIds);
    moves = List.copyOf(moves);
  }
}
