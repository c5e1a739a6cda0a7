package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hibernacle.planning.StaySearch.MoveRule;
import org.junit.jupiter.api.Test;

/** The search against trying every path, and both sides of its limits. */
class StaySearchTest {
  private static final int HOME = 0;
  private static final MoveRule ANY_NIGHT = (night, from, to) -> true;
  private static final MoveRule EVERY_SEVENTH = (night, from, to) -> night % 7 == 0;

  @Test
  void findsTheCheapestOfAllPaths() {
    long seed = 9_101;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 400; run++) {
      long[][] costs = randomCosts(random, 3, 40);
      boolean[] admissible = {true, random.nextInt(4) > 0, random.nextInt(4) > 0};
      int[] path = search(costs, admissible, EVERY_SEVENTH).cheapest();
      String where = "seed " + seed + ", run " + run + ": " + Arrays.toString(path);
      assertTrue(allowed(path, admissible, EVERY_SEVENTH), where);
      long cheapest = new EveryPath(costs, admissible, EVERY_SEVENTH).cheapest();
      assertEquals(cheapest, cost(path, costs), where);
    }
  }

  /** Moves forbidden in one direction, as by the keeper's wishes. */
  @Test
  void keepsToTheMovesThatAreAllowed() {
    long seed = 9_102;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 200; run++) {
      int notAfter = random.nextInt(40);
      MoveRule rule = (night, from, to) -> night % 5 == 0 && (from != HOME || night <= notAfter);
      long[][] costs = randomCosts(random, 3, 40);
      boolean[] all = {true, true, true};
      int[] path = search(costs, all, rule).cheapest();
      String where = "seed " + seed + ", run " + run + ": " + Arrays.toString(path);
      assertTrue(allowed(path, all, rule), where);
      assertEquals(new EveryPath(costs, all, rule).cheapest(), cost(path, costs), where);
    }
  }

  @Test
  void staysHomeWhereNothingIsBroken() {
    long[][] costs = new long[2][300];
    Arrays.fill(costs[1], Cost.SPRING_NIGHT_AWAY);
    assertArrayEquals(new int[300], search(costs));
  }

  /** One bad night: away for the least stay, home as late and back as early as it allows. */
  @Test
  void aStayLastsFourteenNightsAtLeast() {
    long[][] costs = new long[2][300];
    Arrays.fill(costs[1], Cost.SPRING_NIGHT_AWAY);
    costs[HOME][150] = 3 * Cost.BROKEN_TICK;
    int[] path = search(costs);
    assertEquals(14, Arrays.stream(path).sum());
    assertEquals(1, path[150]);
    assertEquals(2, new Path(path).moveNights().size());
  }

  /**
   * Fifteen nights after coming home home is bad again: home lasts fourteen nights or is skipped.
   */
  @Test
  void theLeastStayHoldsAtHomeToo() {
    for (int good : new int[] {13, 14, 15}) {
      long[][] costs = new long[2][300];
      Arrays.fill(costs[1], Cost.SPRING_NIGHT_AWAY);
      Arrays.fill(costs[1], 120, 120 + good, Cost.BROKEN_TICK);
      Arrays.fill(costs[HOME], 100, 120, Cost.BROKEN_TICK);
      Arrays.fill(costs[HOME], 120 + good, 140 + good, Cost.BROKEN_TICK);
      int[] path = search(costs);
      boolean cameHome = path[125] == HOME;
      assertEquals(good >= 14, cameHome && cost(path, costs) < Cost.BROKEN_TICK, good + " nights");
    }
  }

  /** Bad spells of 20 nights at home with 20 good ones between, the ground bad in those. */
  @Test
  void atMostFourMoves() {
    assertEquals(2, movesFor(1));
    assertEquals(4, movesFor(2));
    assertEquals(4, movesFor(3));
  }

  private static int movesFor(int spells) {
    long[][] costs = new long[2][300];
    Arrays.fill(costs[1], Cost.BROKEN_TICK);
    for (int spell = 0; spell < spells; spell++) {
      int from = 100 + 40 * spell;
      Arrays.fill(costs[HOME], from, from + 20, Cost.BROKEN_TICK);
      Arrays.fill(costs[1], from, from + 20, Cost.AUTUMN_NIGHT_AWAY);
    }
    return new Path(search(costs)).moveNights().size();
  }

  /** Two stays and their four moves, rather than one stay and a tick in the gap. */
  @Test
  void oneTickIsWorthMoreThanAllMovesTogether() {
    long[][] costs = new long[2][300];
    costs[HOME][50] = Cost.BROKEN_TICK;
    costs[HOME][150] = Cost.BROKEN_TICK;
    costs[1][100] = Cost.BROKEN_TICK;
    int[] path = search(costs);
    assertEquals(4, new Path(path).moveNights().size());
    assertEquals(4 * Cost.MOVE, cost(path, costs));
  }

  /** The season begins at home, so that every stay elsewhere has a move that leads to it. */
  @Test
  void theFirstNightIsSpentAtHome() {
    long[][] costs = new long[2][60];
    Arrays.fill(costs[HOME], 0, 30, Cost.BROKEN_TICK);
    int[] path = search(costs);
    assertEquals(HOME, path[0]);
    assertEquals(1, path[1]);
    assertEquals(2, new Path(path).moveNights().size());
  }

  @Test
  void thePathEndsAtHomeEvenIfItsLastStayIsShort() {
    long[][] costs = new long[2][60];
    Arrays.fill(costs[HOME], 0, 59, Cost.BROKEN_TICK);
    int[] path = search(costs);
    assertEquals(HOME, path[59]);
    assertEquals(1, path[58]);
    assertEquals(1, path[1]);
  }

  private static int[] begun(int... placeByNight) {
    return placeByNight;
  }

  private static int[] goOn(long[][] costs, int[] begun, boolean maySooner) {
    return new StaySearch(
            costs,
            new boolean[] {true, true},
            HOME,
            Stay.LEAST_NIGHTS,
            ANY_NIGHT,
            Openings.ALL,
            new StaySearch.Begun(begun, maySooner))
        .cheapest();
  }

  @Test
  void whatIsFixedIsKeptAndTheLeastStayCountsFromTheMoveMade() {
    long[][] costs = new long[2][60];
    Arrays.fill(costs[1], Cost.BROKEN_TICK);
    int[] fixed = begun(0, 0, 0, 1, 1, 1);
    int[] path = goOn(costs, fixed, false);
    assertArrayEquals(fixed, Arrays.copyOf(path, 6));
    assertEquals(1, path[16]);
    assertEquals(HOME, path[17], "3 + 14 nights");
    int[] sooner = goOn(costs, fixed, true);
    assertArrayEquals(fixed, Arrays.copyOf(sooner, 6));
    assertEquals(HOME, sooner[6]);
  }

  @Test
  void movesMadeCountButTwoAreAlwaysLeft() {
    long[][] costs = new long[2][200];
    int[] fixed = new int[80];
    for (int n = 0; n < fixed.length; n++) {
      fixed[n] = n / 16 % 2;
    }
    Arrays.fill(costs[HOME], 100, 120, Cost.BROKEN_TICK);
    int[] path = goOn(costs, fixed, false);
    assertArrayEquals(fixed, Arrays.copyOf(path, 80));
    assertEquals(1, path[110], "away once more after four moves");
    assertEquals(HOME, path[199]);
  }

  @Test
  void withoutAWayHomeItIsLeftStanding() {
    long[][] costs = new long[2][30];
    int[] path =
        new StaySearch(
                costs,
                new boolean[] {true, true},
                HOME,
                Stay.LEAST_NIGHTS,
                (night, from, to) -> false,
                Openings.ALL,
                new StaySearch.Begun(begun(0, 0, 1, 1), false))
            .cheapest();
    assertEquals(1, path[29]);
    assertEquals(HOME, path[1]);
  }

  private static int[] search(long[][] costs) {
    return search(costs, new boolean[] {true, true}, ANY_NIGHT).cheapest();
  }

  private static StaySearch search(long[][] costs, boolean[] admissible, MoveRule rule) {
    return new StaySearch(costs, admissible, HOME, Stay.LEAST_NIGHTS, rule, Openings.ALL);
  }

  /** Costs of the kinds a plan has: mostly none, some comfort, some broken rules. */
  private static long[][] randomCosts(SplittableRandom random, int places, int nights) {
    long[] kinds = {
      0, 0, Cost.STORAGE_DEGREE_DAY, Cost.SPRING_NIGHT_AWAY, Cost.ROOF_NIGHT, Cost.BROKEN_TICK
    };
    long[][] costs = new long[places][nights];
    for (long[] place : costs) {
      int n = 0;
      while (n < nights) {
        int until = Math.min(nights, n + random.nextInt(1, 12));
        Arrays.fill(place, n, until, random.nextInt(5) * kinds[random.nextInt(kinds.length)]);
        n = until;
      }
    }
    return costs;
  }

  private static long cost(int[] path, long[][] costs) {
    long sum = Cost.MOVE * new Path(path).moveNights().size();
    for (int n = 0; n < path.length; n++) {
      sum += costs[path[n]][n];
    }
    return sum;
  }

  private static boolean allowed(int[] path, boolean[] admissible, MoveRule rule) {
    List<Integer> moves = new Path(path).moveNights();
    boolean good = path[path.length - 1] == HOME && moves.size() <= StaySearch.MOST_MOVES;
    for (int i = 0; i < moves.size(); i++) {
      int night = moves.get(i);
      good &= i == 0 || night - moves.get(i - 1) >= Stay.LEAST_NIGHTS;
      good &= rule.allows(night, path[night - 1], path[night]) && admissible[path[night]];
    }
    return good;
  }

  /** Walks every path night by night; shares nothing with the search but the limits. */
  private static final class EveryPath {
    private final long[][] costs;
    private final boolean[] admissible;
    private final MoveRule rule;
    private long cheapest = Long.MAX_VALUE;

    EveryPath(long[][] costs, boolean[] admissible, MoveRule rule) {
      this.costs = costs;
      this.admissible = admissible;
      this.rule = rule;
    }

    long cheapest() {
      walk(0, HOME, 14, 0, 0);
      return cheapest;
    }

    private void walk(int night, int place, int stayed, int moves, long cost) {
      if (night == costs[0].length) {
        cheapest = place == HOME ? Math.min(cheapest, cost) : cheapest;
        return;
      }
      walk(night + 1, place, stayed + 1, moves, cost + costs[place][night]);
      for (int to = 0; to < costs.length && night > 0 && stayed >= 14 && moves < 4; to++) {
        if (to != place && admissible[to] && rule.allows(night, place, to)) {
          walk(night + 1, to, 1, moves + 1, cost + Cost.MOVE + costs[to][night]);
        }
      }
    }
  }
}
