package org.hibernacle.planning.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of rows, of plants and of places, changes nothing. */
class RowOrderTest {
  static LongStream seeds() {
    return Draw.seeds(7_100, 6);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void anyOrderOfRowsGivesTheSamePlan(long seed) {
    SomeGarden garden = SomeGarden.of(seed);
    Inventory rows = garden.inventory();
    Draw draw = new Draw(seed);
    Inventory shuffled =
        new Inventory(
            draw.shuffled(rows.plants()),
            draw.shuffled(rows.places()),
            rows.settings(),
            rows.sheets());
    TreeMap<String, PlantPlan> asDrawn = byId(rows, garden.file());
    TreeMap<String, PlantPlan> otherwise = byId(shuffled, garden.file());
    List<String> different =
        asDrawn.keySet().stream()
            .filter(id -> !asDrawn.get(id).equals(otherwise.get(id)))
            .map(id -> asDrawn.get(id).stays() + " against " + otherwise.get(id).stays())
            .toList();
    assertEquals(List.of(), different, () -> "-Dproof.seed=" + seed + " -Dproof.cases=1");
  }

  private static TreeMap<String, PlantPlan> byId(Inventory inventory, TemperatureSeries file) {
    TreeMap<String, PlantPlan> plans = new TreeMap<>();
    SeasonPlanner.planOnly(inventory, file, OptionalInt.empty()).orElseThrow().plants().stream()
        .forEach(p -> plans.put(p.plant().id(), p));
    return plans;
  }
}
