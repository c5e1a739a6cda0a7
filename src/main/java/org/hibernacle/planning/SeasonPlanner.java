package org.hibernacle.planning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.SeasonSoFar;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.climate.WinterSummaries;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.Container;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.thermal.BallGuess;
import org.hibernacle.thermal.ThermalClass;

/**
 * Plans a season: one set of fixed dates for every plant, chosen to hold in every winter on file.
 */
public final class SeasonPlanner {
  /** The pot whose temperatures are charted: 5 L, round, ceramic. */
  static final Container REFERENCE_POT =
      new Container(Container.Shape.ROUND, 22, 22, 13, 5, Container.Material.CERAMIC);

  private final Question question;
  private final Inventory inventory;
  private final WinterSelection selection;
  private final WintersOnFile winters;
  private final Caution caution;
  private final Wishes wishes;
  private final Together together;
  private final List<Together.Settled> settled;

  private SeasonPlanner(Question question, WinterSelection selection, WintersOnFile winters) {
    this.question = question;
    this.inventory = question.inventory().in(winters.places());
    this.selection = selection;
    this.winters = winters;
    caution = Caution.of(inventory.settings(), winters.count());
    Pace pace = question.pace();
    Tally tally = new Tally(pace, Pace.Part.PLANTS, inventory.plants().size());
    wishes = Wishes.of(inventory, caution, winters, tally);
    pace.reached(Pace.Part.SHARING, 0, 0);
    together = new Together(wishes);
    settled = together.settle();
  }

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
    return plan(new Question(inventory, file, Map.of(), seasonYear));
  }

  /**
   * Plans.
   *
   * @return empty if the file holds no usable winter
   */
  public static Optional<SeasonPlan> plan(Question question) {
    return of(question).map(planner -> planner.plan(planner.help()));
  }

  /**
   * Plans without looking for what would help, which takes a good part of the time.
   *
   * @return empty if the file holds no usable winter
   */
  public static Optional<SeasonPlan> planOnly(Question question) {
    return of(question).map(planner -> planner.plan(Help.NOT_NEEDED));
  }

  /**
   * The same, of a plan before the season.
   *
   * @return empty if the file holds no usable winter
   */
  public static Optional<SeasonPlan> planOnly(
      Inventory inventory, TemperatureSeries file, OptionalInt seasonYear) {
    return planOnly(new Question(inventory, file, Map.of(), seasonYear));
  }

  /**
   * Plans, and explains one plant.
   *
   * @param id of the plant; in the inventory, else {@link IllegalArgumentException}
   * @return empty if the file holds no usable winter
   */
  public static Optional<Explanation> explain(Question question, String id) {
    return of(question).map(planner -> planner.explain(id));
  }

  /**
   * Judges the planner by each winter on file, planned for from all the others.
   *
   * @return one entry a winter, oldest first; none with fewer than two usable winters
   */
  public static List<WinterJudged> leaveOneOut(Question question) {
    WinterSelection selection = selection(question);
    return selection.winters().isEmpty()
        ? List.of()
        : leaveOneOut(question.inventory(), winters(question, selection), question.pace());
  }

  private static List<WinterJudged> leaveOneOut(
      Inventory inventory, WintersOnFile winters, Pace pace) {
    return new LeaveOneOut(inventory.in(winters.places()), winters, pace).judge();
  }

  private static Optional<SeasonPlanner> of(Question question) {
    WinterSelection selection = selection(question);
    return selection.winters().isEmpty()
        ? Optional.empty()
        : Optional.of(new SeasonPlanner(question, selection, winters(question, selection)));
  }

  private static WinterSelection selection(Question question) {
    boolean southern = question.inventory().settings().southern();
    WinterSelection all = WinterSelection.of(question.file(), southern);
    return question
        .progress()
        .map(p -> all.before(Season.containing(p.asOf(), southern)))
        .orElse(all);
  }

  /** What is known of the season, for a plan made within it. */
  private static Optional<SeasonSoFar> soFar(Question question) {
    boolean southern = question.inventory().settings().southern();
    return question.progress().map(p -> SeasonSoFar.of(question.file(), p.asOf(), southern));
  }

  private static WintersOnFile winters(Question question, WinterSelection selection) {
    Inventory inventory = question.inventory();
    Settings settings = inventory.settings();
    List<Season> seasons = selection.winters().stream().map(UsableWinter::season).toList();
    question.pace().reached(Pace.Part.WINTERS, 0, seasons.size());
    Season planned =
        question.seasonYear().isPresent()
            ? new Season(question.seasonYear().getAsInt(), settings.southern())
            : seasons.get(seasons.size() - 1).next();
    double latitudeDeg = settings.latitudeDeg();
    HourlyAir air = new HourlyAir(selection.series(), latitudeDeg);
    Optional<SeasonSoFar> soFar = soFar(question);
    if (soFar.isPresent()) {
      return inSeason(question, seasons, soFar.get(), soFar.get().bridged(selection.series()));
    }
    List<Winter> winters =
        seasons.parallelStream().map(s -> Winter.of(s, air, settings.siteColderByK())).toList();
    Map<String, HourlyAir> logged = new HashMap<>();
    question.loggers().forEach((place, s) -> logged.put(place, new HourlyAir(s, latitudeDeg)));
    List<Place> places = Covers.laid(inventory, winters, planned).places();
    return new WintersOnFile(planned, winters, places, latitudeDeg, logged);
  }

  /** The season so far, followed by each of the earlier winters in turn. */
  private static WintersOnFile inSeason(
      Question question, List<Season> earlier, SeasonSoFar soFar, TemperatureSeries file) {
    Settings settings = question.inventory().settings();
    double latitudeDeg = settings.latitudeDeg();
    List<Winter> winters =
        earlier.parallelStream()
            .map(
                s ->
                    Winter.of(
                        s,
                        new HourlyAir(soFar.followedBy(file, s), latitudeDeg),
                        settings.siteColderByK()))
            .toList();
    Map<String, TemperatureSeries> loggers = question.loggers();
    return new WintersOnFile(
        soFar.season(),
        winters,
        Covers.laid(question.inventory(), winters, soFar.season()).places(),
        latitudeDeg,
        winter -> {
          Map<String, HourlyAir> logged = new HashMap<>();
          loggers.forEach(
              (place, s) ->
                  logged.put(place, new HourlyAir(soFar.followedBy(s, winter), latitudeDeg)));
          return logged;
        },
        new Outlook(Optional.of(soFar), question.progress().orElseThrow().made()),
        BallGuess.USUAL);
  }

  private Explanation explain(String id) {
    SeasonPlan season = plan(Help.NOT_NEEDED);
    for (int i = 0; i < settled.size(); i++) {
      if (season.plants().get(i).plant().id().equals(id)) {
        return new Explainer(settled.get(i), winters).explain(season, season.plants().get(i));
      }
    }
    throw new IllegalArgumentException("no plant " + id);
  }

  /** What would help those that are lost or gave way. */
  private Help help() {
    return new Remedies(
            wishes,
            caution,
            settled,
            other -> winters(question.with(other), selection),
            question.pace())
        .find();
  }

  private SeasonPlan plan(Help help) {
    Planned[] each = new Planned[settled.size()];
    Tally tally = new Tally(question.pace(), Pace.Part.REASONS, each.length);
    Twins.forEach(
        each.length,
        i -> settled.get(i).planner(),
        true,
        i -> {
          each[i] = planned(settled.get(i));
          tally.add(1);
        });
    List<Planned> planned = List.of(each);
    List<PlantPlan> plans = planned.stream().map(Planned::plan).toList();
    PlaceForecasts forecasts = new PlaceForecasts(winters, plans);
    List<PlaceForecast> places = forecasts.forecasts();
    List<Task> tasks =
        Stream.of(
                planned.stream().flatMap(p -> p.tasks().stream()),
                new PlaceTasks(inventory, winters, plans).tasks().stream(),
                new PowerFailures(winters, settled).tasks().stream())
            .flatMap(s -> s)
            .filter(task -> !isPast(task))
            .toList();
    PlanNotes notes = new PlanNotes();
    notes.selection(selection);
    notes.winters(winters);
    notes.settings(inventory, caution);
    notes.room(places);
    notes.sharing(Gap.between(wishes.founds(), settled));
    notes.gathered(together.gathered());
    notes.help(help);
    notes.loggers(question, places, winters.count());
    question.progress().ifPresent(p -> notes.progress(p, winters.outlook(), inventory));
    return new SeasonPlan(
        winters.season(),
        inventory,
        caution,
        summaries(inventory.settings(), selection),
        plans,
        places,
        TaskList.join(tasks),
        forecasts.traces(ThermalClass.of(REFERENCE_POT), REFERENCE_POT.volumeL()),
        notes.sorted(),
        new WeekAhead(inventory, caution, winters, settled, plans).look(),
        help);
  }

  /** Work of days that are over. */
  private boolean isPast(Task task) {
    int tonight = winters.outlook().tonight();
    return tonight > 0 && task.to().isBefore(winters.season().day(tonight));
  }

  private static List<WinterSummary> summaries(Settings settings, WinterSelection selection) {
    TreeSet<Season> used = new TreeSet<>();
    selection.winters().forEach(w -> used.add(w.season()));
    return WinterSummaries.of(selection.series(), settings.latitudeDeg()).stream()
        .filter(s -> used.contains(s.season()))
        .toList();
  }

  private record Planned(PlantPlan plan, List<Task> tasks) {}

  private Planned planned(Together.Settled one) {
    Plant plant = one.planner().plant();
    PlantPlanner.Found found = one.found();
    List<Move> moves = new Reasons(one.planner(), winters, inventory.settings(), found).moves();
    List<Violation> broken = Margins.summary(found.lived());
    PlantPlan.Verdict verdict =
        found.cost().brokenTicks() > 0
            ? PlantPlan.Verdict.UNPROTECTED
            : moves.isEmpty() ? PlantPlan.Verdict.STAYS_HOME : PlantPlan.Verdict.MOVES;
    PlantPlan plan =
        new PlantPlan(
            plant,
            found.path().stays(winters.season(), winters.places()),
            moves,
            verdict,
            Margins.tightest(winters, found.lived()),
            broken,
            Margins.worst(found.atHome()),
            one.displaced(),
            found.shuttle(),
            new NightTriggers(winters, new Rules(plant, winters, caution.marginK()))
                .of(found, plant.species().group().hardens()),
            Mass.wetKg(plant.container()));
    return new Planned(plan, new PlantTasks(plant, winters, found, moves).tasks());
  }
}
