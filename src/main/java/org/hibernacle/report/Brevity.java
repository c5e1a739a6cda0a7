package org.hibernacle.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernacle.model.Plant;

/** How much an edition of the hand-out tells. */
enum Brevity {
  FULL(8, 60, 80, 3),
  SHORT(3, 24, 50, 2),
  SHORTEST(0, 8, 30, 1);

  private final int withNames;
  private final int withIds;
  private final int things;
  private final int groups;

  /**
   * @param withNames up to so many plants are told by Id and name
   * @param withIds up to so many by Id; of more, so many and how many are left out
   * @param things to do on all days together
   * @param groups of plants told apart in one place
   */
  Brevity(int withNames, int withIds, int things, int groups) {
    this.withNames = withNames;
    this.withIds = withIds;
    this.things = things;
    this.groups = groups;
  }

  /** Things to do on all days together. */
  int things() {
    return things;
  }

  /** Groups of plants told apart in one place. */
  int groups() {
    return groups;
  }

  /** The plants by Id, and how many are left out. */
  String names(Words words, List<Plant> some) {
    List<Plant> plants = some.stream().sorted(Comparator.comparing(Plant::id)).toList();
    if (plants.size() <= withNames) {
      return plants.stream().map(p -> p.id() + " " + p.name()).collect(Collectors.joining(", "));
    }
    List<String> ids = plants.stream().map(Plant::id).toList();
    return ids.size() <= withIds
        ? String.join(", ", ids)
        : words.text(
            "handout.names", String.join(", ", ids.subList(0, withIds)), ids.size() - withIds);
  }
}
