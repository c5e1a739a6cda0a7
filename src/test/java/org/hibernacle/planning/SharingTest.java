package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Sharing against trying every combination of every path: up to four plants, three places, ten
 * days, with limits on room and on hands.
 */
class SharingTest {
  private static final int HOME = 0;
  private static final int LEAST_NIGHTS = 2;
  private static final int NIGHTS = 10;
  private static final int PLACES = 3;
  private static final Toll UNPAYABLE = Toll.of(5, 0, Integer.MAX_VALUE, new PathCost(1, 0));

  @Test
  void costsAsLittleAsTheBestOfAllWays() {
    long seed = 9_201;
    SplittableRandom random = new SplittableRandom(seed);
    int contested = 0;
    int alsoLost = 0;
    for (int run = 0; run < 40; run++) {
      Case c = new Case(random);
      Sharing.Shared shared = Sharing.share(c.claims(), c.ledger());
      String where = "seed " + seed + ", run " + run;
      assertTrue(shared.proven(), where);
      assertTrue(c.allowed(shared.paths()), where);
      Toll least = c.leastOfAll();
      assertEquals(0, least.compareTo(shared.toll()), where);
      assertTrue(shared.bound().compareTo(shared.toll()) <= 0, where);
      contested += shared.bound().compareTo(shared.toll()) < 0 ? 1 : 0;
      alsoLost += shared.toll().costsMoreThan(shared.bound()).isEmpty() ? 1 : 0;
    }
    assertTrue(contested >= 15, "cases with too little room or hands: " + contested);
    assertTrue(alsoLost >= 3, "cases in which someone is lost: " + alsoLost);
  }

