package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.physiology.PlantState;
import org.hibernacle.physiology.Surroundings;
import org.hibernacle.thermal.BallTrace;
import org.hibernacle.thermal.ThermalClass;

/** Lives one plant through the winters on file along any path, and judges what it met. */
final class Trial {
  private final Plant plant;
  private final WintersOnFile winters;
  private final ThermalClass pot;
  private final Rules rules;
  private final RecentLives recent = new RecentLives();

  Trial(Plant plant, WintersOnFile winters, double safetyMarginK) {
    this.plant = plant;
    this.winters = winters;
    this.pot = ThermalClass.of(plant.container());
    this.rules = new Rules(plant, winters, safetyMarginK);
  }

  /** The truth: the pot carried from place to place, in every winter. */
  List<Lived> live(Path path) {
    return recent.along(
        path,
        () ->
            IntStream.range(0, winters.count())
                .parallel()
                .mapToObj(w -> live(w, winters.inWinter(w, path.placeByNight())))
                .toList());
  }

  /** The same, and carried back for the night whenever the forecast of a shuttle asks for it. */
  List<Lived> live(Path path, int home, Optional<Shuttle> shuttle) {
    List<Lived> staying = live(path);
    return shuttle.isEmpty()
        ? staying
        : staying.stream().map(lived -> withNightsBack(lived, home, shuttle.get())).toList();
  }

  /** Gives up what is remembered of lives, once no twin of the plant is planned any more. */
  void forget() {
    recent.forget();
  }

  /** The same in one winter, along a path by nights of that winter. */
  Lived live(int w, int[] path) {
    return judge(w, path, winters.carried(pot, w, path));
  }

  /**
   * The same, and carried back for the night whenever the forecast of a shuttle asks for it.
   *
   * @param home index of the plant's home
   */
  Lived live(int w, int[] path, int home, Optional<Shuttle> shuttle) {
    Lived lived = live(w, path);
    return shuttle.isEmpty() ? lived : withNightsBack(lived, home, shuttle.get());
  }

  private Lived withNightsBack(Lived lived, int home, Shuttle nights) {
    int w = lived.winter();
    int refuge = winters.places().indexOf(nights.refuge());
    Season season = winters.season();
    int[] shuttled = lived.path().clone();
    for (int n = 0; n < shuttled.length; n++) {
      LocalDate day = season.day(winters.planNight(w, n));
      if (shuttled[n] == home && nights.isNightBack(day, lived.trace().airMinC()[n])) {
        shuttled[n] = refuge;
      }
    }
    return live(w, shuttled);
  }

  /** The plant left standing at home all winter. */
  Lived atHome(int winter, int home) {
    return judge(winter, standingPath(winter, home), winters.standing(pot, winter, home));
  }

  /**
   * A first guess at standing in another place: its root ball there, judged by the limits that the
   * plant would have at home. Good until the plant has been in the place for some weeks.
   */
  Lived guess(Lived atHome, int place) {
    int w = atHome.winter();
    BallTrace trace = winters.standing(pot, w, place);
    Lived lived = new Lived(w, standingPath(w, place), trace, atHome.state(), List.of());
    return lived.judged(rules.judge(lived));
  }

  private int[] standingPath(int winter, int place) {
    int[] path = new int[winters.winter(winter).nights()];
    Arrays.fill(path, place);
    return path;
  }

  /** The same, its root ball having been lived before. */
  Lived judge(int w, int[] path, BallTrace trace) {
    PlantState state = PlantState.live(plant, winters.season(), surroundings(w, path, trace));
    Lived lived = new Lived(w, path, trace, state, List.of());
    return lived.judged(rules.judge(lived));
  }

  private Surroundings surroundings(int w, int[] path, BallTrace trace) {
    Winter winter = winters.winter(w);
    int nights = path.length;
    double[] portions = new double[nights];
    double[] hours = new double[nights];
    double[] heat = new double[nights];
    for (int n = 0; n < nights; n++) {
      PlaceNights place = winters.nights(w, path[n]);
      portions[n] = place.chillPortions()[n];
      hours[n] = place.chillHours()[n];
      heat[n] = place.growingDegreeHours()[n];
    }
    Season season = winter.season();
    return new Surroundings(
        trace.ballMeanC(),
        trace.airMeanC(),
        trace.airMinC(),
        winter.dayLengthH(),
        portions,
        hours,
        heat,
        winter.index(season.coreStart()),
        winter.index(season.midwinter()),
        winter.index(season.start().plusMonths(7)));
  }
}
