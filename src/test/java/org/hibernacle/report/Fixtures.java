package org.hibernacle.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.climate.WinterSummary.Frosts;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Light;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Published;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.SheetTable;
import org.hibernacle.model.Tick;
import org.hibernacle.planning.Caution;
import org.hibernacle.planning.Help;
import org.hibernacle.planning.InSeason;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlaceForecast.Week;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Remedy;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Task;
import org.hibernacle.planning.TraceTable;
import org.hibernacle.planning.Violation;
import org.hibernacle.thermal.ModelError;

/**
 * A plan made up by hand, not computed, that holds every verdict, rule, kind of move and kind of
 * task once at least. Its numbers are invented.
 */
public final class Fixtures {
  public static final Season SEASON = new Season(2026, false);

  static final Place BENCH = place("Bench", PlaceKind.BENCH, OptionalDouble.empty());
  static final Place BED = place("North bed", PlaceKind.GROUND, OptionalDouble.of(4));
  static final Place SHED = place("Shed", PlaceKind.COLD_STORE, OptionalDouble.of(1));
  static final Place GLASS = place("Glasshouse", PlaceKind.GLASSHOUSE, OptionalDouble.of(3));
  static final Place ROOM = place("Spare room", PlaceKind.FROST_FREE_ROOM, OptionalDouble.of(2));
  static final Place HALL = place("Hall", PlaceKind.WARM_ROOM, OptionalDouble.empty());

  private static final List<Place> PLACES = List.of(BENCH, BED, SHED, GLASS, ROOM, HALL);

  private Fixtures() {}

  /** The plan in metric units and British English. */
  public static SeasonPlan plan() {
    return plan(settings(Settings.Units.METRIC, Locale.UK));
  }

  /** The same plan under other settings. */
  public static SeasonPlan plan(Settings settings) {
    List<PlantPlan> plants = FixturePlants.all();
    Inventory inventory =
        new Inventory(
            plants.stream().map(PlantPlan::plant).toList(), PLACES, settings, inventorySheets());
    return new SeasonPlan(
        SEASON,
        inventory,
        new Caution(settings.safetyMarginK(), 10, 1),
        winters(),
        plants,
        forecasts(plants),
        tasks(),
        traces(),
        notes());
  }

  public static Settings settings(Settings.Units units, Locale language) {
    return new Settings(
        "Rooks & Elms",
        1.5,
        51.5,
        -1,
        ZoneId.of("Europe/London"),
        units,
        2,
        1,
        EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
        List.of(new DateSpan(LocalDate.of(2026, 12, 20), LocalDate.of(2027, 1, 4))),
        OptionalInt.of(10),
        OptionalInt.empty(),
        units == Settings.Units.US ? Settings.Paper.LETTER : Settings.Paper.A4,
        DayOfWeek.MONDAY,
        language);
  }

  public static RunFacts facts() {
    return facts(Optional.empty());
  }

  public static RunFacts facts(Optional<LogSheet> earlierLog) {
    return new RunFacts(
        "0.1.0",
        List.of(
            new RunFacts.InputFile("inventory.xlsx", "ab".repeat(32)),
            new RunFacts.InputFile("temperatures.csv", "0f".repeat(32))),
        List.of(
            new Diagnostic(
                Severity.WARNING,
                "IN-134",
                Phrase.of("where.in", Phrase.of("where.sheet", "inventory.xlsx", "Plants"), "G4"),
                List.of("Volume L", "60", 45.4, 45.4)),
            new Diagnostic(
                Severity.NOTE,
                "IN-128",
                Phrase.of("where.sheet", "inventory.xlsx", "Places"),
                List.of("Sun", "part", Phrase.of("for-places", 1, "ground")))),
        List.of("--season 2026"),
        List.of("P-02 moves down 7 days later than in the last plan."),
        earlierLog);
  }

