package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Group;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.KnownWinter;
import org.hibernacle.model.Light;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.SeasonLog;
import org.hibernacle.model.Species;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.oracle.TrueHarm;
import org.hibernacle.oracle.TrueHarm.Harm;
import org.hibernacle.oracle.TrueHarm.Nature;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.hibernacle.planning.Stay;

/**
 * New York's winter of 2014/15 as a keeper may have gone through it: planned for from the two
 * winters before, carried out well or badly, harm dealt by {@link TrueHarm}, and logged.
 */
final class PlantedSeason {
  static final Season SEASON = new Season(2014, false);
  private static final Set<String> PLANTS =
      Set.of(
          "LARCH-30",
          "PINE-30",
          "JUNIPER-8",
          "JUNIPER-05",
          "MAPLE-6",
          "TRIDENT-5",
          "YEW-JP-8",
          "AZALEA-5",
          "CAMELLIA-8",
          "OLIVE-10",
          "FIG-4",
          "CARMONA-3");

  /** In a frost pocket, with limits of the keeper's own, so that only drought harms them. */
  private static final List<String> EVERGREENS =
      List.of("Picea glauca", "Picea mariana", "Rhododendron PJM Group");

  private static final List<Double> SHIFTS_K = List.of(-1.0, 0.0, 1.0);

  /** Share of the plants that winter spares which are harmed by something else: invented. */
  private static final double OTHER_HARM = 0.3;

  /** What the keeper does. */
  enum Deed {
    AS_PLANNED,
    AS_PLANNED_TOO,
    AGAIN_AS_PLANNED,
    LEFT_OUT,
    FIVE_WEEKS_LATE,
    TEN_WEEKS_LATE,
    HOME_THREE_WEEKS_EARLY,
    HOME_SEVEN_WEEKS_EARLY,
    IN_THE_CELLAR("Cellar", LocalDate.of(2014, 10, 11), LocalDate.of(2015, 4, 26)),
    FROM_THE_WARM_TO_THE_BENCH(
        "Garden room", LocalDate.of(2014, 10, 11), LocalDate.of(2014, 12, 27)),
    FROM_THE_WARM_IN_SPRING("Garden room", LocalDate.of(2014, 11, 8), LocalDate.of(2015, 3, 29)),
    FROM_THE_WARM_IN_MARCH("Garden room", LocalDate.of(2014, 11, 8), LocalDate.of(2015, 3, 22)),
    ONLY_MULCHED("Mulched bed", LocalDate.of(2014, 11, 8), LocalDate.of(2015, 3, 22)),
    ONLY_MULCHED_TOO("Mulched bed", LocalDate.of(2014, 11, 15), LocalDate.of(2015, 3, 29));

    private final Optional<String> place;
    private final LocalDate away;
    private final LocalDate home;

    Deed() {
      place = Optional.empty();
      away = SEASON.start();
      home = SEASON.start();
    }

    Deed(String place, LocalDate away, LocalDate home) {
      this.place = Optional.of(place);
      this.away = away;
      this.home = home;
    }
  }

  /**
   * One row of the collection.
   *
   * @param plant of the row
   * @param deed done to it
   * @param cause of its harm; empty if it has none
   */
  record Row(Plant plant, Deed deed, Optional<Cause> cause) {}

  private final Inventory inventory;
  private final List<Row> rows = new ArrayList<>();
  private final List<PlannedMove> moves = new ArrayList<>();
  private final List<LogEntry> entries = new ArrayList<>();
  private final List<KnownWinter> winters;

