package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
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
      boolean made = night < planner.firstFree();
      boolean nightsBack = last && shuttled;
      Optional<Violation> because;
      List<LocalDate> ownDays;
      if (made) {
        because = Optional.empty();
        ownDays = List.of();
      } else if (kind.homeward()) {
        because = nightsBack ? Optional.empty() : whyNotEarlier(night, previous, to);
        ownDays = firstSafeDays(night, previous, next, to, nightsBack);
      } else {
        List<Lived> staying = planner.live(path.with(night, next, from));
        because = first(staying, night, next, from);
        ownDays = lastSafeDays(staying, previous, next, from);
      }
      LocalDate day = winters.season().day(night);
      moves.add(new Move(kind, day, fromPlace, toPlace, because, ownDays, made));
    }
    return moves;
  }

  /** Each winter's last day on which leaving was early enough, had the plant stayed. */
  private List<LocalDate> lastSafeDays(List<Lived> staying, int previous, int next, int from) {
    return ownDays(staying, lived -> nights(lived, previous, next, from).min());
  }

  /**
   * Each winter's first day on which coming would have been late enough, had the plant come as soon
   * as it might. Hardiness that coming early costs tells later; that can not be put down to a day,
   * so it counts for the day of the plan.
   */
  private List<LocalDate> firstSafeDays(
      int night, int previous, int next, int to, boolean nightsBack) {
    int soonest = previous + 1;
    if (to == home) {
      soonest = Math.max(soonest, winters.season().index(Move.earliestReturn(winters.season())));
    }
    int from = Math.min(soonest, night);
    int latest = nightsBack ? next : night;
    return ownDays(
        planner.live(path.with(from, night, to)),
        lived -> {
          OptionalInt last = nights(lived, from, next, to).max();
          return last.isEmpty() ? last : OptionalInt.of(Math.min(latest, last.getAsInt() + 1));
        });
  }

  private List<LocalDate> ownDays(List<Lived> lives, Function<Lived, OptionalInt> own) {
    return lives.stream()
        .map(own)
        .flatMapToInt(OptionalInt::stream)
        .mapToObj(winters.season()::day)
        .toList();
  }

  /** Nights of the season from one to another on which a rule is broken in that place. */
  private IntStream nights(Lived lived, int from, int to, int place) {
    return lived.violations().stream()
        .filter(b -> b.place() == place)
        .mapToInt(b -> winters.planNight(lived.winter(), b.night()))
        .filter(night -> night >= from && night < to);
  }

  /**
   * The rule broken if the plant came a moving day earlier, or the first earlier day that tells.
   */
  private Optional<Violation> whyNotEarlier(int night, int previous, int to) {
    int tried = 0;
    for (int n = night - 1;
        n > previous && n >= winters.outlook().tonight() && tried < MOST_EARLIER_DAYS_TRIED;
        n--) {
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
