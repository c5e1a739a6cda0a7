package org.hibernacle.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.Stay;

/**
 * Where a plant really stood: its planned moves with the log's days put in.
 *
 * <p>A blank day is the planned one, unless the log says that blank means not moved. A planned move
 * that is only assumed gives way where it contradicts a day told: an assumed move-down after a told
 * move-in did not happen. A move that was not planned goes where the log says that the plant stood,
 * or to the only place of its kind.
 *
 * @param planned stays of the plan
 * @param real stays
 * @param moves planned and real, by date
 * @param dropped moves told or planned that could not be placed
 */
record RealStays(List<Stay> planned, List<Stay> real, List<Step> moves, List<Step> dropped) {

  /**
   * One move.
   *
   * @param kind in the keeper's words
   * @param planned day
   * @param day on which it happened; empty if it did not
   * @param assumed whether that day is only the plan's
   * @param to where it goes
   * @param order among the moves of the plan
   */
  record Step(
      Move.Kind kind,
      Optional<LocalDate> planned,
      Optional<LocalDate> day,
      boolean assumed,
      Optional<Place> to,
      int order) {
    LocalDate sortDay() {
      return day.or(() -> planned).orElseThrow();
    }

    Step notHappened() {
      return new Step(kind, planned, Optional.empty(), false, to, order);
    }
  }

  static RealStays of(
      Plant plant, List<PlannedMove> plan, LogEntry entry, Inventory inventory, Season season) {
    return new Builder(plant, entry, inventory, season).build(plan);
  }

  /** Where moves of that kind stand in a season; a plan has four moves at most. */
  private static int order(Move.Kind kind) {
    return switch (kind) {
      case MOVE_DOWN, WRAP -> 0;
      case MOVE_IN -> 10;
      case STEP_OUT -> 20;
      case RETURN, UNWRAP -> 30;
    };
  }

  private record Builder(Plant plant, LogEntry entry, Inventory inventory, Season season) {
    RealStays build(List<PlannedMove> plan) {
      List<Step> planned = planned(plan);
      List<Step> steps = new ArrayList<>();
      Set<Move.Kind> seen = EnumSet.noneOf(Move.Kind.class);
      planned.forEach(s -> steps.add(seen.add(s.kind()) ? told(s) : blank(s)));
      for (Move.Kind kind : Move.Kind.values()) {
        if (day(kind).isPresent() && !seen.contains(kind)) {
          Optional<Place> to = goal(kind);
          steps.add(new Step(kind, Optional.empty(), day(kind), false, to, order(kind)));
        }
      }
      List<Step> dropped = new ArrayList<>();
      steps.replaceAll(s -> fits(s, steps) ? s : drop(s, dropped));
      steps.sort(Comparator.comparing(Step::sortDay).thenComparing(Step::order));
      return new RealStays(stays(planned), stays(steps), steps, dropped);
    }

    private List<Step> planned(List<PlannedMove> plan) {
      List<Step> steps = new ArrayList<>();
      Place at = inventory.place(plant.home());
      for (PlannedMove move : plan) {
        Place to = inventory.place(move.to());
        Move.Kind kind = Move.Kind.of(at, to, plant.home());
        Optional<LocalDate> date = Optional.of(move.date());
        int before = steps.isEmpty() ? -1 : steps.get(steps.size() - 1).order();
        int order = Math.max(before + 1, order(kind));
        steps.add(new Step(kind, date, date, true, Optional.of(to), order));
        at = to;
      }
      return steps;
    }

    private Step told(Step planned) {
      Optional<LocalDate> day = day(planned.kind());
      Optional<Place> to = stoodIn(planned.kind()).or(planned::to);
      return day.isPresent()
          ? new Step(planned.kind(), planned.planned(), day, false, to, planned.order())
          : blank(
              new Step(
                  planned.kind(), planned.planned(), planned.day(), true, to, planned.order()));
    }

    private Step blank(Step planned) {
      return entry.ifBlank().equals(Optional.of(IfBlank.NOT_MOVED))
          ? planned.notHappened()
          : planned;
    }

    private Optional<LocalDate> day(Move.Kind kind) {
      return switch (kind) {
        case MOVE_DOWN -> entry.movedDown();
        case MOVE_IN -> entry.movedIn();
        case STEP_OUT -> entry.steppedOut();
        case RETURN -> entry.returned();
        case WRAP, UNWRAP -> Optional.empty();
      };
    }

    /** The place that the log names, if a move of that kind may lead there. */
    private Optional<Place> stoodIn(Move.Kind kind) {
      return entry
          .stoodIn()
          .map(inventory::place)
          .filter(
              p ->
                  p.roofed()
                      ? kind == Move.Kind.MOVE_IN
                      : kind == Move.Kind.MOVE_DOWN || kind == Move.Kind.STEP_OUT)
          .filter(p -> !p.name().equals(plant.home()));
    }

    private Optional<Place> goal(Move.Kind kind) {
      if (kind == Move.Kind.RETURN) {
        return Optional.of(inventory.place(plant.home()));
      }
      List<Place> fit =
          inventory.places().stream()
              .filter(p -> p.roofed() == (kind == Move.Kind.MOVE_IN))
              .filter(p -> !p.name().equals(plant.home()))
              .toList();
      return stoodIn(kind).or(() -> fit.size() == 1 ? Optional.of(fit.get(0)) : Optional.empty());
    }

    /** Whether the step has a goal and, if only assumed, contradicts no day told. */
    private boolean fits(Step step, List<Step> all) {
      if (step.day().isEmpty()) {
        return true;
      }
      if (step.to().isEmpty() || !season.contains(step.day().get())) {
        return false;
      }
      return !step.assumed()
          || all.stream()
              .filter(other -> !other.assumed() && other.day().isPresent())
              .noneMatch(told -> contradicts(step, told));
    }

    private static boolean contradicts(Step assumed, Step told) {
      LocalDate day = assumed.day().orElseThrow();
      LocalDate other = told.day().orElseThrow();
      return assumed.order() < told.order() ? !day.isBefore(other) : !day.isAfter(other);
    }

    private static Step drop(Step step, List<Step> dropped) {
      dropped.add(step);
      return step.assumed() || step.planned().isPresent()
          ? step.notHappened()
          : new Step(step.kind(), step.day(), Optional.empty(), false, step.to(), step.order());
    }

    private List<Stay> stays(List<Step> steps) {
      List<Stay> stays = new ArrayList<>();
      Place at = inventory.place(plant.home());
      LocalDate from = season.start();
      for (Step step : steps) {
        if (step.day().isEmpty()) {
          continue;
        }
        LocalDate day = step.day().get();
        Place to = step.to().orElseThrow();
        if (!to.equals(at)) {
          if (from.isBefore(day)) {
            stays.add(new Stay(at, from, day));
          }
          at = to;
          from = day;
        }
      }
      stays.add(new Stay(at, from, season.endExclusive()));
      return stays;
    }
  }
}
