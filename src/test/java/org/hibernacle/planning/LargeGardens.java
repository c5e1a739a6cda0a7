package org.hibernacle.planning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.input.TemperatureUnit;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.TemperatureSeries;

/**
 * Measures how long planning takes: the demo's plants cloned until there are so many, in places
 * with too little room. Not a test; run by hand, see DEVELOPERS.md.
 */
public final class LargeGardens {
  /** Floor of all roofed and sheltered places together for one plant, m2; scarce. */
  private static final double FLOOR_A_PLANT_M2 = 0.03;

  private LargeGardens() {}

  /** Prints seconds for each number of plants named. */
  public static void main(String[] counts) {
    Inventory demo =
        InventoryWorkbook.read(
                Path.of("demo-data", "inventory.xlsx"), SpeciesCatalogue.builtIn(), new Problems())
            .orElseThrow();
    TemperatureSeries weather =
        TemperatureCsv.read(
                List.of(Path.of("demo-data", "temperatures.csv")),
                new TemperatureCsv.Options(
                    Optional.empty(),
                    Optional.of(TemperatureUnit.C),
                    Optional.empty(),
                    Optional.empty()),
                new Problems())
            .orElseThrow();
    for (String count : counts) {
      Inventory garden = cloned(demo, Integer.parseInt(count));
      Question question = new Question(garden, weather, Map.of(), OptionalInt.empty());
      long before = System.nanoTime();
      SeasonPlan plan = SeasonPlanner.planOnly(question).orElseThrow();
      double seconds = (System.nanoTime() - before) / 1e9;
      long gaveWay = plan.plants().stream().filter(p -> p.displaced().isPresent()).count();
      System.out.printf(
          Locale.ROOT,
          "%s plants: %.1f s, %d gave way, %d lost%n",
          count,
          seconds,
          gaveWay,
          plan.unprotected().count());
    }
  }

  private static Inventory cloned(Inventory demo, int count) {
    List<Plant> plants = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Plant plant = demo.plants().get(i % demo.plants().size());
      plants.add(renamed(plant, plant.id() + "-" + i / demo.plants().size()));
    }
    List<Place> places =
        demo.places().stream()
            .map(p -> p.withFloor(OptionalDouble.of(Math.max(1, count * FLOOR_A_PLANT_M2))))
            .toList();
    return new Inventory(plants, places, demo.settings(), List.of());
  }

  /** Another plant of the same sort. */
  static Plant renamed(Plant p, String id) {
    return new Plant(
        id,
        p.label(),
        p.species(),
        p.speciesAsWritten(),
        p.cultivar(),
        p.home(),
        p.container(),
        p.lastRootWork(),
        p.vigour(),
        p.priority(),
        p.value(),
        p.ownRootLimitC(),
        p.stayIn(),
        p.notBefore(),
        p.notAfter(),
        p.count(),
        p.heightCm(),
        p.spreadCm(),
        p.frostProofPot(),
        p.plannedRootWork(),
        p.rootstock(),
        p.rootLimitTrust(),
        p.notes());
  }
}
