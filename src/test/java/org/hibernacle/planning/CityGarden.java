package org.hibernacle.planning;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hibernacle.input.Problems;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.input.TemperatureUnit;
import org.hibernacle.model.Container;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;

/** One invented collection that winters under the measured weather of two cities. */
public final class CityGarden {
  /** Where the weather was measured. */
  public enum City {
    NEW_YORK("New York", 40.7, -74.0, "America/New_York"),
    SEATTLE("Seattle", 47.6, -122.3, "America/Los_Angeles");

    private final String station;
    private final double latitudeDeg;
    private final double longitudeDeg;
    private final String zone;

    City(String station, double latitudeDeg, double longitudeDeg, String zone) {
      this.station = station;
      this.latitudeDeg = latitudeDeg;
      this.longitudeDeg = longitudeDeg;
      this.zone = zone;
    }
  }

  private static final String BENCH = "Bench";

  private static final Map<City, SeasonPlan> PLANS = new ConcurrentHashMap<>();

  private CityGarden() {}

  /** Measured days of 2012 to 2015; {@code noaa/README.md} says where from. */
  public static TemperatureSeries weather(City city) {
    return TemperatureCsv.read(
            List.of(Path.of("src", "test", "resources", "noaa", "weather.csv")),
            new TemperatureCsv.Options(
                Optional.of(city.station),
                Optional.of(TemperatureUnit.C),
                Optional.empty(),
                Optional.empty()),
            new Problems())
        .orElseThrow();
  }

