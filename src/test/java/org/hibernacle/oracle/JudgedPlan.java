package org.hibernacle.oracle;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernacle.input.InventoryWorkbook;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.hibernacle.planning.Shuttle;
import org.hibernacle.planning.Stay;

/**
 * A plan with its judge.
 *
 * @param plan to be judged
 * @param oracle that judges
 */
public record JudgedPlan(SeasonPlan plan, Oracle oracle) {
  private static final Map<City, JudgedPlan> OF_CITIES = new ConcurrentHashMap<>();
  private static final Map<City, JudgedPlan> OF_POOR_GARDENS = new ConcurrentHashMap<>();

  /** The plan of that city's garden, made once. */
  public static JudgedPlan of(City city) {
    return OF_CITIES.computeIfAbsent(city, c -> judged(CityGarden.plan(c), CityGarden.weather(c)));
  }

  /** The plan of a city's garden under that weather. */
  static JudgedPlan of(City city, TemperatureSeries weather) {
    return planned(CityGarden.inventory(city), weather);
  }

  /** The plan for those who have hardly anywhere to go, made once. */
  static JudgedPlan ofPoorGarden(City city) {
    return OF_POOR_GARDENS.computeIfAbsent(
        city, c -> planned(CityGarden.poorInventory(c), CityGarden.weather(c)));
  }

  /** The same garden with snow on the ground from the middle of December to the end of February. */
  static JudgedPlan ofAGardenInSnow(City city) {
    TemperatureSeries bare = CityGarden.weather(city);
    TreeMap<LocalDate, Double> snowCm = new TreeMap<>();
    for (LocalDate day : bare.days().keySet()) {
      int month = day.getMonthValue();
      boolean lies = month <= 2 || month == 12 && day.getDayOfMonth() > 15;
      snowCm.put(day, lies ? 4.0 + day.getDayOfMonth() : 0);
    }
    return planned(
        CityGarden.inventory(city),
        new TemperatureSeries(bare.station(), bare.days(), bare.hours(), snowCm));
  }

  /** The plan of every fourth plant of the demo's garden: it has ten winters, and time is short. */
  static JudgedPlan ofTheDemo() {
    return ofTheDemo(0);
  }

  /** The same with an accepted risk of so many seasons in ten. */
  static JudgedPlan ofTheDemo(int acceptedRiskOfTen) {
    Path folder = Path.of("demo-data");
    Problems problems = new Problems();
    Inventory inventory =
        InventoryWorkbook.read(
                folder.resolve("inventory.xlsx"), SpeciesCatalogue.builtIn(), problems)
            .orElseThrow();
    TemperatureSeries weather =
        TemperatureCsv.read(
                List.of(folder.resolve("temperatures.csv")), TemperatureCsv.Options.NONE, problems)
            .orElseThrow();
    List<Plant> some =
        IntStream.range(0, inventory.plants().size())
            .filter(i -> i % 4 == 0)
            .mapToObj(inventory.plants()::get)
            .toList();
    Settings settings = inventory.settings().withAcceptedRisk(acceptedRiskOfTen);
    return planned(new Inventory(some, inventory.places(), settings, inventory.sheets()), weather);
  }

  static JudgedPlan planned(Inventory inventory, TemperatureSeries weather) {
    return judged(
        SeasonPlanner.planOnly(inventory, weather, OptionalInt.empty()).orElseThrow(), weather);
  }

  /** That plan, made for that weather, with a judge of its own. */
  public static JudgedPlan judged(SeasonPlan plan, TemperatureSeries weather) {
    List<Season> winters = plan.winters().stream().map(w -> w.season()).toList();
    return new JudgedPlan(plan, new Oracle(plan.inventory(), weather, plan.season(), winters));
  }

  /** The winters on file, oldest first. */
  public List<Season> winters() {
    return plan.winters().stream().map(w -> w.season()).toList();
  }

  /** What the plant goes through along its plan, nights back in spring included. */
  public List<Night> nights(PlantPlan plant, Season winter) {
    if (plant.shuttle().isEmpty()) {
      return nights(plant, plant.stays(), winter);
    }
    Shuttle shuttle = plant.shuttle().get();
    Set<LocalDate> back =
        shuttle.nights().stream()
            .filter(n -> n.winter().equals(winter))
            .map(n -> plan.season().sameDay(n.day()))
            .collect(Collectors.toSet());
    return nights(
        plant, stays(plant, (day, place) -> back.contains(day) ? shuttle.refuge() : place), winter);
  }

  /** The same without those nights back. */
  public List<Night> nightsOfTheStays(PlantPlan plant, Season winter) {
    return nights(plant, plant.stays(), winter);
  }

  List<Night> nights(PlantPlan plant, List<Stay> stays, Season winter) {
    return oracle.nights(plant.plant(), stays, winter);
  }

  List<Finding> broken(PlantPlan plant, Season winter, List<Night> nights) {
    return oracle.broken(plant.plant(), winter, nights);
  }

  Place place(String name) {
    return plan.inventory().place(name);
  }

  /** The plant's stays, day by day, with another place on some days. */
  List<Stay> stays(PlantPlan plant, BiFunction<LocalDate, Place, Place> other) {
    List<Stay> stays = new ArrayList<>();
    for (Stay stay : plant.stays()) {
      for (LocalDate day = stay.fromInclusive();
          day.isBefore(stay.toExclusive());
          day = day.plusDays(1)) {
        stays.add(new Stay(other.apply(day, stay.place()), day, day.plusDays(1)));
      }
    }
    return stays;
  }
}
