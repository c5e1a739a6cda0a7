package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;
import org.hibernacle.model.Species;

/**
 * Plans one plant: guesses where each place would break a rule, searches the cheapest path, lives
 * it in every winter, and tells the search what it met, until nothing new is met.
 */
final class PlantPlanner {
  /** Rounds of search and trial before the best path so far is taken as it is. */
  private static final int MOST_ROUNDS = 40;

  private static final int MOST_STORAGE_DEGREES_PER_NIGHT = 10;

  private final Plant plant;
  private final Settings settings;
  private final WintersOnFile winters;
  private final Season season;
  private final int home;
  private final int nights;
  private final Trial trial;

  PlantPlanner(Plant plant, Settings settings, WintersOnFile winters) {
    this.plant = plant;
    this.settings = settings;
    this.winters = winters;
    this.season = winters.season();
    this.nights = season.days();
    this.home = index(plant.home());
    this.trial = new Trial(plant, winters, settings.safetyMarginK());
  }

  /**
   * The path found and all that is known about it.
   *
   * @param path chosen
   * @param lived along it, one entry a winter
   * @param atHome the plant left at home, one entry a winter
   */
  record Found(Path path, List<Lived> lived, List<Lived> atHome) {}

  Found find() {
    List<Lived> atHome =
        IntStream.range(0, winters.count()).mapToObj(w -> trial.atHome(w, home)).toList();
    boolean[] admissible = admissible();
    int[][] broken = new int[winters.places().size()][nights];
    learn(broken, atHome);
    for (int p = 0; p < broken.length; p++) {
      if (admissible[p] && p != home) {
        int place = p;
        learn(broken, atHome.stream().map(lived -> trial.guess(lived, place)).toList());
      }
    }
    long[][] comfort = comfortCosts();
    Path path = Path.standing(nights, home);
    List<Lived> lived = atHome;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      path =
          new Path(
              new StaySearch(costs(broken, comfort), admissible, home, this::mayMove).cheapest());
      lived = trial.live(path.placeByNight());
      if (!learn(broken, lived)) {
        break;
      }
    }
    return new Tightening(this, winters.places()).tighten(new Found(path, lived, atHome));
  }

  /** Lives any other path, for reasons. */
  List<Lived> live(Path path) {
    return trial.live(path.placeByNight());
  }

  /** Raises what is known of broken rules; true if anything was new. */
  private boolean learn(int[][] broken, List<Lived> lives) {
    boolean news = false;
    for (Lived lived : lives) {
      int[] ticks = new int[lived.path().length];
      lived.violations().forEach(b -> ticks[b.night()] += Cost.ticks(b.violation()));
      for (int n = 0; n < ticks.length; n++) {
        int[] known = broken[lived.path()[n]];
        int night = winters.planNight(lived.winter(), n);
        if (ticks[n] > known[night]) {
          known[night] = Math.min(ticks[n], Cost.MOST_BROKEN_PER_NIGHT);
          news |= ticks[n] <= Cost.MOST_BROKEN_PER_NIGHT;
        }
      }
    }
    return news;
  }

  private long[][] costs(int[][] broken, long[][] comfort) {
    long[][] costs = new long[broken.length][nights];
    for (int p = 0; p < broken.length; p++) {
      for (int n = 0; n < nights; n++) {
        costs[p][n] = broken[p][n] * Cost.BROKEN_TICK + comfort[p][n];
      }
    }
    return costs;
  }

  private long[][] comfortCosts() {
    Species species = plant.species();
    int midwinter = season.index(season.midwinter());
    long[][] costs = new long[winters.places().size()][nights];
    for (int p = 0; p < costs.length; p++) {
      if (p == home) {
        continue;
      }
      boolean roofed = winters.places().get(p).roofed();
      double[] airC = typicalAirC(p);
      for (int n = 0; n < nights; n++) {
        long away = n < midwinter ? Cost.AUTUMN_NIGHT_AWAY : Cost.SPRING_NIGHT_AWAY;
        double outside = Math.max(species.minStoreC() - airC[n], airC[n] - species.maxStoreC());
        long degrees = Math.round(Math.max(0, Math.min(MOST_STORAGE_DEGREES_PER_NIGHT, outside)));
        costs[p][n] = away + (roofed ? Cost.ROOF_NIGHT + degrees * Cost.STORAGE_DEGREE_DAY : 0);
      }
    }
    return costs;
  }

  /** Mean over the winters of a place's week mean, by night of the planned season. */
  private double[] typicalAirC(int place) {
    double[] sum = new double[nights];
    int[] count = new int[nights];
    for (int w = 0; w < winters.count(); w++) {
      double[] weekMeanC = winters.nights(w, place).weekMeanC();
      for (int n = 0; n < weekMeanC.length; n++) {
        sum[winters.planNight(w, n)] += weekMeanC[n];
        count[winters.planNight(w, n)]++;
      }
    }
    for (int n = 0; n < nights; n++) {
      sum[n] = count[n] == 0 ? 0 : sum[n] / count[n];
    }
    return sum;
  }

  private boolean[] admissible() {
    boolean[] admissible = new boolean[winters.places().size()];
    for (int p = 0; p < admissible.length; p++) {
      Place place = winters.places().get(p);
      admissible[p] =
          plant.stayIn().isPresent() ? place.name().equals(plant.stayIn().get()) : suits(place);
    }
    return admissible;
  }

  private boolean suits(Place place) {
    Species species = plant.species();
    if (place.kind() == PlaceKind.BENCH) {
      return false;
    }
    if (!place.roofed()) {
      return true;
    }
    boolean fits =
        place.clearHeightCm().isEmpty()
            || plant.heightCm().isEmpty()
            || plant.heightCm().getAsDouble() <= place.clearHeightCm().getAsDouble();
    boolean warmForRest = species.group().restsCold() && place.kind() == PlaceKind.WARM_ROOM;
    Light needed = species.lightInStore();
    if (species.foliage() != Foliage.DECIDUOUS && needed == Light.DARK) {
      needed = Light.LOW;
    }
    return fits && !warmForRest && place.light().compareTo(needed) >= 0;
  }

  /** Whether the plant may be carried on that night's day. */
  boolean mayMove(int night, int from, int to) {
    LocalDate day = season.day(night);
    if (!settings.isMovingDay(day)) {
      return false;
    }
    if (plant.notBefore().filter(day::isBefore).isPresent()) {
      return false;
    }
    if (to == home && night < season.index(Move.earliestReturn(season))) {
      return false;
    }
    return from != home || plant.notAfter().filter(day::isAfter).isEmpty();
  }

  private int index(String name) {
    return IntStream.range(0, winters.places().size())
        .filter(p -> winters.places().get(p).name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Index of the plant's home. */
  int home() {
    return home;
  }

  /** The worst violation of any winter; ties by date. */
  static Optional<Violation> worst(List<Lived> lives) {
    return lives.stream()
        .flatMap(lived -> lived.violations().stream())
        .map(Lived.Broken::violation)
        .max(
            Comparator.comparingDouble(Violation::deficitK)
                .thenComparing(Violation::day, Comparator.reverseOrder()));
  }

  /** All violations, one a rule and winter: the worst of each, by date. */
  static List<Violation> summary(List<Lived> lives) {
    List<Violation> worst = new ArrayList<>();
    for (Lived lived : lives) {
      for (Rule rule : Rule.values()) {
        lived.violations().stream()
            .map(Lived.Broken::violation)
            .filter(v -> v.rule() == rule)
            .max(Comparator.comparingDouble(Violation::deficitK))
            .ifPresent(worst::add);
      }
    }
    worst.sort(Comparator.comparing(Violation::day).thenComparing(Violation::rule));
    return worst;
  }
}