  private static Place place(String name, PlaceKind kind, OptionalDouble floorM2) {
    return new Place(
        name,
        kind,
        floorM2,
        Place.Sun.PART,
        Place.Wind.SHELTERED,
        kind == PlaceKind.GROUND ? Place.Cover.MULCH : Place.Cover.NONE,
        kind == PlaceKind.GROUND ? 15 : 0,
        kind == PlaceKind.COLD_STORE ? Light.DARK : Light.BRIGHT,
        kind == PlaceKind.WARM_ROOM ? OptionalDouble.of(16) : OptionalDouble.empty(),
        OptionalDouble.empty(),
        kind.defaultWarmerByK(),
        kind.defaultLagHours(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        true,
        "");
  }

  static List<WinterSummary> winters() {
    return IntStream.range(2015, 2025).mapToObj(Fixtures::winter).toList();
  }

  private static WinterSummary winter(int year) {
    int n = year - 2015;
    Season season = new Season(year, false);
    boolean mild = year == 2019;
    LocalDate coldest = LocalDate.of(year, 12, 8).plusDays(5 * n);
    return new WinterSummary(
        season,
        season.days() - (n == 3 ? 2 : 0),
        n == 3 ? 2 : 0,
        mild ? 0.4 : -5.25 - n,
        coldest,
        List.of(
            new Frosts(
                0,
                mild ? Optional.empty() : Optional.of(LocalDate.of(year, 10, 20 + n)),
                mild ? Optional.empty() : Optional.of(LocalDate.of(year + 1, 4, 28 - n)),
                mild ? 0 : 31 + n),
            new Frosts(-2.2, Optional.empty(), Optional.empty(), 12 + n),
            new Frosts(-5, Optional.empty(), Optional.empty(), 3 + n),
            new Frosts(-10, Optional.empty(), Optional.empty(), n / 5)),
        4 + n,
        new DateSpan(season.start(), season.endExclusive()),
        n == 3 ? 2 : 0,
        1500 + 10 * n,
        1400 - 10 * n,
        70.4 + n,
        9000);
  }

  private static List<PlaceForecast> forecasts(List<PlantPlan> plants) {
    List<PlaceForecast> forecasts = new ArrayList<>();
    for (Place place : PLACES) {
      int n = forecasts.size();
      forecasts.add(
          new PlaceForecast(
              place,
              weeks(place, plants),
              List.of(-12.5, -4.04, -2.2, -3.1, 2.3, 15.0).get(n),
              new Season(2024, false),
              LocalDate.of(2025, 1, 22),
              List.of(61, 61, 70, 82, 151, 151).get(n),
              Optional.empty(),
              List.of(16.5, 16.5, 9.5, 21.0, 11.5, 20.0).get(n),
              LocalDate.of(2022, 11, 2)));
    }
    return forecasts;
  }

  /** The same plan with a logger in the shed, where the model was 0.5 K too cold on average. */
  /** The plan as of the day before the first work of November, with that forecast for the night. */
  public static SeasonPlan inSeason(SeasonPlan plan, OptionalDouble tonightC) {
    LocalDate asOf =
        plan.tasks().stream()
            .map(Task::from)
            .filter(day -> !day.isBefore(LocalDate.of(2026, 11, 1)))
            .min(Comparator.naturalOrder())
            .orElseThrow()
            .minusDays(1);
    List<PlantPlan> plants = new ArrayList<>(plan.plants());
    int moving = 0;
    while (plants.get(moving).moves().size() < 2) {
      moving++;
    }
    PlantPlan mover = plants.get(moving);
    Violation danger = mover.withoutMoves().orElseThrow();
    Move move = mover.moves().get(0);
    List<Move> moves = new ArrayList<>(mover.moves());
    moves.set(
        0,
        new Move(
            move.kind(), move.date(), move.from(), move.to(), Optional.empty(), List.of(), true));
    plants.set(
        moving,
        new PlantPlan(
            mover.plant(),
            mover.stays(),
            moves,
            mover.verdict(),
            mover.tightest(),
            mover.broken(),
            mover.withoutMoves(),
            mover.displaced(),
            mover.shuttle(),
            mover.nightTriggers(),
            mover.estimatedMassKg()));
    Move extra =
        new Move(
            move.kind(), asOf.plusDays(1), move.from(), move.to(), Optional.of(danger), List.of());
    InSeason now =
        new InSeason(
            asOf,
            tonightC.isPresent() ? asOf.plusDays(6) : asOf,
            tonightC,
            tonightC.orElse(0) < -4.5
                ? List.of(new InSeason.Threat("P-02", move.from().name(), -4.5))
                : List.of(),
            List.of(
                new InSeason.Late(mover.plant().id(), danger, Optional.of(extra)),
                new InSeason.Late("P-03", danger, Optional.empty())));
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plants,
        plan.places(),
        plan.tasks(),
        plan.traces(),
        plan.notes(),
        Optional.of(now),
        plan.help());
  }

