package org.hibernacle.planning;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Saves the keeper moves that do not help a plant much which is lost anyway: stays are left out as
 * long as the worst night is not a kelvin worse for it, no further winter breaks a limit, and what
 * is missed in all is at most half as much again.
 */
final class Plainer {
  /** Ticks of {@link Cost}: 1 K in the worst night. */
  private static final int WORST_NIGHT_TICKS = 10;

  private static final double IN_ALL_TIMES = 1.5;

  private final PlantPlanner planner;
  private final PlantPlanner.Found found;
  private final Openings left;
  private final Missed missed;
  private final Map<List<Integer>, PlantPlanner.Found> tried = new LinkedHashMap<>();

  private Plainer(PlantPlanner planner, PlantPlanner.Found found, Openings left) {
    this.planner = planner;
    this.found = found;
    this.left = left;
    missed = Missed.along(found.lived(), found.excused());
  }

  /**
   * The path with fewest moves that does about as well; the path itself where it breaks nothing.
   *
   * @param left room and hands, without what the plant takes itself
   */
  static PlantPlanner.Found plainer(PlantPlanner planner, PlantPlanner.Found found, Openings left) {
    if (found.cost().brokenTicks() == 0 || found.path().moveNights().isEmpty()) {
      return found;
    }
    Plainer plainer = new Plainer(planner, found, left);
    plainer.shorten(found.path());
    return plainer.tried.values().stream()
        .filter(other -> plainer.missed.isHardlyMore(other))
        .min(
            Comparator.comparingInt((PlantPlanner.Found f) -> f.path().moveNights().size())
                .thenComparing(PlantPlanner.Found::cost))
        .filter(other -> other.path().moveNights().size() < found.path().moveNights().size())
        .orElse(found);
  }

  /** Leaves out each stay in turn: the one before lasts longer, or the one after begins sooner. */
  private void shorten(Path path) {
    List<Integer> moves = path.moveNights();
    for (int i = 0; i + 1 < moves.size(); i++) {
      int from = moves.get(i);
      int to = moves.get(i + 1);
      tryOut(path.with(from, to, path.placeByNight()[from - 1]));
      tryOut(path.with(from, to, path.placeByNight()[to]));
    }
  }

  private void tryOut(Path path) {
    List<Integer> nights = java.util.Arrays.stream(path.placeByNight()).boxed().toList();
    if (tried.containsKey(nights) || !allowed(path)) {
      return;
    }
    tried.put(nights, planner.found(path, planner.live(path), found.excused()));
    shorten(path);
  }

  private boolean allowed(Path path) {
    int[] places = path.placeByNight();
    return Ledger.fits(path, left)
        && path.moveNights().stream().allMatch(n -> planner.mayMove(n, places[n - 1], places[n]));
  }

  /**
   * What lives miss of the rules.
   *
   * @param worstTicks on one night
   * @param limitWinters in which a limit itself is broken
   * @param allTicks over all nights
   */
  private record Missed(int worstTicks, int limitWinters, long allTicks) {
    static Missed along(List<Lived> lives, Set<Integer> excused) {
      int worst = 0;
      int winters = 0;
      for (Lived lived : lives) {
        boolean limit = false;
        for (Lived.Broken b : lived.violations()) {
          int ofLimit = Cost.ticksOfLimit(b.violation());
          boolean marginToo = !excused.contains(lived.winter());
          worst = Math.max(worst, marginToo ? Cost.ticks(b.violation()) : ofLimit);
          limit |= ofLimit > 0;
        }
        winters += limit ? 1 : 0;
      }
      return new Missed(worst, winters, KnownBreaks.ticks(lives, excused));
    }

    boolean isHardlyMore(PlantPlanner.Found other) {
      Missed more = along(other.lived(), other.excused());
      return more.worstTicks < worstTicks + WORST_NIGHT_TICKS
          && more.limitWinters <= limitWinters
          && more.allTicks <= IN_ALL_TIMES * allTicks;
    }
  }
}
