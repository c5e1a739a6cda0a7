package org.hibernacle.planning;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;

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
    return of(inventory, caution, winters, Tally.unheard());
  }

  /** The same, with plants counted. */
  static Wishes of(Inventory inventory, Caution caution, WintersOnFile winters, Tally tally) {
    List<Wish> wishes = of(inventory.plants(), inventory.settings(), caution, winters, tally);
    return new Wishes(
        inventory,
        winters,
        wishes.stream().map(Wish::planner).toList(),
        wishes.stream().map(Wish::found).toList());
  }

  /** Plans plants by themselves; of twins, which live through the same, one. */
  static List<Wish> of(
      List<Plant> plants, Settings settings, Caution caution, WintersOnFile winters, Tally tally) {
    List<Alike> alike = plants.stream().map(plant -> Alike.of(plant, winters)).toList();
    Map<Alike, Plant> firsts = new LinkedHashMap<>();
    IntStream.range(0, plants.size()).forEach(i -> firsts.putIfAbsent(alike.get(i), plants.get(i)));
    Map<Alike, Integer> twins = new HashMap<>();
    alike.forEach(one -> twins.merge(one, 1, Integer::sum));
    Map<Alike, Wish> wishes =
        firsts.entrySet().parallelStream()
            .collect(
                Collectors.toConcurrentMap(
                    Map.Entry::getKey,
                    first -> {
                      Wish wish =
                          Wish.of(PlantPlanner.of(first.getValue(), settings, caution, winters));
                      tally.add(twins.getOrDefault(first.getKey(), 1));
                      return wish;
                    }));
    return IntStream.range(0, plants.size())
        .mapToObj(i -> Objects.requireNonNull(wishes.get(alike.get(i))).of(plants.get(i)))
        .toList();
  }

  /** What plants have in common that wish for the same. */
  private record Alike(Plant nameless, List<MoveMade> made) {
    static Alike of(Plant plant, WintersOnFile winters) {
      return new Alike(plant.nameless(), winters.outlook().madeBy(plant));
    }
  }

  /**
   * What one plant would do.
   *
   * @param planner with what it met on the way; to be copied before it searches on
   * @param found its path
   */
  record Wish(PlantPlanner planner, PlantPlanner.Found found) {
    private static Wish of(PlantPlanner planner) {
      Wish wish = new Wish(planner, planner.find());
      planner.trial().forget();
      return wish;
    }

    private Wish of(Plant twin) {
      return new Wish(planner.ofTwin(twin), found);
    }
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
