package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.climate.WinterSummaries;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.Container;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.ThermalClass;

/**
 * Plans a season: one set of fixed dates for every plant, chosen to hold in every winter on file.
 */
public final class SeasonPlanner {
  /** The pot whose temperatures are charted: 5 L, round, ceramic. */
  private static final Container REFERENCE_POT =
      new Container(Container.Shape.ROUND, 22, 22, 13, 5, Container.Material.CERAMIC);

  private SeasonPlanner() {}

  /**
   * Plans.
   *
   * @param inventory plants, places, settings
   * @param file temperatures, several winters if possible
   * @param seasonYear year in whose autumn the planned season begins; empty for the season after
   *     the last usable winter
   * @return the plan, or empty if the file holds no usable winter; {@code notes} of the plan say
   *     what was assumed
   */
  public static Optional<SeasonPlan> plan(
      Inventory inventory, TemperatureSeries file, OptionalInt seasonYear) {
    return plan(inventory, file, Map.of(), seasonYear);
  }

  /**
   * Plans with loggers.
   *
   * @param loggers readings in places, by name of the place; they replace the model where they are
   */
  public static Optional<SeasonPlan> plan(
      Inventory inventory,
      TemperatureSeries file,
      Map<String, TemperatureSeries> loggers,
      OptionalInt seasonYear) {
    Settings settings = inventory.settings();
    WinterSelection selection = WinterSelection.of(file, settings.southern());
    if (selection.winters().isEmpty()) {
      return Optional.empty();
    }
    List<Season> seasons = selection.winters().stream().map(UsableWinter::season).toList();
    Season planned =
        seasonYear.isPresent()
            ? new Season(seasonYear.getAsInt(), settings.southern())
            : seasons.get(seasons.size() - 1).next();
    HourlyAir air = new HourlyAir(selection.series(), settings.latitudeDeg());
    List<Winter> winters =
        seasons.parallelStream().map(s -> Winter.of(s, air, settings.siteColderByK())).toList();
    Map<String, HourlyAir> logged = new HashMap<>();
    loggers.forEach((place, s) -> logged.put(place, new HourlyAir(s, settings.latitudeDeg())));
    WintersOnFile onFile =
        new WintersOnFile(planned, winters, inventory.places(), settings.latitudeDeg(), logged);
    return Optional.of(plan(inventory, selection, onFile, loggers));
  }

  private static SeasonPlan plan(
      Inventory inventory,
      WinterSelection selection,
      WintersOnFile winters,
      Map<String, TemperatureSeries> loggers) {
    List<Planned> planned =
        inventory.plants().parallelStream()
            .map(plant -> planOne(plant, inventory.settings(), winters))
            .toList();
    List<PlantPlan> plans = planned.stream().map(Planned::plan).toList();
    PlaceForecasts forecasts = new PlaceForecasts(winters, plans);
    List<PlaceForecast> places = forecasts.forecasts();
    List<Task> tasks =
        Stream.concat(
                planned.stream().flatMap(p -> p.tasks().stream()),
                new PlaceTasks(inventory, winters, plans).tasks().stream())
            .toList();
    PlanNotes notes = new PlanNotes();
    notes.selection(selection);
    notes.winters(winters);
    notes.settings(inventory);
    notes.room(places);
    notes.loggers(loggers, places, winters.count());
    return new SeasonPlan(
        winters.season(),
        inventory,
        summaries(inventory.settings(), selection),
        plans,
        places,
        TaskList.join(tasks),
        forecasts.traces(ThermalClass.of(REFERENCE_POT), REFERENCE_POT.volumeL()),
        notes.sorted());
  }

  private static List<WinterSummary> summaries(Settings settings, WinterSelection selection) {
    TreeSet<Season> used = new TreeSet<>();
    selection.winters().forEach(w -> used.add(w.season()));
    return WinterSummaries.of(selection.series(), settings.latitudeDeg()).stream()
        .filter(s -> used.contains(s.season()))
        .toList();
  }

  private record Planned(PlantPlan plan, List<Task> tasks) {}

  private static Planned planOne(Plant plant, Settings settings, WintersOnFile winters) {
    PlantPlanner planner = new PlantPlanner(plant, settings, winters);
    PlantPlanner.Found found = planner.find();
    List<Move> moves = new Reasons(planner, winters, settings, found.path()).moves();
    List<Violation> broken = PlantPlanner.summary(found.lived());
    PlantPlan.Verdict verdict =
        !broken.isEmpty()
            ? PlantPlan.Verdict.UNPROTECTED
            : moves.isEmpty() ? PlantPlan.Verdict.STAYS_HOME : PlantPlan.Verdict.MOVES;
    PlantPlan plan =
        new PlantPlan(
            plant,
            found.path().stays(winters.season(), winters.places()),
            moves,
            verdict,
            tightest(winters, found.lived()),
            broken,
            PlantPlanner.worst(found.atHome()),
            lastSafeDays(winters, found.atHome()),
            Mass.wetKg(plant.container()));
    return new Planned(plan, new PlantTasks(plant, winters, found, moves).tasks());
  }

  private static PlantPlan.Tightest tightest(WintersOnFile winters, List<Lived> lives) {
    Lived closest = lives.get(0);
    int night = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Lived lived : lives) {
      Winter winter = winters.winter(lived.winter());
      for (int n = Rules.firstJudged(winter); n < Rules.endJudged(winter); n++) {
        double marginK = lived.trace().ballMinC()[n] - lived.state().rootLimitC()[n];
        if (marginK < least) {
          least = marginK;
          closest = lived;
          night = n;
        }
      }
    }
    Winter winter = winters.winter(closest.winter());
    return new PlantPlan.Tightest(
        winter.season(),
        winter.first().plusDays(closest.trace().ballMinHour()[night] / 24),
        winters.places().get(closest.path()[night]).name(),
        closest.trace().ballMinC()[night],
        closest.state().rootLimitC()[night]);
  }

  /** Each winter's last day on which leaving home was early enough, as days of the season. */
  private static List<LocalDate> lastSafeDays(WintersOnFile winters, List<Lived> atHome) {
    Season season = winters.season();
    List<LocalDate> days = new ArrayList<>();
    for (Lived lived : atHome) {
      lived.violations().stream()
          .mapToInt(b -> winters.planNight(lived.winter(), b.night()))
          .min()
          .ifPresent(night -> days.add(season.day(night)));
    }
    days.sort(null);
    return days;
  }
}
