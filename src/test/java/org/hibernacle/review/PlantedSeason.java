package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
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
          "OLIVE-10",
          "FIG-4",
          "CARMONA-3");
  private static final List<Double> SHIFTS_K = List.of(-1.0, 0.0, 1.0);

  /** One dead or hurt plant in ten is so for reasons of its own: invented. */
  private static final double OTHER_HARM = 0.15;

  /** What the keeper does. */
  enum Deed {
    AS_PLANNED,
    AS_PLANNED_TOO,
    AGAIN_AS_PLANNED,
    LEFT_OUT,
    LEFT_OUT_TOO,
    FIVE_WEEKS_LATE,
    TEN_WEEKS_LATE,
    HOME_THREE_WEEKS_EARLY,
    HOME_SEVEN_WEEKS_EARLY,
    IN_THE_CELLAR,
    IN_THE_WARM,
    FROM_THE_WARM_TO_THE_BENCH
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
        SeasonPlanner.plan(garden, before(weather), OptionalInt.of(SEASON.year())).orElseThrow();
    winters =
        plan.winters().stream()
            .map(w -> new KnownWinter(w.season(), w.coldestNightC(), w.coldestNight()))
            .toList();
    List<Place> places = new ArrayList<>(garden.places());
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
        new Inventory(rows.stream().map(Row::plant).toList(), places, garden.settings(), List.of());
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
    Plant potted = plants.get(0);
    for (String taxon : List.of("Picea omorika", "Picea glauca", "Rhododendron PJM Group")) {
      plants.add(like(potted, taxon.toUpperCase(Locale.ROOT), SomePlant.species(taxon)));
    }
    return new Inventory(plants, all.places(), all.settings(), List.of());
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
    if (deed == Deed.IN_THE_CELLAR
        || deed == Deed.IN_THE_WARM
        || deed == Deed.FROM_THE_WARM_TO_THE_BENCH) {
      if (!p.plant().species().group().restsCold()) {
        return Optional.empty();
      }
      boolean early = deed == Deed.FROM_THE_WARM_TO_THE_BENCH;
      return Optional.of(
          new LogEntry(
              id,
              Optional.empty(),
              Optional.of(LocalDate.of(2014, 10, 11)),
              Optional.empty(),
              Optional.of(early ? LocalDate.of(2014, 12, 27) : LocalDate.of(2015, 4, 26)),
              Optional.of(deed == Deed.IN_THE_CELLAR ? "Cellar" : "Garden room"),
              Optional.of(IfBlank.NOT_MOVED),
              Optional.empty(),
              Optional.empty(),
              ""));
    }
    if (p.moves().size() < 2) {
      return Optional.empty();
    }
    Move first = p.moves().get(0);
    Move last = p.moves().get(p.moves().size() - 1);
    LocalDate away = first.date();
    LocalDate home = last.date();
    switch (deed) {
      case LEFT_OUT, LEFT_OUT_TOO -> {
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
      LocalDate in = entry.movedIn().orElseThrow();
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
    return like(p, id, p.species());
  }

  private static Plant like(Plant p, String id, Species species) {
    return new Plant(
        id,
        p.label(),
        species,
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
