package org.hibernacle.planning;

import java.util.List;
import org.hibernacle.physiology.PlantState;
import org.hibernacle.thermal.BallTrace;

/**
 * What one plant went through along one path in one winter.
 *
 * @param winter index of the winter on file
 * @param path index of the place for each night of the winter
 * @param trace of its root ball
 * @param state of the plant
 * @param violations of rules, by night
 */
record Lived(int winter, int[] path, BallTrace trace, PlantState state, List<Broken> violations) {

  /**
   * A violation and the night of the winter it counts for.
   *
   * @param night index in the winter
   * @param place index of the place
   * @param violation what was broken
   */
  record Broken(int night, int place, Violation violation) {}

  Lived judged(List<Broken> found) {
    return new Lived(winter, path, trace, state, List.copyOf(found));
  }
}
