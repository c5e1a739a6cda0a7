package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.hibernacle.thermal.BallGuess;
import org.hibernacle.thermal.BallTrace;
import org.hibernacle.thermal.ModelError;
import org.hibernacle.thermal.Simulator;
import org.hibernacle.thermal.Standing;
import org.hibernacle.thermal.ThermalClass;

/**
 * The winters on file at every place of the inventory, and the calendar that maps nights of the
 * planned season to nights of each winter. Safe for several threads.
 */
final class WintersOnFile {
  private final Season season;
  private final List<Place> places;
  private final List<Simulator> simulators;
  private final PlaceNights[][] nights;
  private final int[][] planNight;
  private final Outlook outlook;
  private final Map<Spot, Kept<Standing>> standing = new ConcurrentHashMap<>();

  /** A pot in one place through one winter. */
  private record Spot(ThermalClass pot, int winter, int place) {}

  WintersOnFile(Season season, List<Winter> winters, List<Place> places, double latitudeDeg) {
    this(season, winters, places, latitudeDeg, Map.of());
  }

  WintersOnFile(
      Season season,
      List<Winter> winters,
      List<Place> places,
      double latitudeDeg,
      Map<String, HourlyAir> loggers) {
    this(season, winters, places, latitudeDeg, winter -> loggers, Outlook.NONE, BallGuess.USUAL);
  }

  /** The same with another guess about root balls. */
  WintersOnFile(
      Season season,
      List<Winter> winters,
      List<Place> places,
      double latitudeDeg,
      Map<String, HourlyAir> loggers,
      BallGuess guess) {
    this(season, winters, places, latitudeDeg, winter -> loggers, Outlook.NONE, guess);
  }

  WintersOnFile(
      Season season,
      List<Winter> winters,
      List<Place> places,
      double latitudeDeg,
      Function<Season, Map<String, HourlyAir>> loggers,
      Outlook outlook,
      BallGuess guess) {
    this.season = season;
    this.places = List.copyOf(places);
    this.outlook = outlook;
    simulators =
        winters.parallelStream()
            .map(w -> new Simulator(w, places, latitudeDeg, loggers.apply(w.season()), guess))
            .toList();
    nights = new PlaceNights[winters.size()][places.size()];
    planNight = new int[winters.size()][];
    for (int w = 0; w < winters.size(); w++) {
      Winter winter = winters.get(w);
      for (int p = 0; p < places.size(); p++) {
        nights[w][p] = PlaceNights.of(simulators.get(w), p);
      }
      planNight[w] =
          IntStream.range(0, winter.nights())
              .map(n -> season.index(season.sameDay(winter.first().plusDays(n))))
              .toArray();
    }
  }

  private WintersOnFile(
      Season season,
      List<Place> places,
      List<Simulator> simulators,
      PlaceNights[][] nights,
      int[][] planNight,
      Outlook outlook) {
    this.season = season;
    this.places = places;
    this.simulators = simulators;
    this.nights = nights;
    this.planNight = planNight;
    this.outlook = outlook;
  }

  /** All winters but one. */
  WintersOnFile without(int winter) {
    int[] kept = IntStream.range(0, count()).filter(w -> w != winter).toArray();
    return new WintersOnFile(
        season,
        places,
        IntStream.of(kept).mapToObj(simulators::get).toList(),
        IntStream.of(kept).mapToObj(w -> nights[w]).toArray(PlaceNights[][]::new),
        IntStream.of(kept).mapToObj(w -> planNight[w]).toArray(int[][]::new),
        outlook);
  }

  Season season() {
    return season;
  }

  List<Place> places() {
    return places;
  }

  int count() {
    return simulators.size();
  }

  Simulator simulator(int winter) {
    return simulators.get(winter);
  }

  Winter winter(int winter) {
    return simulators.get(winter).winter();
  }

  /** What is known of the planned season itself. */
  Outlook outlook() {
    return outlook;
  }

  /** First night of a winter that is judged. */
  int firstJudged(int winter) {
    int first = Rules.firstJudged(winter(winter));
    for (int n = first; outlook.inSeason() && n < winter(winter).nights(); n++) {
      if (planNight[winter][n] >= outlook.tonight()) {
        return n;
      }
    }
    return first;
  }

  /** Day on which that day of a winter was measured, or for which it is forecast. */
  LocalDate measuredOn(int winter, int day) {
    LocalDate date = winter(winter).first().plusDays(day);
    return outlook.measuredOn(winter(winter).season(), date);
  }

  PlaceNights nights(int winter, int place) {
    return nights[winter][place];
  }

  /** How far the model of a place was from its logger in all winters; empty without readings. */
  Optional<ModelError> modelError(int place) {
    return simulators.stream().flatMap(s -> s.modelError(place).stream()).reduce(ModelError::and);
  }

  /** Night of the planned season that falls on the same day as a night of a winter. */
  int planNight(int winter, int night) {
    return planNight[winter][night];
  }

  /** The same path, by nights of a winter. */
  int[] inWinter(int winter, int[] placeByPlanNight) {
    return IntStream.of(planNight[winter]).map(i -> placeByPlanNight[i]).toArray();
  }

  /** A pot that stands in one place all winter. */
  BallTrace standing(ThermalClass pot, int winter, int place) {
    return stands(pot, winter, place).trace();
  }

  private Standing stands(ThermalClass pot, int winter, int place) {
    return standing
        .computeIfAbsent(
            new Spot(pot, winter, place),
            spot -> new Kept<>(() -> simulator(winter).standing(pot, place)))
        .get();
  }

  /** A pot that is carried from place to place. */
  BallTrace carried(ThermalClass pot, int winter, int[] path) {
    return simulator(winter).simulate(pot, path, place -> stands(pot, winter, place));
  }
}
