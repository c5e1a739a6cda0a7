package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Place;

/**
 * Brings the dates of a path closer together. The search remembers every rule it saw broken on any
 * path it tried, so it may keep a plant away longer than its own path needs. Here each return is
 * tried one moving day earlier, and each leaving one later, again and again, as long as living it
 * breaks nothing more. What a path still breaks is mended first, by the same shifts.
 */
final class Tightening {
  private static final int MOST_DAYS_SHIFTED = 8;

  private final PlantPlanner planner;
  private final Openings openings;
  private final List<Place> places;

  Tightening(PlantPlanner planner, Openings openings, List<Place> places) {
    this.planner = planner;
    this.openings = openings;
    this.places = places;
  }

  PlantPlanner.Found tighten(PlantPlanner.Found searched) {
    PlantPlanner.Found found = mend(searched);
    Path path = found.path();
    List<Lived> lived = found.lived();
    int moves = path.moveNights().size();
    for (int i = moves - 1; i >= 0; i--) {
      int step = comesBack(path, i) ? -1 : 1;
      Optional<Path> closer = shifted(path, i, step);
      while (closer.isPresent()) {
        List<Lived> trial = planner.live(closer.get());
        if (ticks(trial, found) > ticks(lived, found)) {
          break;
        }
        path = closer.get();
        lived = trial;
        closer = shifted(path, i, step);
      }
    }
    return planner.found(path, lived, found.excused());
  }

  /**
   * What still breaks after the search may do so only because the search holds a place for worse
   * than it is on other dates. Moves are tried up to {@value #MOST_DAYS_SHIFTED} moving days either
   * way, the best change is kept, and all is tried again until nothing helps.
   */
  private PlantPlanner.Found mend(PlantPlanner.Found found) {
    Path path = found.path();
    List<Lived> lived = found.lived();
    boolean better = true;
    while (better && ticks(lived, found) > 0) {
      better = false;
      for (Path other : shiftsOf(path)) {
        List<Lived> trial = planner.live(other);
        if (ticks(trial, found) < ticks(lived, found)) {
          path = other;
          lived = trial;
          better = true;
        }
      }
    }
    return planner.found(path, lived, found.excused());
  }

  private List<Path> shiftsOf(Path path) {
    List<Path> shifts = new ArrayList<>();
    for (int move = 0; move < path.moveNights().size(); move++) {
      for (int step = -1; step <= 1; step += 2) {
        Optional<Path> shifted = shifted(path, move, step);
        for (int days = 0; days < MOST_DAYS_SHIFTED && shifted.isPresent(); days++) {
          shifts.add(shifted.get());
          shifted = shifted(shifted.get(), move, step);
        }
      }
    }
    return shifts;
  }

  /** Whether a move leads home, or out from under a roof, so that earlier is better. */
  private boolean comesBack(Path path, int move) {
    return comesBack(path, path.moveNights().get(move), planner.home(), places);
  }

  /** The same for the move of a night. */
  static boolean comesBack(Path path, int night, int home, List<Place> places) {
    int from = path.placeByNight()[night - 1];
    int to = path.placeByNight()[night];
    boolean leavesRoof = places.get(from).roofed() && !places.get(to).roofed();
    return to == home || (from != home && leavesRoof);
  }

  /** The path with one move on the next moving day in a direction, if one fits. */
  private Optional<Path> shifted(Path path, int move, int step) {
    List<Integer> nights = path.moveNights();
    int night = nights.get(move);
    if (night < planner.firstFree()) {
      return Optional.empty();
    }
    int earliest = move == 0 ? 1 : nights.get(move - 1) + Stay.LEAST_NIGHTS;
    int latest =
        move + 1 < nights.size()
            ? nights.get(move + 1) - Stay.LEAST_NIGHTS
            : path.placeByNight().length - 1;
    int from = path.placeByNight()[night - 1];
    int to = path.placeByNight()[night];
    for (int n = night + step; n >= earliest && n <= latest; n += step) {
      if (!openings.open(step < 0 ? to : from, step < 0 ? n : n - 1)) {
        return Optional.empty();
      }
      if (planner.mayMove(n, from, to) && openings.handsFree(n)) {
        return Optional.of(step < 0 ? path.with(n, night, to) : path.with(night, n, from));
      }
    }
    return Optional.empty();
  }

  private static long ticks(List<Lived> lives, PlantPlanner.Found found) {
    return KnownBreaks.ticks(lives, found.excused());
  }
}