  /** With the plants' paths as they are, more of anything never costs more. */
  @Test
  void moreRoomOrHandsNeverCostMore() {
    long seed = 9_202;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 40; run++) {
      Case c = new Case(random);
      Toll tight = Sharing.share(c.claims(), c.ledger()).toll();
      Toll roomy = Sharing.share(c.claims(), c.with(1.5, 0).ledger()).toll();
      Toll handy = Sharing.share(c.claims(), c.with(1, 1).ledger()).toll();
      String where = "seed " + seed + ", run " + run;
      assertTrue(roomy.compareTo(tight) <= 0, where);
      assertTrue(handy.compareTo(tight) <= 0, where);
    }
  }

  /** A few plants that share a garden of ten days. */
  private record Case(
      List<Plant> plants, double[] floorM2, OptionalInt mostPots, OptionalInt mostMinutes) {
    Case(SplittableRandom random) {
      this(
          plants(random),
          new double[] {1, 1 + random.nextInt(3), 1 + random.nextInt(4)},
          random.nextInt(3) == 0 ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(3)),
          random.nextInt(3) > 0 ? OptionalInt.empty() : OptionalInt.of(10 + random.nextInt(20)));
    }

    private static List<Plant> plants(SplittableRandom random) {
      List<Plant> plants = new ArrayList<>();
      int count = 2 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        plants.add(new Plant(random));
      }
      return plants;
    }

    Case with(double roomTimes, int morePots) {
      return new Case(
          plants,
          Arrays.stream(floorM2).map(m2 -> m2 * roomTimes).toArray(),
          mostPots.isEmpty() ? mostPots : OptionalInt.of(mostPots.getAsInt() + morePots),
          mostMinutes);
    }

    List<Claim> claims() {
      return plants.stream().map(p -> (Claim) p).toList();
    }

    Ledger ledger() {
      return new Ledger(floorM2, NIGHTS, mostPots, mostMinutes);
    }

    /** Tries every path of every plant with every path of every other. */
    Toll leastOfAll() {
      List<List<Path>> every = plants.stream().map(Plant::everyPath).toList();
      return least(every, 0, new Taken(this), Toll.NOTHING, UNPAYABLE);
    }

    private Toll least(List<List<Path>> every, int i, Taken taken, Toll paid, Toll best) {
      if (i == every.size() || paid.compareTo(best) >= 0) {
        return paid.compareTo(best) < 0 ? paid : best;
      }
      Toll least = best;
      for (Path path : every.get(i)) {
        // More plants only take more.
        if (taken.add(plants.get(i), path, 1)) {
          Toll with = paid.plus(plants.get(i).toll(path));
          least = least(every, i + 1, taken, with, least);
        }
        taken.add(plants.get(i), path, -1);
      }
      return least;
    }

    boolean allowed(List<Path> paths) {
      Taken taken = new Taken(this);
      boolean allowed = true;
      for (int i = 0; i < paths.size(); i++) {
        allowed &= taken.add(plants.get(i), paths.get(i), 1);
      }
      return allowed;
    }
  }

  /** Room and hands counted apart from the ledger. */
  private static final class Taken {
    private final Case limits;
    private final double[][] m2 = new double[NIGHTS][PLACES];
    private final int[] pots = new int[NIGHTS];
    private final int[] minutes = new int[NIGHTS];
    private final int[] rows = new int[NIGHTS];

    Taken(Case limits) {
      this.limits = limits;
    }

    /** Adds a plant, or takes it away; whether everything is within limits then. */
    boolean add(Plant plant, Path path, int sign) {
      boolean within = true;
      int[] places = path.placeByNight();
      for (int n = 0; n < NIGHTS; n++) {
        m2[n][places[n]] += sign * plant.load.floorM2();
        if (n > 0 && places[n] != places[n - 1]) {
          pots[n] += sign * plant.load.pots();
          minutes[n] += sign * plant.load.minutes();
          rows[n] += sign;
        }
        boolean full = m2[n][1] > limits.floorM2[1] + 1e-6 || m2[n][2] > limits.floorM2[2] + 1e-6;
        boolean tired =
            pots[n] > limits.mostPots.orElse(99) || minutes[n] > limits.mostMinutes.orElse(999);
        within &= !full && !(tired && rows[n] > 1);
      }
      return within;
    }
  }

  /** A plant with made-up costs, and all its paths by walking night by night. */
  private static final class Plant implements Claim {
    private final Ledger.Load load;
    private final int priority;
    private final double value;
    private final long[][] comfort = new long[PLACES][NIGHTS];
    private final int[][] ticks = new int[PLACES][NIGHTS];
    private final StaySearch search;

    Plant(SplittableRandom random) {
      load =
          new Ledger.Load(
              HOME, 0.5 + random.nextInt(3) / 2.0, 1 + random.nextInt(2), 5 + random.nextInt(10));
      priority = 1 + random.nextInt(5);
      value = random.nextInt(3) * 10;
      for (int p = 0; p < PLACES; p++) {
        for (int n = 0; n < NIGHTS; n++) {
          comfort[p][n] = p == HOME ? 0 : random.nextInt(4) * Cost.SPRING_NIGHT_AWAY;
        }
      }
      int from = 1 + random.nextInt(5);
      Arrays.fill(ticks[HOME], from, from + 3 + random.nextInt(2), 1 + random.nextInt(3));
      if (random.nextInt(3) == 0) {
        ticks[1][random.nextInt(NIGHTS)] = 1;
      }
      search = search(Openings.ALL);
    }

    private StaySearch search(Openings left) {
      long[][] costs = new long[PLACES][NIGHTS];
      for (int p = 0; p < PLACES; p++) {
        for (int n = 0; n < NIGHTS; n++) {
          costs[p][n] = ticks[p][n] * Cost.BROKEN_TICK + comfort[p][n];
        }
      }
      boolean[] all = {true, true, true};
      return new StaySearch(
          costs, all, HOME, LEAST_NIGHTS, (night, from, to) -> left.handsFree(night), left);
    }

    @Override
    public Ledger.Load load() {
      return load;
    }

    @Override
    public Path wish() {
      return new Path(search.cheapest());
    }

    @Override
    public Toll toll(Path path) {
      long broken = 0;
      long cost = Cost.MOVE * path.moveNights().size();
      for (int n = 0; n < NIGHTS; n++) {
        broken += ticks[path.placeByNight()[n]][n];
        cost += comfort[path.placeByNight()[n]][n];
      }
      return Toll.of(priority, value, load.pots(), new PathCost(broken, cost));
    }

    @Override
    public Path cheapest(Openings left) {
      return new Path(search(left).cheapest());
    }

    @Override
    public List<Path> paths(OptionalLong extra, int most) {
      PathCost wish = costOfWish();
      long scalar = wish.brokenTicks() * Cost.BROKEN_TICK + wish.comfort();
      long budget = extra.isPresent() ? scalar + extra.getAsLong() : Long.MAX_VALUE / 2;
      return search.within(budget, most).stream().map(Path::new).toList();
    }

    private PathCost costOfWish() {
      long[] fields = toll(wish()).fields();
      return new PathCost(fields[fields.length - 2], fields[fields.length - 1]);
    }

    List<Path> everyPath() {
      List<Path> every = new ArrayList<>();
      walk(new int[NIGHTS], 1, LEAST_NIGHTS, 0, every);
      return every;
    }

    /** A first stay of any length; the last one at home may be short. */
    private void walk(int[] path, int night, int stayed, int moves, List<Path> every) {
      int here = path[night - 1];
      if (night == NIGHTS) {
        if (here == HOME) {
          every.add(new Path(path.clone()));
        }
        return;
      }
      path[night] = here;
      walk(path, night + 1, stayed + 1, moves, every);
      for (int to = 0; to < PLACES && stayed >= LEAST_NIGHTS && moves < 4; to++) {
        if (to != here) {
          path[night] = to;
          walk(path, night + 1, 1, moves + 1, every);
        }
      }
    }
  }
}
