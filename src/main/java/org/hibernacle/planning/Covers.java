package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.thermal.BallTrace;
import org.hibernacle.thermal.Simulator;
import org.hibernacle.thermal.ThermalClass;

/**
 * Protection that is laid on where plants stand: the day on which mulch goes on, and wraps for pots
 * that are not carried.
 *
 * <p>Mulch keeps warmth in as well as cold out, so it goes on when the ball below it has cooled to
 * about {@value #COOLED_C} °C: on the day of the earliest winter on file in which a pot of 5 L that
 * stands there uncovered has a day's mean of that, between the start of the core months and
 * midwinter. A plan has one date for all winters, and the earliest is the safe one.
 */
public final class Covers {
  static final double COOLED_C = 2;

  /** Thickness of the ring of mulch round a wrapped pot, cm; own choice. */
  static final double RING_CM = 20;

  /** Mulch on top of a ball, m. */
  private static final double LID_M = 0.10;

  private final Inventory inventory;
  private final List<Winter> winters;
  private final Season season;

  private final Set<String> wrappedAnyway;

  private Covers(
      Inventory inventory, List<Winter> winters, Season season, Set<String> wrappedAnyway) {
    this.inventory = inventory;
    this.winters = winters;
    this.season = season;
    this.wrappedAnyway = wrappedAnyway;
  }

  /**
   * The inventory with its covers dated, and with a further place for each home in which pots can
   * be wrapped, if it has none yet.
   *
   * @param winters on file
   * @param season planned
   */
  static Inventory laid(Inventory inventory, List<Winter> winters, Season season) {
    return laid(inventory, winters, season, Set.of());
  }

  /**
   * The same for a season that was planned before.
   *
   * @param wrappedAnyway names of the places in which pots were wrapped, whatever the inventory
   *     says now
   */
  public static Inventory laid(
      Inventory inventory, List<Winter> winters, Season season, Set<String> wrappedAnyway) {
    Covers covers = new Covers(inventory, winters, season, wrappedAnyway);
    Stream<Place> dated = inventory.places().stream().map(covers::dated);
    return inventory.in(Stream.concat(dated, covers.wraps().stream()).toList());
  }

  private Place dated(Place place) {
    boolean follows = place.kind() == PlaceKind.GROUND && place.cover() == Cover.MULCH;
    return follows ? place.coveredFrom(cooledBy(place.uncovered())) : place;
  }

  private LocalDate cooledBy(Place bare) {
    double latitudeDeg = inventory.settings().latitudeDeg();
    int latest = season.index(season.midwinter());
    int earliest =
        winters.parallelStream()
            .map(winter -> new Simulator(winter, List.of(bare), latitudeDeg))
            .flatMapToInt(site -> coolNight(site).stream())
            .min()
            .orElse(latest);
    return season.day(Math.min(earliest, latest));
  }

  /** First night of the planned season that falls on the day on which the ball has cooled. */
  private OptionalInt coolNight(Simulator site) {
    Winter winter = site.winter();
    BallTrace trace =
        site.simulate(ThermalClass.of(SeasonPlanner.REFERENCE_POT), new int[winter.nights()]);
    int from = Math.max(0, winter.index(winter.season().coreStart()));
    return IntStream.range(from, winter.nights())
        .filter(n -> trace.ballMeanC()[n] <= COOLED_C)
        .map(n -> season.index(season.sameDay(winter.first().plusDays(n))))
        .findFirst();
  }

  /** A ring of mulch where the pot stands on the ground, fleece where air passes below it. */
  private List<Place> wraps() {
    Set<String> homes = new HashSet<>();
    inventory.plants().stream().filter(Covers::isWrapped).map(Plant::home).forEach(homes::add);
    List<Place> wraps = new ArrayList<>();
    for (Place place : inventory.places()) {
      boolean done =
          inventory.places().stream()
              .anyMatch(p -> p.wrapOf().filter(place.name()::equals).isPresent());
      boolean bare = !place.roofed() && place.cover() == Cover.NONE;
      boolean wanted =
          (homes.contains(place.name()) && bare) || wrappedAnyway.contains(place.name());
      if (wanted && !done) {
        boolean ground = place.kind() == PlaceKind.GROUND;
        Cover wrap = ground ? Cover.MULCH : Cover.FLEECE;
        wraps.add(place.wrapped(place.name() + Place.WRAPPED, wrap, ground ? RING_CM : 0));
      }
    }
    return wraps;
  }

  /** Mulch for the wraps of a row of pots, ring and lid, L; empty where the wrap is fleece. */
  static OptionalDouble wrapL(Plant plant, Place wrap) {
    if (wrap.cover() != Cover.MULCH) {
      return OptionalDouble.empty();
    }
    double footM2 = plant.container().footprintM2();
    double radiusM = Math.sqrt(footM2 / Math.PI);
    double ringM = wrap.coverDepthCm() / 100;
    double aroundM2 = Math.PI * (Math.pow(radiusM + ringM, 2) - radiusM * radiusM);
    double lidM3 = footM2 * Math.min(ringM, LID_M);
    double ringM3 = aroundM2 * plant.container().depthCm() / 100;
    return OptionalDouble.of(1000 * plant.count() * (ringM3 + lidM3));
  }

  /** Whether a place is the plant's home, or its home with the pot wrapped. */
  static boolean isOwn(Plant plant, Place place) {
    return place.wrapOf().orElse(place.name()).equals(plant.home());
  }

  /** Whether a plant is rather wrapped than carried: too heavy, or wished to stay at home. */
  static boolean isWrapped(Plant plant) {
    return Lifting.tooHeavyToCarry(plant)
        || plant.stayIn().filter(plant.home()::equals).isPresent();
  }
}
