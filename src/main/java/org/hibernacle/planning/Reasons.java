package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Place;
import org.hibernacle.model.Settings;

/**
 * Finds out why a date is what it is, by living the plan without the move (going away) or with the
 * move on earlier moving days (coming back).
 */
final class Reasons {
  private static final int MOST_EARLIER_DAYS_TRIED = 6;

  private final PlantPlanner planner;
  private final WintersOnFile winters;
  private final Settings settings;
  private final Path path;
  private final Set<Integer> excused;
  private final boolean shuttled;
  private final int home;

  Reasons(
      PlantPlanner planner, WintersOnFile winters, Settings settings, PlantPlanner.Found found) {
    this.planner = planner;
    this.winters = winters;
    this.settings = settings;
    this.path = found.path();
    this.excused = found.excused();
    this.shuttled = found.shuttle().isPresent();
    this.home = planner.home();
  }

  /** The moves of the path, each with its reason. */
  List<Move> moves() {
    List<Move> moves = new ArrayList<>();
    List<Integer> nights = path.moveNights();
    for (int i = 0; i < nights.size(); i++) {
      int night = nights.get(i);
      int next = i + 1 < nights.size() ? nights.get(i + 1) : path.placeByNight().length;
      int previous = i > 0 ? nights.get(i - 1) : 0;
      int from = path.placeByNight()[night - 1];
      int to = path.placeByNight()[night];
      Place fromPlace = winters.places().get(from);
      Place toPlace = winters.places().get(to);
      Move.Kind kind = Move.Kind.of(fromPlace, toPlace, winters.places().get(home).name());
      boolean last = i + 1 == nights.size();
      Optional<Violation> because =
          last && shuttled
              ? Optional.empty()
              : kind == Move.Kind.RETURN || kind == Move.Kind.STEP_OUT
                  ? whyNotEarlier(night, previous, to)
                  : whyNotStay(night, next, from);
      moves.add(new Move(kind, winters.season().day(night), fromPlace, toPlace, because));
    }
    return moves;
  }

  /** The first rule broken if the plant stayed where it was until its next move. */
  private Optional<Violation> whyNotStay(int night, int next, int from) {
    return first(planner.live(path.with(night, next, from)), night, next, from);
  }

  /**
   * The rule broken if the plant came a moving day earlier, or the first earlier day that tells.
   */
  private Optional<Violation> whyNotEarlier(int night, int previous, int to) {
    int tried = 0;
    for (int n = night - 1; n > previous && tried < MOST_EARLIER_DAYS_TRIED; n--) {
      if (!settings.isMovingDay(winters.season().day(n))) {
        continue;
      }
      tried++;
      List<Lived> lives = planner.live(path.with(n, night, to));
      Optional<Violation> found = last(lives, n, night, to);
      if (found.isPresent()) {
        return found;
      }
      // Coming early can also cost hardiness that a later frost then finds missing.
      found = first(lives, night, path.placeByNight().length, to);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<Violation> first(List<Lived> lives, int from, int to, int place) {
    return between(lives, from, to, place).stream()
        .min(Comparator.comparingInt(Dated::planNight).thenComparingInt(Dated::ticks))
        .map(Dated::violation);
  }

  private Optional<Violation> last(List<Lived> lives, int from, int to, int place) {
    return between(lives, from, to, place).stream()
        .max(Comparator.comparingInt(Dated::planNight).thenComparingInt(Dated::ticks))
        .map(Dated::violation);
  }

  private record Dated(int planNight, Violation violation) {
    int ticks() {
      return Cost.ticks(violation);
    }
  }

  private List<Dated> between(List<Lived> lives, int from, int to, int place) {
    List<Dated> found = new ArrayList<>();
    for (Lived lived : lives) {
      for (Lived.Broken b : lived.violations()) {
        int night = winters.planNight(lived.winter(), b.night());
        boolean counts = !excused.contains(lived.winter()) || Cost.ticksOfLimit(b.violation()) > 0;
        if (counts && night >= from && night < to && b.place() == place) {
          found.add(new Dated(night, b.violation()));
        }
      }
    }
    return found;
  }
}
