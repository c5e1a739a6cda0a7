package org.hibernacle.planning;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
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
import org.hibernacle.model.Species;
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
  static TemperatureSeries withMinima(
      TemperatureSeries series,
      ToDoubleFunction<java.util.Map.Entry<java.time.LocalDate, DailyExtremes>> minC) {
    TreeMap<java.time.LocalDate, DailyExtremes> days = new TreeMap<>();
    for (var day : series.days().entrySet()) {
      double lowest = minC.applyAsDouble(day);
      days.put(day.getKey(), new DailyExtremes(lowest, Math.max(lowest, day.getValue().maxC())));
    }
    return new TemperatureSeries(series.station(), days, series.hours());
  }

  /** All plants and places in that city. */
  public static Inventory inventory(City city) {
    return new Inventory(plants(), places(), settings(city), List.of());
  }

  private static Settings settings(City city) {
    return new Settings(
        city.station,
        1.5,
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
    List<Plant> plants = new ArrayList<>();
    plants.add(plant("LARCH-30", "Larix decidua", 30));
    plants.add(plant("PINE-30", "Pinus sylvestris", 30));
    plants.add(plant("MUGO-30", "Pinus mugo", 30));
    plants.add(plant("JUNIPER-8", "Juniperus chinensis", 8));
    plants.add(plant("JUNIPER-05", "Juniperus chinensis", 0.5));
    plants.add(plant("MAPLE-6", "Acer palmatum", 6));
    plants.add(plant("TRIDENT-5", "Acer buergerianum", 5));
    plants.add(plant("YEW-8", "Taxus baccata", 8));
    plants.add(plant("YEW-JP-8", "Taxus cuspidata", 8));
    plants.add(plant("AZALEA-5", "Rhododendron indicum", 5));
    plants.add(plant("CAMELLIA-8", "Camellia japonica", 8));
    plants.add(plant("OLIVE-10", "Olea europaea", 10));
    plants.add(plant("LEMON-8", "Citrus × limon", 8));
    plants.add(plant("FIG-4", "Ficus microcarpa", 4));
    plants.add(plant("CARMONA-3", "Ehretia microphylla", 3));
    return List.copyOf(plants);
  }

  /** A round ceramic pot twice as wide as deep. */
  private static Plant plant(String id, String taxon, double litres) {
    double depthCm = Math.cbrt(litres * 1000 / Math.PI);
    Species species = SpeciesCatalogue.builtIn().row(taxon).orElseThrow();
    return new Plant(
        id,
        "",
        species,
        taxon,
        "",
        BENCH,
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
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        1,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        true,
        Optional.empty(),
        Optional.empty(),
        Plant.Trust.NAMED,
        "");
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
