package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
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
  private final WintersOnFile winters;
  private final Season season;
  private final int home;
  private final Begun begun;
  private final int failuresAllowed;
  private final Trial trial;
  private final List<PlaceFit> fits;

  /** Places by name: of two that cost the same the first is taken, whatever the order of rows. */
  private final int[] byName;

  private final MoveDays moveDays;
  private final long[][] comfort;
  private final KnownBreaks known;
  private final Kept<List<Lived>> atHome;

  /**
   * Gets ready to plan a plant. A pot that is too heavy to carry is wrapped where it stands, if
   * that is enough; else all places are thought of, and the pot wants a trolley.
   */
  static PlantPlanner of(Plant plant, Settings settings, Caution caution, WintersOnFile winters) {
    if (Lifting.tooHeavyToCarry(plant)) {
      PlantPlanner inPlace = new PlantPlanner(plant, settings, caution, winters, Covers::isOwn);
      if (inPlace.begun.atHome() && inPlace.find().cost().brokenTicks() == 0) {
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
    this.winters = winters;
    season = winters.season();
    begun = Begun.of(plant, winters);
    home = begun.home();
    failuresAllowed = caution.failuresAllowed(plant);
    trial = new Trial(plant, winters, caution.marginK());
    fits =
        winters.places().stream()
            .map(
                place ->
                    thoughtOf.test(plant, place) ? PlaceFit.of(plant, place) : PlaceFit.NOT_WISHED)
            .toList();
    byName =
        IntStream.range(0, fits.size())
            .boxed()
            .sorted(Comparator.comparing(p -> winters.places().get(p).name()))
            .mapToInt(p -> p)
            .toArray();
    moveDays = new MoveDays(plant, settings, season, home, begun.firstFree());
    comfort = Comfort.costs(plant.species(), home, winters);
    known = new KnownBreaks(winters);
    atHome = new Kept<>(this::leftStanding);
  }

  private List<Lived> leftStanding() {
    return begun.atHome()
        ? IntStream.range(0, winters.count()).mapToObj(w -> trial.atHome(w, home)).toList()
        : trial.live(begun.leftStanding(season.days()));
  }

  /** First night that can still be changed. */
  int firstFree() {
    return begun.firstFree();
  }

  /** What it asks of places and hands. */
  Ledger.Load load() {
    return Ledger.Load.of(plant, home, begun.standsIn());
  }

  private PlantPlanner(PlantPlanner other) {
    this(other, other.plant, other.known.copy());
  }

  private PlantPlanner(PlantPlanner other, Plant plant, KnownBreaks known) {
    this.plant = plant;
    this.known = known;
    winters = other.winters;
    season = other.season;
    home = other.home;
    failuresAllowed = other.failuresAllowed;
    trial = other.trial;
    begun = other.begun;
    fits = other.fits;
    byName = other.byName;
    moveDays = other.moveDays;
    comfort = other.comfort;
    atHome = other.atHome;
  }

  /** The planner of a plant that lives through the same; only to be searched on by a copy. */
  PlantPlanner ofTwin(Plant twin) {
    return new PlantPlanner(this, twin, known);
  }

  /** What all twins of the plant live through. */
  Trial trial() {
    return trial;
  }

  /** The same planner; what it learns from now on is its own. */
  PlantPlanner copy() {
    return new PlantPlanner(this);
  }

  /**
   * The path found and all that is known about it.
   *
   * @param path chosen
   * @param lives along it
   * @param lifeAtHome the plant left where it stands at first
   * @param excused winters in which it may break the safety margin, but no limit
   * @param cost of it
   * @param shuttle nights back in spring that {@code lives} have and {@code path} has not
   */
  record Found(
      Path path,
      Kept<List<Lived>> lives,
      Kept<List<Lived>> lifeAtHome,
      Set<Integer> excused,
      PathCost cost,
      Optional<Shuttle> shuttle) {

    /** What the plant lives through along the path, one entry a winter. */
    List<Lived> lived() {
      return lives.get();
    }

    /** What it would live through if it were left standing, one entry a winter. */
    List<Lived> atHome() {
      return lifeAtHome.get();
    }
  }

  Found find() {
    known.learn(atHome.get());
    for (int p = 0; p < fits.size(); p++) {
      if (fits.get(p) == PlaceFit.SUITS && p != home) {
        known.learn(guess(p));
      }
    }
    Found best = search(Set.of(), Openings.ALL);
    Found next = best;
    for (int failures = 1; failures <= failuresAllowed; failures++) {
      List<Found> others = new ArrayList<>();
      for (int winter : BindingWinters.of(next, winters)) {
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
    return atHome.get().stream().map(lived -> trial.guess(lived, place)).toList();
  }

  /**
   * Searches and lives until nothing new is met.
   *
   * @param excused winters from the safety margin
   * @param openings room and hands left to it
   */
  Found search(Set<Integer> excused, Openings openings) {
    Found found = search(excused, openings, false);
    if (found.cost().brokenTicks() == 0
        || !StaySearch.isShort(begun.placeByNight(), Stay.LEAST_NIGHTS)) {
      return found;
    }
    // What stands in danger may be carried again before its least stay is over.
    Found sooner = search(excused, openings, true);
    return sooner.cost().brokenTicks() < found.cost().brokenTicks() ? sooner : found;
  }

  private Found search(Set<Integer> excused, Openings openings, boolean sooner) {
    Path path = begun.leftStanding(season.days());
    List<Lived> lived = atHome.get();
    int[][] worst = known.worst(excused);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      path = path(searchIn(worst, openings, sooner).cheapest());
      lived = trial.live(path);
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
                  new Kept<>(brought::lived),
                  atHome,
                  found.excused(),
                  new PathCost(0, cost),
                  Optional.of(brought.shuttle()));
            })
        .orElse(found);
  }

  /** The search sees places by their rank in {@link #byName}. */
  private StaySearch searchIn(int[][] worst, Openings openings, boolean sooner) {
    return new StaySearch(
        costs(worst),
        suited(),
        rank(home),
        Stay.LEAST_NIGHTS,
        (night, from, to) -> openings.handsFree(night) && mayMove(night, byName[from], byName[to]),
        (rank, night) -> openings.open(byName[rank], night),
        new StaySearch.Begun(IntStream.of(begun.placeByNight()).map(this::rank).toArray(), sooner));
  }

  private int rank(int place) {
    return IntStream.range(0, byName.length)
        .filter(r -> byName[r] == place)
        .findFirst()
        .orElseThrow();
  }

  private Path path(int[] ranks) {
    return new Path(IntStream.of(ranks).map(rank -> byName[rank]).toArray());
  }

  /** What the plant brings to the sharing of room and hands. */
  Claim claim(Found found) {
    int[][] worst = known.worst(found.excused());
    Ledger.Load load = load();
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
        return path(searchIn(worst, left, false).cheapest());
      }

      @Override
      public List<Path> paths(OptionalLong extra, int most) {
        StaySearch search = searchIn(worst, Openings.ALL, false);
        long wish = found.cost().brokenTicks() * Cost.BROKEN_TICK + found.cost().comfort();
        long budget = extra.isPresent() ? wish + extra.getAsLong() : Long.MAX_VALUE / 2;
        List<Path> paths = new ArrayList<>(List.of(found.path()));
        search.within(budget, most).forEach(ranks -> paths.add(path(ranks)));
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
    return new Found(
        path, new Kept<>(lived, () -> trial.live(path)), atHome, excused, cost, Optional.empty());
  }

  /** Lives any other path, for reasons. */
  List<Lived> live(Path path) {
    return trial.live(path);
  }

  /** The same, with the nights back that a path may have. */
  List<Lived> live(Path path, Optional<Shuttle> shuttle) {
    return trial.live(path, home, shuttle);
  }

  private long[][] costs(int[][] worst) {
    long[][] costs = new long[worst.length][season.days()];
    for (int rank = 0; rank < worst.length; rank++) {
      int p = byName[rank];
      for (int n = 0; n < costs[rank].length; n++) {
        costs[rank][n] = worst[p][n] * Cost.BROKEN_TICK + comfort[p][n];
      }
    }
    return costs;
  }

  private boolean[] suited() {
    boolean[] suited = new boolean[fits.size()];
    for (int rank = 0; rank < suited.length; rank++) {
      suited[rank] = fits.get(byName[rank]) == PlaceFit.SUITS;
    }
    return suited;
  }

  /** Whether the plant may be carried on that night's day. */
  boolean mayMove(int night, int from, int to) {
    return moveDays.allow(night, from, to);
  }

  Plant plant() {
    return plant;
  }

  /** Index of the plant's home. */
  int home() {
    return home;
  }
}