  /** The series with other minima; a maximum below its new minimum is lifted to it. */
  public static TemperatureSeries withMinima(
      TemperatureSeries series, ToDoubleFunction<Map.Entry<LocalDate, DailyExtremes>> minC) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (var day : series.days().entrySet()) {
      double lowest = minC.applyAsDouble(day);
      days.put(day.getKey(), new DailyExtremes(lowest, Math.max(lowest, day.getValue().maxC())));
    }
    return new TemperatureSeries(series.station(), days, series.hours());
  }

  /** All plants and places in that city. */
  public static Inventory inventory(City city) {
    return inventory(city, 1.5);
  }

  /** The same where the bench is otherwise colder than the station. */
  static Inventory inventory(City city, double siteColderByK) {
    return new Inventory(plants(), places(), settings(city, siteColderByK), List.of());
  }

  /** The same garden where the mulched bed has little room and little is carried on one day. */
  static Inventory scarceInventory(City city, double bedM2, int potsADay) {
    List<Place> places =
        places().stream()
            .map(p -> p.name().equals("Mulched bed") ? p.withFloor(OptionalDouble.of(bedM2)) : p)
            .toList();
    Settings busy = settings(city, 1.5).withHands(OptionalInt.of(potsADay), OptionalInt.empty());
    return new Inventory(plants(), places, busy, List.of());
  }

  /** The plan of that city's garden, made once. */
  public static SeasonPlan plan(City city) {
    return PLANS.computeIfAbsent(city, c -> planOf(inventory(c), weather(c)));
  }

  static SeasonPlan planOf(Inventory inventory, TemperatureSeries weather) {
    return SeasonPlanner.planOnly(inventory, weather, OptionalInt.empty()).orElseThrow();
  }

  /**
   * The same plants where there is hardly anywhere to go: a hedge foot, and a dark cellar that is
   * too warm in autumn. Two more may not freeze at all: one with roots to be cut in December, one
   * in a pot that cracks.
   */
  public static Inventory poorInventory(City city) {
    PlaceBuilder cellar = new PlaceBuilder("Cellar", PlaceKind.COLD_STORE);
    cellar.warmerByK = 7;
    cellar.lagHours = 72;
    cellar.vents = true;
    List<Place> places = new ArrayList<>(places().subList(0, 2));
    places.add(cellar.build());
    List<Plant> plants = new ArrayList<>(plants());
    PlantBuilder cut = new PlantBuilder("MAPLE-CUT", "Acer palmatum", 6);
    cut.plannedRootWork = Optional.of(LocalDate.of(2015, 12, 12));
    plants.add(cut.build());
    PlantBuilder cracks = new PlantBuilder("LARCH-CRACK", "Larix decidua", 12);
    cracks.frostProofPot = false;
    plants.add(cracks.build());
    return new Inventory(plants, places, settings(city, 1.5), List.of());
  }

  /**
   * A yard, open to the wind, with a tub that nobody carries, a small pot that its keeper wants to
   * stay, and one that may go; and a tub on the bench.
   */
  public static Inventory yardInventory(City city) {
    List<Place> places = new ArrayList<>(places().subList(0, 3));
    places.add(new PlaceBuilder("Yard", PlaceKind.GROUND).build());
    PlantBuilder stays = new PlantBuilder("MAPLE-STAYS", "Acer palmatum", 8);
    stays.stayIn = Optional.of("Yard");
    List<PlantBuilder> plants =
        List.of(
            new PlantBuilder("MAPLE-TUB", "Acer palmatum", 60),
            stays,
            new PlantBuilder("MAPLE-GOES", "Acer palmatum", 8));
    plants.forEach(p -> p.home = "Yard");
    List<Plant> all = new ArrayList<>(plants.stream().map(PlantBuilder::build).toList());
    all.add(new PlantBuilder("TUB-BENCH", "Acer palmatum", 60).build());
    return new Inventory(all, places, settings(city, 1.5), List.of());
  }

  /** The same plants, all in pots of 25 L that want two people. */
  static Inventory heavyInventory(City city) {
    List<Plant> heavy =
        builders().map(p -> new PlantBuilder(p.id, p.taxon, 25)).map(PlantBuilder::build).toList();
    return new Inventory(heavy, places(), settings(city, 1.5), List.of());
  }

  private static Settings settings(City city, double siteColderByK) {
    return new Settings(
        city.station,
        siteColderByK,
        city.latitudeDeg,
        city.longitudeDeg,
        ZoneId.of(city.zone),
        Settings.Units.METRIC,
        2,
        0,
        Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY),
        List.of(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        Settings.Paper.LETTER,
        DayOfWeek.SUNDAY,
        Locale.US);
  }

  private static List<Place> places() {
    PlaceBuilder bench = new PlaceBuilder(BENCH, PlaceKind.BENCH);
    PlaceBuilder hedge = new PlaceBuilder("Hedge foot", PlaceKind.GROUND);
    hedge.wind = Place.Wind.SHELTERED;
    PlaceBuilder mulched = new PlaceBuilder("Mulched bed", PlaceKind.GROUND);
    mulched.wind = Place.Wind.SHELTERED;
    mulched.cover = Place.Cover.MULCH;
    mulched.coverDepthCm = 25;
    PlaceBuilder shed = new PlaceBuilder("Shed", PlaceKind.COLD_STORE);
    shed.light = Light.LOW;
    shed.lagHours = 24;
    shed.warmerByK = 1.5;
    PlaceBuilder glass = new PlaceBuilder("Glasshouse", PlaceKind.GLASSHOUSE);
    glass.lowestHeldC = OptionalDouble.of(3);
    glass.vents = true;
    PlaceBuilder room = new PlaceBuilder("Garden room", PlaceKind.WARM_ROOM);
    room.lowestHeldC = OptionalDouble.of(16);
    room.highestHeldC = OptionalDouble.of(24);
    return List.of(
        bench.build(), hedge.build(), mulched.build(), shed.build(), glass.build(), room.build());
  }

  private static List<Plant> plants() {
    return builders().map(PlantBuilder::build).toList();
  }

  private static Stream<PlantBuilder> builders() {
    return Stream.of(
        new PlantBuilder("LARCH-30", "Larix decidua", 30),
        new PlantBuilder("PINE-30", "Pinus sylvestris", 30),
        new PlantBuilder("MUGO-30", "Pinus mugo", 30),
        new PlantBuilder("JUNIPER-8", "Juniperus chinensis", 8),
        new PlantBuilder("JUNIPER-05", "Juniperus chinensis", 0.5),
        new PlantBuilder("MAPLE-6", "Acer palmatum", 6),
        new PlantBuilder("TRIDENT-5", "Acer buergerianum", 5),
        new PlantBuilder("YEW-8", "Taxus baccata", 8),
        new PlantBuilder("YEW-JP-8", "Taxus cuspidata", 8),
        new PlantBuilder("AZALEA-5", "Rhododendron indicum", 5),
        new PlantBuilder("CAMELLIA-8", "Camellia japonica", 8),
        new PlantBuilder("OLIVE-10", "Olea europaea", 10),
        new PlantBuilder("LEMON-8", "Citrus × limon", 8),
        new PlantBuilder("FIG-4", "Ficus microcarpa", 4),
        new PlantBuilder("CARMONA-3", "Ehretia microphylla", 3));
  }

  /** A plant in a round ceramic pot twice as wide as deep. */
  private static final class PlantBuilder {
    private final String id;
    private final String taxon;
    private final double litres;
    private String home = BENCH;
    private Optional<String> stayIn = Optional.empty();
    private boolean frostProofPot = true;
    private Optional<LocalDate> plannedRootWork = Optional.empty();

    PlantBuilder(String id, String taxon, double litres) {
      this.id = id;
      this.taxon = taxon;
      this.litres = litres;
    }

    Plant build() {
      double depthCm = Math.cbrt(litres * 1000 / Math.PI);
      return new Plant(
          id,
          "",
          SpeciesCatalogue.builtIn().row(taxon).orElseThrow(),
          taxon,
          "",
          home,
          new Container(
              Container.Shape.ROUND,
              2 * depthCm,
              2 * depthCm,
              depthCm,
              litres,
              Container.Material.CERAMIC),
          Optional.empty(),
          Plant.Vigour.NORMAL,
          3,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          stayIn,
          Optional.empty(),
          Optional.empty(),
          1,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          frostProofPot,
          plannedRootWork,
          Optional.empty(),
          Plant.Trust.NAMED,
          "");
    }
  }

  /** A place that starts from what its kind stands for. */
  private static final class PlaceBuilder {
    private final String name;
    private final PlaceKind kind;
    private Place.Wind wind = Place.Wind.OPEN;
    private Place.Cover cover = Place.Cover.NONE;
    private double coverDepthCm;
    private Light light;
    private OptionalDouble lowestHeldC = OptionalDouble.empty();
    private OptionalDouble highestHeldC = OptionalDouble.empty();
    private double warmerByK;
    private double lagHours;
    private boolean vents;

    PlaceBuilder(String name, PlaceKind kind) {
      this.name = name;
      this.kind = kind;
      this.light = kind.defaultLight();
      this.warmerByK = kind.defaultWarmerByK();
      this.lagHours = kind.defaultLagHours();
    }

    Place build() {
      return new Place(
          name,
          kind,
          OptionalDouble.empty(),
          Place.Sun.FULL,
          wind,
          cover,
          coverDepthCm,
          light,
          lowestHeldC,
          highestHeldC,
          warmerByK,
          lagHours,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          vents,
          "");
    }
  }
}
