package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;

/**
 * Brings pots that want two people together on fewer days, since a helper comes for a day and not
 * for a pot. Such a pot may leave up to {@value #MOST_DAYS} days earlier, or come back up to as
 * many days later, if another one is carried on that day anyway, and only if living it breaks
 * nothing more. A day is given up as a whole or stays as it is.
 */
final class HelperDays {
  static final int MOST_DAYS = 7;

  private final List<Plant> plants;
  private final List<Place> places;
  private final List<PlantPlanner> planners;
  private final List<PlantPlanner.Found> founds;
  private final Ledger ledger;
  private final List<Integer> heavy;
  private final TreeSet<String> shifted = new TreeSet<>();

  /**
   * Looks at what is planned.
   *
   * @param founds changed in place
   * @param ledger that holds them
   */
  HelperDays(
      List<Plant> plants,
      List<Place> places,
      List<PlantPlanner> planners,
      List<PlantPlanner.Found> founds,
      Ledger ledger) {
    this.plants = plants;
    this.places = places;
    this.planners = planners;
    this.founds = founds;
    this.ledger = ledger;
    heavy = new ArrayList<>();
    for (int i = 0; i < plants.size(); i++) {
      boolean wrapped =
          Arrays.stream(founds.get(i).path().placeByNight())
              .anyMatch(p -> places.get(p).wrapOf().isPresent());
      boolean shuttled = founds.get(i).shuttle().isPresent();
      if (Lifting.wantsTwo(plants.get(i).container()) && !shuttled && !wrapped) {
        heavy.add(i);
      }
    }
    heavy.sort(Comparator.comparing(i -> plants.get(i).id()));
  }

  /** Ids of the pots whose dates were changed. */
  Set<String> gather() {
    while (days().entrySet().stream()
        .sorted(
            Comparator.comparingInt(
                    (Map.Entry<Integer, List<Integer>> day) -> day.getValue().size())
                .thenComparing(Map.Entry.comparingByKey()))
        .anyMatch(day -> givenUp(day.getKey(), day.getValue()))) {
      // One day fewer each time.
    }
    return shifted;
  }

  /** Rows that want two people, by the night of their moves. */
  private Map<Integer, List<Integer>> days() {
    TreeMap<Integer, List<Integer>> days = new TreeMap<>();
    for (int i : heavy) {
      for (int night : founds.get(i).path().moveNights()) {
        if (night < planners.get(i).firstFree()) {
          continue;
        }
        days.computeIfAbsent(night, n -> new ArrayList<>()).add(i);
      }
    }
    return days;
  }

  private boolean givenUp(int day, List<Integer> rows) {
    TreeSet<Integer> others = new TreeSet<>(days().keySet());
    others.remove(day);
    List<PlantPlanner.Found> before = rows.stream().map(founds::get).toList();
    for (int k = 0; k < rows.size(); k++) {
      Optional<PlantPlanner.Found> other = onAnotherDay(rows.get(k), day, others);
      if (other.isEmpty()) {
        for (int back = 0; back < k; back++) {
          put(rows.get(back), before.get(back));
        }
        return false;
      }
      put(rows.get(k), other.get());
    }
    rows.forEach(i -> shifted.add(plants.get(i).id()));
    return true;
  }

  private void put(int i, PlantPlanner.Found found) {
    ledger.giveBack(load(i), founds.get(i).path());
    ledger.take(load(i), found.path());
    founds.set(i, found);
  }

  private Ledger.Load load(int i) {
    return planners.get(i).load();
  }

  /** The nearest day that will do. */
  private Optional<PlantPlanner.Found> onAnotherDay(int i, int day, NavigableSet<Integer> others) {
    PlantPlanner.Found found = founds.get(i);
    Path path = found.path();
    boolean back = Tightening.comesBack(path, day, planners.get(i).home(), places);
    int place = path.placeByNight()[back ? day - 1 : day];
    ledger.giveBack(load(i), path);
    Openings left = ledger.left(load(i));
    Optional<PlantPlanner.Found> other =
        (back
                ? others.subSet(day, false, day + MOST_DAYS, true)
                : others.descendingSet().subSet(day, false, day - MOST_DAYS, true))
            .stream()
                .map(n -> path.with(Math.min(n, day), Math.max(n, day), place))
                .filter(moved -> allowed(planners.get(i), moved, left))
                .map(moved -> lived(planners.get(i), moved, found))
                .filter(moved -> moved.cost().brokenTicks() <= found.cost().brokenTicks())
                .findFirst();
    ledger.take(load(i), path);
    return other;
  }

  private static PlantPlanner.Found lived(
      PlantPlanner planner, Path path, PlantPlanner.Found before) {
    return planner.found(path, planner.live(path), before.excused());
  }

  private static boolean allowed(PlantPlanner planner, Path path, Openings left) {
    List<Integer> moves = path.moveNights();
    int[] at = path.placeByNight();
    for (int m = 0; m < moves.size(); m++) {
      int night = moves.get(m);
      boolean tooSoon = m > 0 && night - moves.get(m - 1) < Stay.LEAST_NIGHTS;
      if (tooSoon || !planner.mayMove(night, at[night - 1], at[night])) {
        return false;
      }
    }
    return Ledger.fits(path, left);
  }
}
