package org.hibernacle.planning;

import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.Inventory;

/**
 * What every plant would do if it were alone: neither room nor hands play a part here. One entry a
 * plant, in the order of the inventory.
 *
 * @param inventory plants, places, settings
 * @param winters at the places of the inventory
 * @param planners with what they met on the way to the wish; to be copied before they search on
 * @param founds the wishes
 */
record Wishes(
    Inventory inventory,
    WintersOnFile winters,
    List<PlantPlanner> planners,
    List<PlantPlanner.Found> founds) {

  /** Plans every plant by itself. */
  static Wishes of(Inventory inventory, Caution caution, WintersOnFile winters) {
    List<PlantPlanner> planners =
        inventory.plants().parallelStream()
            .map(plant -> PlantPlanner.of(plant, inventory.settings(), caution, winters))
            .toList();
    List<PlantPlanner.Found> founds = planners.parallelStream().map(PlantPlanner::find).toList();
    return new Wishes(inventory, winters, planners, founds);
  }

  /** The same wishes where room or hands are others. */
  Wishes in(Inventory other) {
    return new Wishes(other, winters, planners, founds);
  }

  int count() {
    return planners.size();
  }

  /** What they pay together: no way of sharing room and hands can cost less. */
  Toll toll() {
    return IntStream.range(0, count())
        .mapToObj(i -> Toll.of(inventory.plants().get(i), founds.get(i).cost()))
        .reduce(Toll.NOTHING, Toll::plus);
  }
}
