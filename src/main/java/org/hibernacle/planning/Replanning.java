package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;

/**
 * Plans a garden again with one change made, and compares. What comes out is what planning the
 * changed inventory from nothing would give; only plants whose wish the change can not touch are
 * not planned anew.
 */
final class Replanning {
  /** How far a first guess may be off, K; own figure. */
  private static final double GUESS_OFF_K = 2;

  /** Nights before and after midwinter that are the coldest time. */
  private static final int MIDWINTER_NIGHTS = 30;

  private final Wishes wishes;
  private final Caution caution;
  private final List<Together.Settled> settled;
  private final Function<Inventory, WintersOnFile> winters;
  private final List<Integer> inNeed;

  Replanning(
      Wishes wishes,
      Caution caution,
      List<Together.Settled> settled,
      Function<Inventory, WintersOnFile> winters) {
    this.wishes = wishes;
    this.caution = caution;
    this.settled = settled;
    this.winters = winters;
    inNeed =
        IntStream.range(0, settled.size())
            .boxed()
            .filter(i -> State.of(settled.get(i)) != State.WELL)
            .sorted(
                Comparator.comparing((Integer i) -> State.of(settled.get(i)))
                    .reversed()
                    .thenComparing(i -> plant(i).id()))
            .toList();
  }

  /** How a plant fares, best first. */
  private enum State {
    WELL,
    GAVE_WAY,
    LOST;

    static State of(Together.Settled one) {
      if (one.found().cost().brokenTicks() > 0) {
        return LOST;
      }
      return one.displaced().isPresent() ? GAVE_WAY : WELL;
    }
  }

  Wishes wishes() {
    return wishes;
  }

  /** Rows that are lost, then those that gave way, each by Id. */
  List<Integer> inNeed() {
    return inNeed;
  }

  /** Plants that are lost, by Id. */
  List<Plant> lost() {
    return inNeed.stream()
        .filter(i -> State.of(settled.get(i)) == State.LOST)
        .map(this::plant)
        .toList();
  }

  /**
   * The fewest winters in which a lost plant misses its margin that may take a risk and breaks no
   * limit itself.
   */
  OptionalInt fewestFailures() {
    return inNeed.stream()
        .filter(i -> State.of(settled.get(i)) == State.LOST)
        .filter(i -> takesRisks(plant(i)))
        .map(i -> settled.get(i).found().lived())
        .filter(
            lives ->
                lives.stream()
                    .flatMap(l -> l.violations().stream())
                    .allMatch(b -> Cost.ticksOfLimit(b.violation()) == 0))
        .mapToInt(lives -> (int) lives.stream().filter(l -> !l.violations().isEmpty()).count())
        .min();
  }

  private boolean takesRisks(Plant plant) {
    Caution all = new Caution(caution.marginK(), caution.winters(), 9);
    return all.failuresAllowed(plant) > 0;
  }

  /** Why plants gave way for want of that. */
  List<Displaced> displaced(Displaced.Kind kind) {
    return settled.stream()
        .flatMap(s -> s.displaced().stream())
        .filter(d -> d.kind() == kind)
        .toList();
  }

  private Plant plant(int i) {
    return wishes.inventory().plants().get(i);
  }

  /** Days on which the plant would be carried under other settings, if that saves it. */
  Stream<LocalDate> daysWished(int i, Settings other) {
    PlantPlanner.Found found = PlantPlanner.of(plant(i), other, caution, wishes.winters()).find();
    return found.cost().brokenTicks() > 0
        ? Stream.empty()
        : found.path().moveNights().stream().map(wishes.winters().season()::day);
  }

  /** How many plants a change makes plan anew. */
  int plantsToPlan(Remedy remedy) {
    return (int) IntStream.range(0, wishes.count()).filter(i -> touches(remedy, i)).count();
  }

  /** Plans with the change; empty as soon as it is clear that it helps nobody. */
  Optional<Outcome> replan(Remedy remedy) {
    Inventory changed = remedy.applyTo(wishes.inventory());
    boolean otherPlaces =
        remedy.change() == Remedy.Change.MULCH || remedy.change() == Remedy.Change.NEW_PLACE;
    boolean sharingOnly = IntStream.range(0, wishes.count()).noneMatch(i -> touches(remedy, i));
    if (sharingOnly) {
      return remedy.change() == Remedy.Change.NEW_PLACE || remedy.change() == Remedy.Change.MULCH
          ? Optional.empty()
          : Optional.of(share(wishes.in(changed)));
    }
    WintersOnFile there = otherPlaces ? winters.apply(changed) : wishes.winters();
    Caution then = Caution.of(changed.settings(), there.count());
    List<PlantPlanner> planners = new ArrayList<>(wishes.planners());
    List<PlantPlanner.Found> founds = new ArrayList<>(wishes.founds());
    Wishes anew = new Wishes(changed.in(there.places()), there, planners, founds);
    List<Integer> first =
        inNeed.stream()
            .filter(i -> touches(remedy, i))
            .filter(i -> isPromising(remedy, i, anew, then))
            .toList();
    plan(first, anew, then);
    if (inNeed.stream().noneMatch(i -> founds.get(i).cost().brokenTicks() == 0)) {
      return Optional.empty();
    }
    List<Integer> others =
        IntStream.range(0, wishes.count())
            .boxed()
            .filter(i -> touches(remedy, i) && !first.contains(i))
            .toList();
    plan(others, anew, then);
    return Optional.of(share(anew));
  }