  PlantedSeason(long seed) {
    TemperatureSeries weather = CityGarden.weather(City.NEW_YORK);
    Place cellar =
        SomePlace.of(PlaceKind.COLD_STORE)
            .named("Cellar")
            .light(Light.DARK)
            .warmerBy(7)
            .lag(72)
            .place();
    Inventory garden = garden();
    SeasonPlan plan =
        SeasonPlanner.planOnly(garden, before(weather), OptionalInt.of(SEASON.year()))
            .orElseThrow();
    winters =
        plan.winters().stream()
            .map(w -> new KnownWinter(w.season(), w.coldestNightC(), w.coldestNight()))
            .toList();
    Map<String, Place> laid = new LinkedHashMap<>();
    garden.places().forEach(p -> laid.put(p.name(), p));
    plan.plants().stream()
        .flatMap(p -> p.stays().stream())
        .forEach(s -> laid.put(s.place().name(), s.place()));
    List<Place> places = new ArrayList<>(laid.values());
    places.add(cellar);
    Inventory wider = new Inventory(List.of(), places, garden.settings(), List.of());
    TrueHarm truth = new TrueHarm(wider, weather, SEASON, SHIFTS_K);
    Random random = new Random(seed);
    List<Planting> plantings = new ArrayList<>();
    for (PlantPlan p : plan.plants()) {
      for (Deed deed : Deed.values()) {
        Optional<LogEntry> entry = entry(p, deed, p.plant().id() + "/" + deed);
        Nature nature =
            new Nature(
                SHIFTS_K.get(random.nextInt(SHIFTS_K.size())),
                4 * random.nextDouble() - 2,
                Math.exp(random.nextGaussian() * 0.3));
        double luck = random.nextDouble();
        double severity = random.nextDouble();
        entry.ifPresent(e -> plantings.add(new Planting(p, deed, e, nature, luck, severity)));
      }
    }
    List<Optional<Harm>> harms =
        plantings.parallelStream()
            .map(p -> truth.of(p.plan.plant(), stays(p.plan, p.entry, places), p.nature))
            .toList();
    for (int i = 0; i < plantings.size(); i++) {
      add(plantings.get(i), harms.get(i));
    }
    inventory =
        new Inventory(
            rows.stream().map(Row::plant).toList(),
            places.stream().filter(p -> p.wrapOf().isEmpty()).toList(),
            garden.settings(),
            List.of());
  }

  /** Some of the city's plants, and evergreens whose roots stand more than the winter had. */
  private static Inventory garden() {
    Inventory all = CityGarden.inventory(City.NEW_YORK);
    List<Plant> plants = new ArrayList<>();
    for (Plant plant : all.plants()) {
      if (PLANTS.contains(plant.id())) {
        plants.add(plant);
      }
    }
    Place hollow =
        SomePlace.of(PlaceKind.BENCH)
            .named("Hollow")
            .sun(Place.Sun.FULL)
            .open()
            .warmerBy(-4)
            .place();
    List<Place> places = new ArrayList<>(all.places());
    places.add(hollow);
    Plant potted = plants.get(0);
    for (String taxon : EVERGREENS) {
      String id = taxon.replace(' ', '-').toUpperCase(Locale.ROOT);
      plants.add(like(potted, id, SomePlant.species(taxon), "Hollow", OptionalDouble.of(-25)));
    }
    return new Inventory(plants, places, all.settings(), List.of());
  }

  private record Planting(
      PlantPlan plan, Deed deed, LogEntry entry, Nature nature, double luck, double severity) {}

  private static TemperatureSeries before(TemperatureSeries weather) {
    return new TemperatureSeries(
        weather.station(),
        new TreeMap<>(weather.days().headMap(SEASON.start())),
        new TreeMap<>(weather.hours()));
  }

  ReviewQuestion question() {
    return new ReviewQuestion(
        inventory,
        new SeasonLog(SEASON, moves, List.of(), winters, entries),
        CityGarden.weather(City.NEW_YORK),
        Map.of());
  }

  List<Row> rows() {
    return rows;
  }

  private void add(Planting p, Optional<Harm> harm) {
    Optional<Cause> cause = harm.map(Harm::cause);
    if (cause.isEmpty() && p.luck < OTHER_HARM) {
      cause = Optional.of(Cause.NOT_TEMPERATURE);
    }
    Plant plant = renamed(p.plan.plant(), p.entry.id());
    rows.add(new Row(plant, p.deed, cause));
    p.plan
        .moves()
        .forEach(
            m -> moves.add(new PlannedMove(plant.id(), m.date(), m.from().name(), m.to().name())));
    Outcome outcome = cause.map(c -> outcome(c, p.severity)).orElse(Outcome.NO_DAMAGE);
    entries.add(
        new LogEntry(
            p.entry.id(),
            p.entry.movedDown(),
            p.entry.movedIn(),
            p.entry.steppedOut(),
            p.entry.returned(),
            p.entry.stoodIn(),
            p.entry.ifBlank(),
            Optional.of(outcome),
            Optional.empty(),
            ""));
  }

  private static Outcome outcome(Cause cause, double severity) {
    return switch (cause) {
      case FROST_ON_WOKEN_GROWTH -> severity < 0.7 ? Outcome.TIPS : Outcome.BRANCHES;
      case FROZEN_SHOOTS -> severity < 0.5 ? Outcome.TIPS : Outcome.BRANCHES;
      default -> severity < 0.2 ? Outcome.TIPS : severity < 0.5 ? Outcome.BRANCHES : Outcome.DEAD;
    };
  }

