package org.hibernacle.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Dates and places of a plan made before, and what the keeper ticked in it.
 *
 * @param plantIds every plant that it was for
 * @param moves it had for them
 * @param ticks set in it
 * @param published what it told calendar programs; empty if it does not say
 */
public record AsPlanned(
    Set<String> plantIds,
    List<MovePlanned> moves,
    List<Tick> ticks,
    Optional<Published> published) {
  public AsPlanned {
    plantIds = Set.copyOf(plantIds);
    moves = List.copyOf(moves);
    ticks = List.copyOf(ticks);
  }

  /** A plan in which nothing was ticked. */
  public AsPlanned(Set<String> plantIds, List<MovePlanned> moves) {
    this(plantIds, moves, List.of(), Optional.empty());
  }

  /** The same with the ticks of another plan of the season, and its events if it is the later. */
  public AsPlanned with(AsPlanned other) {
    return new AsPlanned(
        plantIds,
        moves,
        Stream.of(ticks, other.ticks).flatMap(List::stream).distinct().toList(),
        Published.later(published, other.published));
  }
}
