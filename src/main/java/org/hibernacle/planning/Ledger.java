package org.hibernacle.planning;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;

/**
 * How much floor of each place is taken on each night, and how much is carried on each day.
 *
 * <p>Work is counted in pots, in minutes, or in both, as the settings limit it. Minutes are a rough
 * figure of our own: {@value #MINUTES_A_POT} for a pot, {@value #MINUTES_A_HEAVY_POT} for one that
 * wants two people. A row that is more than a day's work by itself may have a day to itself.
 */
final class Ledger {
  private static final int MINUTES_A_POT = 5;
  private static final int MINUTES_A_HEAVY_POT = 20;

  /** Sums of floors are not exact. */
  private static final double CRUMB_M2 = 1e-9;

  private final double[] floorM2;

  /** Index of the place whose floor each place takes: pots are wrapped where they stand. */
  private final int[] floorOf;

  private final double[][] takenM2;
  private final long[] pots;
  private final long[] minutes;
  private final OptionalInt mostPots;
  private final OptionalInt mostMinutes;
  private final int first;

  /**
   * Empty.
   *
   * @param first night that is counted; what was before can not be changed
   */
  Ledger(List<Place> places, int nights, Settings settings, int first) {
    this(
        places.stream().mapToDouble(p -> p.floorM2().orElse(Double.POSITIVE_INFINITY)).toArray(),
        floors(places),
        nights,
        settings.plantsPerMovingDay(),
        settings.minutesPerMovingDay(),
        first);
  }

  Ledger(double[] floorM2, int nights, OptionalInt mostPots, OptionalInt mostMinutes) {
    this(floorM2, IntStream.range(0, floorM2.length).toArray(), nights, mostPots, mostMinutes, 0);
  }

  private static int[] floors(List<Place> places) {
    List<String> names = places.stream().map(Place::name).toList();
    return IntStream.range(0, names.size())
        .map(i -> names.indexOf(places.get(i).floorOf()))
        .toArray();
  }

  private Ledger(
      double[] floorM2,
      int[] floorOf,
      int nights,
      OptionalInt mostPots,
      OptionalInt mostMinutes,
      int first) {
    this.first = first;
    this.floorM2 = floorM2.clone();
    this.floorOf = floorOf;
    this.takenM2 = new double[floorM2.length][nights];
    this.pots = new long[nights];
    this.minutes = new long[nights];
    this.mostPots = mostPots;
    this.mostMinutes = mostMinutes;
  }

  /**
   * What one plant asks for.
   *
   * @param home index of its home, whose room is its own
   * @param stands index of the place where it stands now, which nobody sends it away from
   * @param floorM2 wherever it stands
   * @param pots to carry
   * @param minutes to carry them
   */
  record Load(int home, int stands, double floorM2, int pots, int minutes) {
    Load(int home, double floorM2, int pots, int minutes) {
      this(home, home, floorM2, pots, minutes);
    }

    static Load of(Plant plant, int home, int stands) {
      int each = Lifting.wantsTwo(plant.container()) ? MINUTES_A_HEAVY_POT : MINUTES_A_POT;
      return new Load(home, stands, plant.floorM2(), plant.count(), each * plant.count());
    }
  }

  void take(Load load, Path path) {
    book(load, path, 1);
  }

  void giveBack(Load load, Path path) {
    book(load, path, -1);
  }

  private void book(Load load, Path path, int sign) {
    for (int n = 0; n < path.placeByNight().length; n++) {
      takenM2[floorOf[path.placeByNight()[n]]][n] += sign * load.floorM2();
    }
    for (int night : path.moveNights()) {
      pots[night] += sign * (long) load.pots();
      minutes[night] += sign * (long) load.minutes();
    }
  }

  /** What is left to a plant that has not taken anything itself. */
  Openings left(Load load) {
    return new Openings() {
      @Override
      public boolean open(int place, int night) {
        return floorOf[place] == load.home()
            || floorOf[place] == floorOf[load.stands()]
            || night < first
            || takenM2[floorOf[place]][night] + load.floorM2() <= floorM2[place] + CRUMB_M2;
      }

      @Override
      public boolean handsFree(int night) {
        return night < first
            || (fits(pots[night], load.pots(), mostPots)
                && fits(minutes[night], load.minutes(), mostMinutes));
      }
    };
  }

  private static boolean fits(long taken, int more, OptionalInt most) {
    return most.isEmpty() || taken == 0 || taken + more <= most.getAsInt();
  }

  /** Whether a plant that has taken the path asks, with others, for more than there is. */
  boolean contested(Load load, Path path) {
    for (int n = first; n < path.placeByNight().length; n++) {
      int place = floorOf[path.placeByNight()[n]];
      if (place != load.home() && takenM2[place][n] > floorM2[place] + CRUMB_M2) {
        return true;
      }
    }
    return path.moveNights().stream()
        .filter(night -> night >= first)
        .anyMatch(
            night ->
                over(pots[night], load.pots(), mostPots)
                    || over(minutes[night], load.minutes(), mostMinutes));
  }

  /** Most floor taken of a place on any night, m2. */
  double mostTakenM2(int place) {
    return Arrays.stream(takenM2[place]).max().orElse(0);
  }

  /** Pots carried on each night's day. */
  long[] potsByNight() {
    return pots.clone();
  }

  /** Minutes of carrying on each night's day. */
  long[] minutesByNight() {
    return minutes.clone();
  }

  private static boolean over(long taken, int own, OptionalInt most) {
    return most.isPresent() && taken > most.getAsInt() && taken > own;
  }

  /** Whether a path fits into what is left. */
  static boolean fits(Path path, Openings left) {
    return firstMissing(path, left).isEmpty();
  }

  /** First night on which a path finds no room, or is begun by a move that finds no hands. */
  static OptionalInt firstMissing(Path path, Openings left) {
    int[] places = path.placeByNight();
    for (int n = 0; n < places.length; n++) {
      boolean moves = n > 0 && places[n] != places[n - 1];
      if (!left.open(places[n], n) || (moves && !left.handsFree(n))) {
        return OptionalInt.of(n);
      }
    }
    return OptionalInt.empty();
  }
}