  /** What the log says of a deed; empty where the plan has nothing to be done otherwise. */
  private static Optional<LogEntry> entry(PlantPlan p, Deed deed, String id) {
    LogEntry blank = LogEntry.blank(id);
    if (deed == Deed.AS_PLANNED || deed == Deed.AS_PLANNED_TOO || deed == Deed.AGAIN_AS_PLANNED) {
      return Optional.of(blank);
    }
    if (deed.place.isPresent()) {
      boolean mulched = deed == Deed.ONLY_MULCHED || deed == Deed.ONLY_MULCHED_TOO;
      return isFor(deed, p.plant().species().group())
          ? Optional.of(
              new LogEntry(
                  id,
                  mulched ? Optional.of(deed.away) : Optional.empty(),
                  mulched ? Optional.empty() : Optional.of(deed.away),
                  Optional.empty(),
                  Optional.of(deed.home),
                  deed.place,
                  Optional.of(IfBlank.NOT_MOVED),
                  Optional.empty(),
                  Optional.empty(),
                  ""))
          : Optional.empty();
    }
    if (p.moves().size() < 2) {
      return Optional.empty();
    }
    Move first = p.moves().get(0);
    Move last = p.moves().get(p.moves().size() - 1);
    LocalDate away = first.date();
    LocalDate home = last.date();
    switch (deed) {
      case LEFT_OUT -> {
        return Optional.of(withDays(blank, Map.of(), IfBlank.NOT_MOVED));
      }
      case FIVE_WEEKS_LATE -> away = away.plusWeeks(5);
      case TEN_WEEKS_LATE -> away = away.plusWeeks(10);
      case HOME_THREE_WEEKS_EARLY -> home = home.minusWeeks(3);
      case HOME_SEVEN_WEEKS_EARLY -> home = home.minusWeeks(7);
      default -> throw new IllegalArgumentException(deed.toString());
    }
    if (p.moves().size() != 2 || !away.isBefore(home) || first.kind() == last.kind()) {
      return Optional.empty();
    }
    return Optional.of(
        withDays(blank, Map.of(first.kind(), away, last.kind(), home), IfBlank.AS_PLANNED));
  }

  /** Hardy plants are kept too warm; others are woken, or left with too little over them. */
  private static boolean isFor(Deed deed, Group group) {
    boolean hardy = group.restsCold() && group != Group.TENDER_ROOTED_HARDY;
    return switch (deed) {
      case IN_THE_CELLAR -> hardy;
      case FROM_THE_WARM_TO_THE_BENCH -> group.restsCold();
      default -> group == Group.TENDER_ROOTED_HARDY || group == Group.MEDITERRANEAN;
    };
  }

  private static LogEntry withDays(LogEntry e, Map<Move.Kind, LocalDate> days, IfBlank ifBlank) {
    return new LogEntry(
        e.id(),
        Optional.ofNullable(days.get(Move.Kind.MOVE_DOWN)),
        Optional.ofNullable(days.get(Move.Kind.MOVE_IN)),
        Optional.ofNullable(days.get(Move.Kind.STEP_OUT)),
        Optional.ofNullable(days.get(Move.Kind.RETURN)),
        Optional.empty(),
        Optional.of(ifBlank),
        Optional.empty(),
        Optional.empty(),
        "");
  }

  /** Where the plant stood, told without the program's help. */
  private static List<Stay> stays(PlantPlan p, LogEntry entry, List<Place> places) {
    LocalDate start = SEASON.start();
    LocalDate end = SEASON.endExclusive();
    Place home = p.stays().get(0).place();
    if (entry.stoodIn().isPresent()) {
      String name = entry.stoodIn().get();
      Place cellar = places.stream().filter(q -> q.name().equals(name)).findFirst().orElseThrow();
      LocalDate in = entry.movedIn().or(entry::movedDown).orElseThrow();
      LocalDate out = entry.returned().orElseThrow();
      return List.of(
          new Stay(home, start, in), new Stay(cellar, in, out), new Stay(home, out, end));
    }
    if (entry.ifBlank().equals(Optional.of(IfBlank.NOT_MOVED))) {
      return List.of(new Stay(home, start, end));
    }
    if (entry.returned().isEmpty()) {
      return p.stays();
    }
    LocalDate out = entry.movedDown().or(entry::movedIn).orElseThrow();
    LocalDate back = entry.returned().get();
    return List.of(
        new Stay(home, start, out),
        new Stay(p.stays().get(1).place(), out, back),
        new Stay(home, back, end));
  }

  private static Plant renamed(Plant p, String id) {
    return like(p, id, p.species(), p.home(), p.ownRootLimitC());
  }

  private static Plant like(
      Plant p, String id, Species species, String home, OptionalDouble ownLimitC) {
    return new Plant(
        id,
        p.label(),
        species,
        p.speciesAsWritten(),
        p.cultivar(),
        home,
        p.container(),
        p.lastRootWork(),
        p.vigour(),
        p.priority(),
        p.value(),
        ownLimitC,
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
