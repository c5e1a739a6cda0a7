package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;

/**
 * Plans one plant: guesses where each place would break a rule, searches the cheapest path, lives
 * it in every winter, and tells the search what it met, until nothing new is met. Then winters are
 * excused from the safety margin, as far as the accepted risk allows and as long as it makes the
 * path cheaper.
 */
final class PlantPlanner {
  /** Rounds of search and trial before the best path so far is taken as it is. */
  private static final int MOST_ROUNDS = 40;

  private final Plant plant;
  private final Settings settings;
  private final WintersOnFile winters;
  private final Season season;
  private final int home;
  private final int failuresAllowed;
  private final Trial trial;
  private final List<PlaceFit> fits;
  private final long[][] comfort;
  private final KnownBreaks known;
  private final List<Lived> atHome;

  /**
   * Gets ready to plan a plant. A pot that is too heavy to carry is wrapped where it stands, if
   * that is enough; else all places are thought of, and the pot wants a trolley.
   */
  static PlantPlanner of(Plant plant, Settings settings, Caution caution, WintersOnFile winters) {
    if (Lifting.tooHeavyToCarry(plant)) {
      PlantPlanner inPlace = new PlantPlanner(plant, settings, caution, winters, Covers::isOwn);
      if (inPlace.find().cost().brokenTicks() == 0) {
        return inPlace;
      }
    }
    return new PlantPlanner(plant, settings, caution, winters, (p, place) -> true);
  }

  private PlantPlanner(
      Plant plant,
      Settings settings,
      Caution caution,
      WintersOnFile winters,
      BiPredicate<Plant, Place> thoughtOf) {
    this.plant = plant;
    this.settings = settings;
    this.winters = winters;
    season = winters.season();
    home = index(plant.home());
    failuresAllowed = caution.failuresAllowed(plant);
    trial = new Trial(plant, winters, caution.marginK());
    fits =
        winters.places().stream()
            .map(
                place ->
                    thoughtOf.test(plant, place) ? PlaceFit.of(plant, place) : PlaceFit.NOT_WISHED)
            .toList();
    comfort = Comfort.costs(plant.species(), home, winters);
    known = new KnownBreaks(winters);
    atHome = IntStream.range(0, winters.count()).mapToObj(w -> trial.atHome(w, home)).toList();
  }

  /**
   * The path found and all that is known about it.
   *
   * @param path chosen
   * @param lived along it, one entry a winter
   * @param atHome the plant left at home, one entry a winter
   * @param excused winters in which it may break the safety margin, but no limit
   * @param cost of it
   * @param shuttle nights back in spring that {@code lived} has and {@code path} has not
   */
  record Found(
      Path path,
      List<Lived> lived,
      List<Lived> atHome,
      Set<Integer> excused,
      PathCost cost,
      Optional<Shuttle> shuttle) {}

  Found find() {
    known.learn(atHome);
    for (int p = 0; p < fits.size(); p++) {
      if (fits.get(p) == PlaceFit.SUITS && p != home) {
        known.learn(guess(p));
      }
    }
    Found best = search(Set.of(), Openings.ALL);
    Found next = best;
    for (int failures = 1; failures <= failuresAllowed; failures++) {
      List<Found> others = new ArrayList<>();
      for (int winter : binding(next)) {
        Set<Integer> excused = new TreeSet<>(next.excused());
        excused.add(winter);
        others.add(search(excused, Openings.ALL));
      }
      if (others.isEmpty()) {
        break;
      }
      next = others.stream().min(Comparator.comparing(Found::cost)).orElseThrow();
      best = next.cost().compareTo(best.cost()) < 0 ? next : best;
    }
    return best;
  }

  /** Standing in another place all winter, judged by the limits that the plant has at home. */
  List<Lived> guess(int place) {
    return atHome.stream().map(lived -> trial.guess(lived, place)).toList();
  }