  /** Facts of a run after a plan that had one date of every plant otherwise. */
  public static RunFacts afterAnotherPlan(SeasonPlan plan) {
    List<MovePlanned> moves =
        plan.movesByDate().stream()
            .map(
                pm ->
                    new MovePlanned(
                        pm.plan().plant().id(),
                        pm.move().kind().name(),
                        pm.move().date().minusDays(7),
                        pm.move().to().name()))
            .toList();
    Set<String> ids = plan.plants().stream().map(p -> p.plant().id()).collect(Collectors.toSet());
    RunFacts facts = facts();
    return new RunFacts(
        facts.programVersion(),
        facts.inputs(),
        facts.diagnostics(),
        facts.options(),
        facts.remarks(),
        facts.earlierLog(),
        Optional.of(new AsPlanned(ids, moves)));
  }

  /** The same with other work. */
  public static SeasonPlan withTasks(SeasonPlan plan, List<Task> tasks) {
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plan.plants(),
        plan.places(),
        tasks,
        plan.traces(),
        plan.notes());
  }

  /** Facts of a run after a plan that told calendar programs this, and in which this was ticked. */
  public static RunFacts afterPublishing(SeasonPlan plan, Agenda agenda, List<Tick> ticks) {
    RunFacts facts = afterAnotherPlan(plan);
    AsPlanned before = facts.before().orElseThrow();
    List<Published.Event> events =
        agenda.entries().stream()
            .map(
                e ->
                    new Published.Event(
                        e.id(), e.day(), e.title(), e.kind(), e.place(), e.dropped()))
            .toList();
    Published published = new Published(agenda.revision(), agenda.dated(), agenda.digest(), events);
    return new RunFacts(
        facts.programVersion(),
        facts.inputs(),
        facts.diagnostics(),
        facts.options(),
        facts.remarks(),
        facts.earlierLog(),
        Optional.of(
            new AsPlanned(before.plantIds(), before.moves(), ticks, Optional.of(published))));
  }

  /** The moves of its first plants alone. */
  public static SeasonPlan firstPlants(SeasonPlan plan, int most) {
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plan.plants().subList(0, most),
        plan.places(),
        List.of(),
        plan.traces(),
        plan.notes());
  }

  public static SeasonPlan withLogger(SeasonPlan plan) {
    ModelError error = new ModelError(2, 1440, -0.5, 1.25, 4.0, LocalDate.of(2025, 1, 22));
    List<PlaceForecast> places =
        plan.places().stream()
            .map(
                p ->
                    p.place().equals(SHED)
                        ? new PlaceForecast(
                            p.place(),
                            p.weeks(),
                            p.coldestC(),
                            p.coldestWinter(),
                            p.coldestDay(),
                            p.medianDaysAbove5C(),
                            Optional.of(error),
                            p.warmestC(),
                            p.warmestDay())
                        : p)
            .toList();
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plan.plants(),
        places,
        plan.tasks(),
        plan.traces(),
        plan.notes());
  }

  /** The same plan with a remedy of every kind, the first plant helped and the second not. */
  public static SeasonPlan withHelp(SeasonPlan plan) {
    Plant helped = plan.unprotected().map(PlantPlan::plant).findFirst().orElseThrow();
    List<Plant> first = List.of(helped);
    List<Plant> none = List.of();
    List<Remedy> remedies = new ArrayList<>();
    for (Remedy.Change change : Remedy.Change.values()) {
      boolean dated = change == Remedy.Change.EXTRA_MOVING_DAY;
      remedies.add(
          new Remedy(
              change,
              2,
              Optional.of(BED),
              dated ? Optional.of(LocalDate.of(2026, 11, 4)) : Optional.empty(),
              dated ? none : first,
              dated ? first : none));
    }
    return with(plan, new Help(remedies, List.of(plan.plants().get(1).plant()), true));
  }

  /** The same plan with other help. */
  static SeasonPlan with(SeasonPlan plan, Help help) {
    return new SeasonPlan(
        plan.season(),
        plan.inventory(),
        plan.caution(),
        plan.winters(),
        plan.plants(),
        plan.places(),
        plan.tasks(),
        plan.traces(),
        plan.notes(),
        plan.inSeason(),
        help);
  }

  private static List<Week> weeks(Place place, List<PlantPlan> plants) {
    List<Week> weeks = new ArrayList<>();
    for (LocalDate start = LocalDate.of(2026, 6, 29);
        start.isBefore(SEASON.endExclusive());
        start = start.plusWeeks(1)) {
      DateSpan week = new DateSpan(start, start.plusWeeks(1));
      List<PlantPlan> there = plants.stream().filter(p -> stands(p, place, week)).toList();
      weeks.add(
          new Week(
              start,
              there.stream().mapToInt(p -> p.plant().count()).sum(),
              there.stream().mapToDouble(p -> p.plant().floorM2()).sum(),
              there.stream().map(p -> p.plant().id()).toList()));
    }
    return weeks;
  }

  private static boolean stands(PlantPlan p, Place place, DateSpan week) {
    for (Stay stay : p.stays()) {
      if (stay.place().equals(place)
          && stay.fromInclusive().isBefore(week.toExclusive())
          && week.fromInclusive().isBefore(stay.toExclusive())) {
        return true;
      }
    }
    return false;
  }

  private static List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    for (Task.Kind kind : Task.Kind.values()) {
      LocalDate from = LocalDate.of(2026, 10, 17).plusDays(12L * tasks.size());
      OptionalDouble amount =
          switch (kind) {
            case MULCH_ON, MULCH_OFF -> OptionalDouble.of(180);
            case THAW_OUT -> OptionalDouble.of(23);
            case FLEECE_READY -> OptionalDouble.of(7);
            case IN_AND_OUT -> OptionalDouble.of(2);
            case POWER_FAILURE -> OptionalDouble.of(-6.5);
            case WAKING_ALARM -> OptionalDouble.of(10);
            case TWO_PERSON_LIFT -> OptionalDouble.of(61.4);
            default -> OptionalDouble.empty();
          };
      boolean anywhere = kind == Task.Kind.CLEAN_UP || kind == Task.Kind.TWO_PERSON_LIFT;
      boolean some = kind == Task.Kind.KEEP_DRY || kind == Task.Kind.TWO_PERSON_LIFT;
      tasks.add(
          new Task(
              kind,
              from,
              kind == Task.Kind.WATER_STORE ? from.plusDays(70) : from,
              anywhere ? "" : kind.name().startsWith("MULCH") ? BED.name() : SHED.name(),
              some ? List.of("P-08", "P-12") : List.of(),
              amount));
    }
    return tasks;
  }

  private static TraceTable traces() {
    Season winter = new Season(2024, false);
    List<TraceTable.Day> days = new ArrayList<>();
    for (LocalDate day = winter.start();
        day.isBefore(winter.endExclusive());
        day = day.plusDays(1)) {
      int n = winter.index(day);
      double season = -8 * Math.sin(Math.PI * (n - 90) / 210);
      double spell = 4 * Math.sin(n / 4.0) + 2 * Math.sin(n / 11.0);
      double min = 5 + season + spell;
      days.add(
          new TraceTable.Day(
              day,
              min,
              min + 6,
              List.of(min + 0.5, Math.max(min, -0.3 + 0.3 * min), 4 + 0.6 * season, 6 + season)));
    }
    List<String> places = List.of(BENCH.name(), BED.name(), SHED.name(), GLASS.name());
    return new TraceTable(winter, 5, places, days);
  }

  private static List<Diagnostic> notes() {
    return List.of(
        new Diagnostic(
            Severity.WARNING,
            "PL-402",
            Phrase.of("where.winter", "2014/15"),
            List.of(2, LocalDate.of(2014, 12, 3))));
  }

  /** A small inventory that can be read again, with a column and a sheet of the keeper's own. */
  static List<SheetTable> inventorySheets() {
    SheetTable plants =
        new SheetTable(
            "Plants",
            List.of("Id", "Label", "Species", "Home", "Volume L", "Last root work", "Shelf mark"),
            List.of(
                List.of("P-01", "", "Larix decidua", "Bench", 8.0, LocalDate.of(2025, 3, 1), "x"),
                List.of("P-02", "=Old pine", "Pinus thunbergii", "Bench", 12.5, "", true)));
    SheetTable places =
        new SheetTable("Places", List.of("Place", "Kind"), List.of(List.of("Bench", "bench")));
    SheetTable settings =
        new SheetTable(
            "Settings",
            List.of("Setting", "Value"),
            List.of(List.of("Site", "Rooks & Elms"), List.of("Latitude", 51.5)));
    SheetTable notes =
        new SheetTable("Notes", List.of("My notes"), List.of(List.of("Ask for the trolley.")));
    return List.of(plants, places, settings, notes);
  }
}