  /** Whether it is worth while to plan a plant with a place that is new or otherwise covered. */
  private boolean isPromising(Remedy remedy, int i, Wishes anew, Caution then) {
    if (remedy.place().isEmpty()) {
      return true;
    }
    String place = remedy.place().get().name();
    PlantPlanner planner =
        PlantPlanner.of(plant(i), anew.inventory().settings(), then, anew.winters());
    return IntStream.range(0, anew.winters().places().size())
        .filter(p -> anew.winters().places().get(p).name().equals(place))
        .filter(p -> PlaceFit.of(plant(i), anew.winters().places().get(p)) == PlaceFit.SUITS)
        .anyMatch(p -> comesThroughMidwinter(planner.guess(p), anew.winters()));
  }

  /** Whether the first guess misses no more than a little in the coldest time. Not a promise. */
  private static boolean comesThroughMidwinter(List<Lived> guess, WintersOnFile there) {
    int midwinter = there.season().index(there.season().midwinter());
    return guess.stream()
        .allMatch(
            lived ->
                lived.violations().stream()
                    .filter(
                        b ->
                            Math.abs(there.planNight(lived.winter(), b.night()) - midwinter)
                                <= MIDWINTER_NIGHTS)
                    .allMatch(b -> b.violation().deficitK() <= GUESS_OFF_K));
  }

  private void plan(List<Integer> rows, Wishes anew, Caution then) {
    List<Wishes.Wish> planned =
        Wishes.of(
            rows.stream().map(this::plant).toList(),
            anew.inventory().settings(),
            then,
            anew.winters(),
            Tally.unheard());
    for (int k = 0; k < rows.size(); k++) {
      anew.planners().set(rows.get(k), planned.get(k).planner());
      anew.founds().set(rows.get(k), planned.get(k).found());
    }
  }

  /** Whether the wish of a row can be another one with the change made. */
  private boolean touches(Remedy remedy, int i) {
    PlantPlanner.Found wish = wishes.founds().get(i);
    boolean safeAtHome = wish.cost().brokenTicks() == 0 && wish.path().moveNights().isEmpty();
    return switch (remedy.change()) {
      case ACCEPT_RISK -> {
        Settings then = wishes.inventory().settings().withAcceptedRisk((int) remedy.amount());
        Caution other = Caution.of(then, caution.winters());
        yield !safeAtHome && other.failuresAllowed(plant(i)) != caution.failuresAllowed(plant(i));
      }
      case EXTRA_MOVING_DAY -> !safeAtHome;
      case MORE_POTS_A_DAY, MORE_MINUTES_A_DAY, MORE_ROOM -> false;
      case MULCH, NEW_PLACE -> {
        Place place = remedy.place().orElseThrow();
        boolean isHome = place.name().equals(plant(i).home());
        yield isHome || (!safeAtHome && PlaceFit.of(plant(i), place) == PlaceFit.SUITS);
      }
    };
  }

  /** Shares out room and hands, and compares with the plan that failed. */
  Outcome share(Wishes others) {
    Together together = new Together(others);
    List<Together.Settled> then = together.settle();
    Set<Integer> protects = new TreeSet<>();
    Set<Integer> eases = new TreeSet<>();
    boolean harms = false;
    for (int i = 0; i < then.size(); i++) {
      State before = State.of(settled.get(i));
      State after = State.of(then.get(i));
      harms |= after.compareTo(before) > 0;
      if (before == State.LOST && after != State.LOST) {
        protects.add(i);
      } else if (before == State.GAVE_WAY && after == State.WELL) {
        eases.add(i);
      }
    }
    return new Outcome(others, together, protects, eases, harms);
  }

  /**
   * What came of a change.
   *
   * @param wishes with the change made
   * @param together that settled them
   * @param protects rows lost before and safe now
   * @param eases rows that gave way before and need not now
   * @param harms whether anyone fares worse
   */
  record Outcome(
      Wishes wishes, Together together, Set<Integer> protects, Set<Integer> eases, boolean harms) {
    boolean helps() {
      return !harms && !(protects.isEmpty() && eases.isEmpty());
    }

    boolean helpsAsMuch(Outcome other) {
      return helps() && protects.containsAll(other.protects) && eases.containsAll(other.eases);
    }

    /** Floor of all that it helps, m2. */
    double helpedM2() {
      return Stream.concat(protects.stream(), eases.stream())
          .mapToDouble(i -> wishes.inventory().plants().get(i).floorM2())
          .sum();
    }

    int indexOf(String place) {
      List<Place> places = wishes.inventory().places();
      return IntStream.range(0, places.size())
          .filter(p -> places.get(p).name().equals(place))
          .findFirst()
          .orElseThrow();
    }

    Remedy told(Remedy remedy) {
      return remedy.helping(plants(protects), plants(eases));
    }

    private List<Plant> plants(Set<Integer> rows) {
      return rows.stream()
          .map(wishes.inventory().plants()::get)
          .sorted(Comparator.comparing(Plant::id))
          .toList();
    }
  }
}
