package org.hibernacle.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Rows whose plants live through the same. */
final class Twins {
  private Twins() {}

  /**
   * Does something with every row, twins one after the other in the order of rows, so that what one
   * lived is still remembered for the next. Then it is forgotten.
   *
   * @param planner of each row
   * @param parallel whether those that are no twins may be done at the same time
   */
  static void forEach(
      int rows, IntFunction<PlantPlanner> planner, boolean parallel, Consumer<Integer> todo) {
    List<Map.Entry<Trial, List<Integer>>> groups =
        List.copyOf(
            IntStream.range(0, rows)
                .boxed()
                .collect(
                    Collectors.groupingBy(
                        row -> planner.apply(row).trial(), LinkedHashMap::new, Collectors.toList()))
                .entrySet());
    (parallel ? groups.parallelStream() : groups.stream())
        .forEach(
            group -> {
              group.getValue().forEach(todo);
              group.getKey().forget();
            });
  }
}