  /**
   * Searches and lives until nothing new is met.
   *
   * @param excused winters from the safety margin
   * @param openings room and hands left to it
   */
  Found search(Set<Integer> excused, Openings openings) {
    Path path = Path.standing(season.days(), home);
    List<Lived> lived = atHome;
    int[][] worst = known.worst(excused);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      path = new Path(searchIn(worst, openings).cheapest());
      lived = trial.live(path.placeByNight());
      known.learn(lived);
      int[][] now = known.worst(excused);
      if (Arrays.deepEquals(worst, now)) {
        break;
      }
      worst = now;
    }
    Found found = found(path, lived, excused);
    return broughtHome(new Tightening(this, openings, winters.places()).tighten(found), openings);
  }

  /** Home by the time buds break, where nights back in spring make that possible. */
  private Found broughtHome(Found found, Openings openings) {
    if (found.cost().brokenTicks() > 0) {
      return found;
    }
    int[] places = found.path().placeByNight();
    return new Shuttles(plant, winters, trial, home)
        .bring(
            found.path(),
            found.lived(),
            found.excused(),
            n -> openings.handsFree(n) && mayMove(n, places[n - 1], home))
        .map(
            brought -> {
              long nightsBack = Cost.MOVE * brought.shuttle().mostInAWinter();
              long cost = Comfort.of(brought.path(), comfort) + nightsBack;
              return new Found(
                  brought.path(),
                  brought.lived(),
                  atHome,
                  found.excused(),
                  new PathCost(0, cost),
                  Optional.of(brought.shuttle()));
            })
        .orElse(found);
  }

  private StaySearch searchIn(int[][] worst, Openings openings) {
    return new StaySearch(
        costs(worst),
        suited(),
        home,
        Stay.LEAST_NIGHTS,
        (night, from, to) -> openings.handsFree(night) && mayMove(night, from, to),
        openings);
  }

  /** What the plant brings to the sharing of room and hands. */
  Claim claim(Found found) {
    int[][] worst = known.worst(found.excused());
    Ledger.Load load = Ledger.Load.of(plant, home);
    return new Claim() {
      @Override
      public Ledger.Load load() {
        return load;
      }

      @Override
      public Path wish() {
        return found.path();
      }

      @Override
      public Toll toll(Path path) {
        return Toll.of(plant, path.equals(found.path()) ? found.cost() : expected(path, worst));
      }

      @Override
      public Path cheapest(Openings left) {
        return new Path(searchIn(worst, left).cheapest());
      }

      @Override
      public List<Path> paths(OptionalLong extra, int most) {
        StaySearch search = searchIn(worst, Openings.ALL);
        long wish = found.cost().brokenTicks() * Cost.BROKEN_TICK + found.cost().comfort();
        long budget = extra.isPresent() ? wish + extra.getAsLong() : Long.MAX_VALUE / 2;
        List<Path> paths = new ArrayList<>(List.of(found.path()));
        search.within(budget, most).forEach(path -> paths.add(new Path(path)));
        return paths;
      }
    };
  }

  /** Cost of a path that was not lived, from what is known. */
  private PathCost expected(Path path, int[][] worst) {
    long ticks = 0;
    for (int n = 0; n < season.days(); n++) {
      ticks += worst[path.placeByNight()[n]][n];
    }
    return new PathCost(ticks, Comfort.of(path, comfort));
  }

  /** A path that was lived, with its cost. */
  Found found(Path path, List<Lived> lived, Set<Integer> excused) {
    long ticks = KnownBreaks.ticks(lived, excused);
    PathCost cost = new PathCost(ticks, Comfort.of(path, comfort));
    return new Found(path, lived, atHome, excused, cost, Optional.empty());
  }

  /**
   * Winters that may hold the dates where they are: the one that is first to break a rule at home,
   * the one that is last to, the worst there, and those that the path itself breaks a rule in.
   */
  private Set<Integer> binding(Found found) {
    Set<Integer> binding = new LinkedHashSet<>();
    List<Lived> threatened =
        atHome.stream()
            .filter(lived -> !found.excused().contains(lived.winter()))
            .filter(lived -> !lived.violations().isEmpty())
            .toList();
    BiFunction<Lived, Comparator<Integer>, Integer> night =
        (lived, order) ->
            lived.violations().stream()
                .map(b -> winters.planNight(lived.winter(), b.night()))
                .max(order)
                .orElseThrow();
    threatened.stream()
        .min(Comparator.comparing(lived -> night.apply(lived, Comparator.reverseOrder())))
        .ifPresent(lived -> binding.add(lived.winter()));
    threatened.stream()
        .max(Comparator.comparing(lived -> night.apply(lived, Comparator.naturalOrder())))
        .ifPresent(lived -> binding.add(lived.winter()));
    threatened.stream()
        .max(Comparator.comparingLong(lived -> KnownBreaks.ticks(List.of(lived), Set.of())))
        .ifPresent(lived -> binding.add(lived.winter()));
    found.lived().stream()
        .filter(lived -> !lived.violations().isEmpty())
        .map(Lived::winter)
        .filter(w -> !found.excused().contains(w))
        .forEach(binding::add);
    return binding;
  }

  /** Lives any other path, for reasons. */
  List<Lived> live(Path path) {
    return trial.live(path.placeByNight());
  }

  private long[][] costs(int[][] worst) {
    long[][] costs = new long[worst.length][season.days()];
    for (int p = 0; p < worst.length; p++) {
      for (int n = 0; n < costs[p].length; n++) {
        costs[p][n] = worst[p][n] * Cost.BROKEN_TICK + comfort[p][n];
      }
    }
    return costs;
  }

  private boolean[] suited() {
    boolean[] suited = new boolean[fits.size()];
    for (int p = 0; p < suited.length; p++) {
      suited[p] = fits.get(p) == PlaceFit.SUITS;
    }
    return suited;
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

  Plant plant() {
    return plant;
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
