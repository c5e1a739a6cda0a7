package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the cheapest path through the places, from home back to home: which place on each night,
 * with moves only on moving days, a least number of nights in a place before the next move, at most
 * {@value #MOST_MOVES} moves, and never in a place that is closed to it.
 *
 * <p>Exact dynamic programming over (night, place, moves made). A place is entered by {@code
 * arrived}; after the least stay it becomes {@code free}, from which the next move may start.
 */
final class StaySearch {
  static final int MOST_MOVES = 4;

  private static final long NONE = Long.MAX_VALUE;

  private final int nights;
  private final int places;
  private final int home;
  private final int leastNights;
  private final int[] begun;
  private final int standsIn;
  private final int movesMade;
  private final int mostMoves;
  private final boolean[] admissible;
  private final long[][] before;
  private final int[][] closedBefore;
  private final MoveRule mayMove;
  private final long[][][] free;
  private final long[][][] arrived;
  private final int[][][] cameFrom;

  /**
   * Nights of the path that can not be changed any more.
   *
   * @param placeByNight of these nights, from the first on; none where all is open
   * @param maySooner whether the next move may come before the least stay is over
   */
  record Begun(int[] placeByNight, boolean maySooner) {
    static final Begun NOTHING = new Begun(new int[0], false);
  }

  /** Whether a pot may be carried on a night's day, in that direction. */
  interface MoveRule {
    boolean allows(int night, int from, int to);
  }

  /** Whether a place has room on a night. Home always has. */
  interface OpenRule {
    boolean open(int place, int night);
  }

  /** Searches among whole paths. */
  StaySearch(
      long[][] costByPlaceAndNight,
      boolean[] admissible,
      int home,
      int leastNights,
      MoveRule mayMove,
      OpenRule room) {
    this(costByPlaceAndNight, admissible, home, leastNights, mayMove, room, Begun.NOTHING);
  }

  /**
   * Searches.
   *
   * @param costByPlaceAndNight of standing in each place on each night
   * @param admissible places that may be used at all; home always is
   * @param home index of the home place
   * @param leastNights in a place before the next move
   * @param mayMove moving days, hands and the keeper's wishes
   * @param room where and when there is any
   * @param begun nights that are fixed; the search goes on from there. Moves made count, but two
   *     are left to any plant, away and back
   */
  StaySearch(
      long[][] costByPlaceAndNight,
      boolean[] admissible,
      int home,
      int leastNights,
      MoveRule mayMove,
      OpenRule room,
      Begun begun) {
    places = costByPlaceAndNight.length;
    nights = costByPlaceAndNight[0].length;
    this.home = home;
    this.leastNights = leastNights;
    this.admissible = admissible.clone();
    this.begun = begun.placeByNight();
    standsIn = this.begun.length == 0 ? home : this.begun[this.begun.length - 1];
    movesMade = moves(this.begun);
    mostMoves = Math.max(MOST_MOVES, movesMade + 2);
    this.admissible[home] = true;
    this.admissible[standsIn] = true;
    this.mayMove = mayMove;
    free = new long[nights + 1][places][mostMoves + 1];
    arrived = new long[nights + 1][places][mostMoves + 1];
    cameFrom = new int[nights + 1][places][mostMoves + 1];
    before = new long[places][nights + 1];
    closedBefore = new int[places][nights + 1];
    for (int p = 0; p < places; p++) {
      for (int n = 0; n < nights; n++) {
        before[p][n + 1] = before[p][n] + costByPlaceAndNight[p][n];
        boolean closed = p != home && n >= this.begun.length && !room.open(p, n);
        closedBefore[p][n + 1] = closedBefore[p][n] + (closed ? 1 : 0);
      }
    }
    search(begun.maySooner() || !isShort(this.begun, leastNights));
  }

  private static int moves(int[] path) {
    int moves = 0;
    for (int n = 1; n < path.length; n++) {
      moves += path[n] != path[n - 1] ? 1 : 0;
    }
    return moves;
  }

  /** Night of the last move. */
  private static int lastMove(int[] path) {
    int n = path.length - 1;
    while (n > 0 && path[n] == path[n - 1]) {
      n--;
    }
    return Math.max(0, n);
  }

  /** Whether the last stay, if not the first, is shorter yet than the least. */
  static boolean isShort(int[] path, int leastNights) {
    return moves(path) > 0 && path.length - lastMove(path) < leastNights;
  }

  private boolean open(int place, int from, int to) {
    return closedBefore[place][to] == closedBefore[place][from];
  }

  private void search(boolean freeNow) {
    for (int n = 0; n <= nights; n++) {
      for (int p = 0; p < places; p++) {
        Arrays.fill(free[n][p], NONE);
        Arrays.fill(arrived[n][p], NONE);
      }
    }
    int start = begun.length;
    if (freeNow) {
      free[start][standsIn][movesMade] = costOfBegun(start);
    } else {
      int entered = lastMove(begun);
      arrived[entered][standsIn][movesMade] = costOfBegun(entered);
    }
    arrive(start);
    for (int n = start + 1; n <= nights; n++) {
      for (int p = 0; p < places; p++) {
        for (int moves = 0; moves <= mostMoves && admissible[p]; moves++) {
          free[n][p][moves] = cheapestFree(n, p, moves);
        }
      }
      arrive(n);
    }
  }

  private long costOfBegun(int toNight) {
    long cost = movesMade * Cost.MOVE;
    for (int n = 0; n < toNight; n++) {
      cost += before[begun[n]][n + 1] - before[begun[n]][n];
    }
    return cost;
  }

  private long cheapestFree(int n, int p, int moves) {
    long best = NONE;
    if (free[n - 1][p][moves] != NONE && open(p, n - 1, n)) {
      best = free[n - 1][p][moves] + before[p][n] - before[p][n - 1];
    }
    int entered = n - leastNights;
    if (entered >= 0 && arrived[entered][p][moves] != NONE && open(p, entered, n)) {
      best = Math.min(best, arrived[entered][p][moves] + before[p][n] - before[p][entered]);
    }
    return best;
  }

  /** Moves of one night; none on the first, which is spent at home. */
  private void arrive(int n) {
    for (int to = 0; to < places && n > 0 && n < nights; to++) {
      for (int from = 0; from < places && admissible[to]; from++) {
        if (from == to || !admissible[from] || !mayMove.allows(n, from, to)) {
          continue;
        }
        for (int moves = 0; moves < mostMoves; moves++) {
          if (free[n][from][moves] == NONE) {
            continue;
          }
          long cost = free[n][from][moves] + Cost.MOVE;
          if (cost < arrived[n][to][moves + 1]) {
            arrived[n][to][moves + 1] = cost;
            cameFrom[n][to][moves + 1] = from;
          }
        }
      }
    }
  }

  /**
   * Every path that costs no more than a budget, in no particular order.
   *
   * @param budget in units of {@link Cost}
   * @param most paths wanted; with more than these the list is cut
   */
  List<int[]> within(long budget, int most) {
    List<int[]> found = new ArrayList<>();
    int[] path = new int[nights];
    for (int m = 0; m <= mostMoves; m++) {
      for (int n = nights; n > Math.max(0, nights - leastNights); n--) {
        boolean late = n < nights && arrived[n][home][m] != NONE;
        if (late) {
          Arrays.fill(path, n, nights, home);
          long tail = before[home][nights] - before[home][n];
          backFromArrival(n, home, m, tail, path, new Wanted(budget, most, found));
        }
      }
      if (free[nights][home][m] != NONE) {
        backFromStay(nights, home, m, 0, path, new Wanted(budget, most, found));
      }
    }
    return found;
  }

  private record Wanted(long budget, int most, List<int[]> found) {
    boolean affords(long best, long tail) {
      return best != NONE && best + tail <= budget && found.size() <= most;
    }
  }

  /** Goes back over every stay that may end at night {@code n} in a place. */
  private void backFromStay(int n, int place, int moves, long tail, int[] path, Wanted wanted) {
    if (moves <= movesMade) {
      long all = tail + costOfBegun(begun.length) + before[place][n] - before[place][begun.length];
      if (moves == movesMade && place == standsIn && wanted.affords(0, all)) {
        System.arraycopy(begun, 0, path, 0, begun.length);
        Arrays.fill(path, begun.length, n, standsIn);
        wanted.found.add(path.clone());
      }
      return;
    }
    for (int e = n - leastNights; e > 0 && e >= begun.length && open(place, e, n); e--) {
      if (arrived[e][place][moves] != NONE) {
        Arrays.fill(path, e, n, place);
        backFromArrival(e, place, moves, tail + before[place][n] - before[place][e], path, wanted);
      }
    }
  }

  /** Goes back over every place that a plant may have come from. */
  private void backFromArrival(int n, int to, int moves, long tail, int[] path, Wanted wanted) {
    for (int from = 0; from < places && moves > 0; from++) {
      if (from == to || !admissible[from] || !mayMove.allows(n, from, to)) {
        continue;
      }
      if (wanted.affords(free[n][from][moves - 1], tail + Cost.MOVE)) {
        backFromStay(n, from, moves - 1, tail + Cost.MOVE, path, wanted);
      }
    }
  }

  /** The cheapest path, as the place of each night; left standing where no way leads home. */
  int[] cheapest() {
    long best = NONE;
    int moves = 0;
    int entered = -1;
    for (int m = 0; m <= mostMoves; m++) {
      if (free[nights][home][m] < best) {
        best = free[nights][home][m];
        moves = m;
        entered = -1;
      }
      for (int n = Math.max(0, nights - leastNights + 1); n < nights; n++) {
        if (arrived[n][home][m] == NONE) {
          continue;
        }
        long cost = arrived[n][home][m] + before[home][nights] - before[home][n];
        if (cost < best) {
          best = cost;
          moves = m;
          entered = n;
        }
      }
    }
    int place = home;
    if (best == NONE) {
      place = standsIn;
      moves = movesMade;
    }
    int[] path = Arrays.copyOf(begun, nights);
    int n = nights;
    while (n > 0) {
      if (moves == movesMade) {
        Arrays.fill(path, Math.min(n, begun.length), n, place);
        break;
      }
      int from = entered >= 0 ? entered : entry(n, place, moves);
      Arrays.fill(path, Math.max(0, from), n, place);
      if (from < 0) {
        break;
      }
      int previous = cameFrom[from][place][moves];
      n = from;
      place = previous;
      moves--;
      entered = -1;
    }
    return path;
  }

  /** Night on which the place was entered, or -1 if it was the first. */
  private int entry(int night, int place, int moves) {
    for (int n = night; n > 0; n--) {
      int entered = n - leastNights;
      if (entered >= 0
          && arrived[entered][place][moves] != NONE
          && open(place, entered, n)
          && free[n][place][moves]
              == arrived[entered][place][moves] + before[place][n] - before[place][entered]) {
        return entered;
      }
    }
    return -1;
  }
}
