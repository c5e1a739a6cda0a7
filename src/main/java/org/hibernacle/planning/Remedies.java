package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;

/**
 * Looks for what would help plants that are lost or gave way. Changes are thought of from what
 * failed, each is tried by planning the whole garden with it, and only those are kept that help
 * somebody and harm nobody. The order in which they are tried is that of their cost.
 */
final class Remedies {
  /** Plants planned again, all changes together; a few milliseconds to a few tenths each. */
  private static final int MOST_PLANNED_AGAIN = 250;

  /** Sharing out room and hands anew is cheaper by about this factor. */
  private static final int SHARED_FOR_ONE_PLANNED = 10;

  /** Each winter that is excused is chosen among about so many. */
  private static final int SEARCHES_A_FAILURE = 4;

  private static final int MOST_EXTRA_DAYS_TRIED = 4;
  private static final int MOST_PLANTS_ASKED_FOR_DAYS = 12;
  private static final int MOST_RISK_OF_TEN = 9;
  private static final List<Double> MULCH_CM = List.of(10.0, 20.0, 30.0);

  /** Room is told in tenths of a square metre. */
  private static final double STEP_M2 = 0.1;

  private final Replanning replanning;
  private final Inventory inventory;
  private final Caution caution;
  private final Pace pace;
  private final List<Remedy> kept = new ArrayList<>();
  private boolean allTried = true;
  private int plannedAgain;

  /**
   * A search.
   *
   * @param wishes of the plan that failed
   * @param settled what came of them
   * @param winters the winters on file at the places of another inventory
   * @param pace is told how many plants were planned again
   */
  Remedies(
      Wishes wishes,
      Caution caution,
      List<Together.Settled> settled,
      Function<Inventory, WintersOnFile> winters,
      Pace pace) {
    this.inventory = wishes.inventory();
    this.pace = pace;
    this.caution = caution;
    replanning = new Replanning(wishes, caution, settled, winters);
  }

  /** What helps; nothing where nobody needs help. */
  Help find() {
    if (replanning.inNeed().isEmpty()) {
      return Help.NOT_NEEDED;
    }
    acceptRisk();
    extraDays();
    moreHands();
    mulch();
    moreRoom();
    newPlaces();
    Set<String> helped = new TreeSet<>();
    kept.forEach(r -> r.protects().forEach(p -> helped.add(p.id())));
    List<Plant> beyond =
        replanning.lost().stream().filter(plant -> !helped.contains(plant.id())).toList();
    return new Help(chosen(), beyond, allTried);
  }

  /**
   * The cheapest for each plant that can be helped, as far as there is room; then the cheapest of
   * the others.
   */
  private List<Remedy> chosen() {
    kept.sort(Remedy.CHEAPEST_FIRST);
    LinkedHashSet<Remedy> chosen = new LinkedHashSet<>();
    Set<String> helped = new TreeSet<>();
    for (Remedy remedy : kept) {
      if (chosen.size() < Help.MOST_REMEDIES
          && remedy.helps().stream().anyMatch(plant -> !helped.contains(plant.id()))) {
        chosen.add(remedy);
        remedy.helps().forEach(plant -> helped.add(plant.id()));
      }
    }
    for (Remedy remedy : kept) {
      if (chosen.size() < Help.MOST_REMEDIES) {
        chosen.add(remedy);
      }
    }
    return chosen.stream().sorted(Remedy.CHEAPEST_FIRST).toList();
  }

  /** A risk forgives margins and never a limit: enough for the plant that fails least often. */
  private void acceptRisk() {
    OptionalInt failures = replanning.fewestFailures();
    int now = inventory.settings().acceptedRiskOfTen();
    for (int risk = now + 1; risk <= MOST_RISK_OF_TEN && failures.isPresent(); risk++) {
      Caution other = new Caution(caution.marginK(), caution.winters(), risk);
      if (other.failuresAllowed() >= failures.getAsInt()) {
        keep(Remedy.of(Remedy.Change.ACCEPT_RISK, risk));
        return;
      }
    }
  }

  /** Days that lost plants would use if the keeper were there every day. */
  private void extraDays() {
    Settings everyDay = inventory.settings().withEveryDay();
    Map<LocalDate, Integer> wanted = new TreeMap<>();
    for (int i : replanning.inNeed().stream().limit(MOST_PLANTS_ASKED_FOR_DAYS).toList()) {
      if (!afford(1)) {
        return;
      }
      replanning
          .daysWished(i, everyDay)
          .filter(day -> !inventory.settings().isMovingDay(day))
          .forEach(day -> wanted.merge(day, 1, Integer::sum));
    }
    wanted.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<LocalDate, Integer> e) -> -e.getValue())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(MOST_EXTRA_DAYS_TRIED)
        .forEach(e -> keep(Remedy.onDay(e.getKey())));
  }

  private void moreHands() {
    Settings settings = inventory.settings();
    if (settings.plantsPerMovingDay().isPresent()) {
      moreHands(Remedy.Change.MORE_POTS_A_DAY, settings.plantsPerMovingDay().getAsInt(), true);
    }
    if (settings.minutesPerMovingDay().isPresent()) {
      moreHands(Remedy.Change.MORE_MINUTES_A_DAY, settings.minutesPerMovingDay().getAsInt(), false);
    }
  }

  private void moreHands(Remedy.Change change, int now, boolean pots) {
    if (replanning.displaced(Displaced.Kind.HANDS).isEmpty()) {
      return;
    }
    Function<Double, Remedy> remedy = most -> Remedy.of(change, most);
    Settings settings = inventory.settings();
    OptionalInt none = OptionalInt.empty();
    Settings unlimited =
        pots
            ? settings.withHands(none, settings.minutesPerMovingDay())
            : settings.withHands(settings.plantsPerMovingDay(), none);
    Inventory free =
        new Inventory(inventory.plants(), inventory.places(), unlimited, inventory.sheets());
    Optional<Replanning.Outcome> all = share(free);
    if (all.isEmpty() || !all.get().helps()) {
      return;
    }
    Ledger ledger = all.get().together().ledger();
    long[] carried = pots ? ledger.potsByNight() : ledger.minutesByNight();
    int enough = (int) Arrays.stream(carried).max().orElse(now);
    least(now + 1, enough, most -> helpsAsMuch(remedy.apply((double) most), all.get()))
        .ifPresent(most -> keep(remedy.apply((double) most)));
  }

  private void mulch() {
    for (Place place : places(p -> p.kind() == PlaceKind.GROUND)) {
      double now = place.cover() == Place.Cover.MULCH ? place.coverDepthCm() : 0;
      for (double depthCm : MULCH_CM) {
        if (depthCm > now
            && keep(Remedy.at(Remedy.Change.MULCH, depthCm, place.withMulch(depthCm)))) {
          break;
        }
      }
    }
  }

  private void moreRoom() {
    Set<String> full = new TreeSet<>();
    replanning.displaced(Displaced.Kind.ROOM).forEach(d -> full.add(d.place().name()));
    for (Place place : places(p -> full.contains(p.name()) && p.floorM2().isPresent())) {
      double nowM2 = place.floorM2().getAsDouble();
      Function<Integer, Remedy> remedy =
          tenths -> {
            double moreM2 = tenths * STEP_M2;
            Place larger = place.withFloor(OptionalDouble.of(nowM2 + moreM2));
            return Remedy.at(Remedy.Change.MORE_ROOM, moreM2, larger);
          };
      Place endless = place.withFloor(OptionalDouble.empty());
      sized(Remedy.at(Remedy.Change.MORE_ROOM, 0, endless), nowM2, remedy);
    }
  }

  private void newPlaces() {
    for (NewPlace kind : NewPlace.values()) {
      if (kind.isLackedBy(inventory)) {
        Place endless = kind.place(inventory, OptionalDouble.empty());
        Function<Integer, Remedy> remedy =
            tenths -> {
              double m2 = tenths * STEP_M2;
              Place sized = kind.place(inventory, OptionalDouble.of(m2));
              return Remedy.at(Remedy.Change.NEW_PLACE, m2, sized);
            };
        sized(Remedy.at(Remedy.Change.NEW_PLACE, 0, endless), 0, remedy);
      }
    }
  }

  /**
   * Keeps the floor of those it helps, if that is enough, else what is used of room without end.
   */
  private void sized(Remedy endless, double nowM2, Function<Integer, Remedy> remedy) {
    Optional<Replanning.Outcome> all = replan(endless);
    if (all.isEmpty() || !all.get().helps()) {
      return;
    }
    Replanning.Outcome most = all.get();
    int place = most.indexOf(endless.place().orElseThrow().name());
    int enough = tenths(most.together().mostTakenM2(place) - nowM2);
    int theirs = Math.min(enough, tenths(most.helpedM2()));
    for (int tenths : new TreeSet<>(List.of(theirs, enough))) {
      Optional<Replanning.Outcome> outcome =
          tenths < 1
              ? Optional.empty()
              : share(most.wishes().in(remedy.apply(tenths).applyTo(inventory)))
                  .filter(o -> o.helpsAsMuch(most));
      if (outcome.isPresent()) {
        kept.add(outcome.get().told(remedy.apply(tenths)));
        return;
      }
    }
  }

  private static int tenths(double m2) {
    return (int) Math.ceil(m2 / STEP_M2 - 1e-6);
  }

  /** The least number that will do, by halving; the last one is known to do. */
  private static OptionalInt least(int from, int enough, IntPredicate does) {
    int low = from;
    int high = enough;
    while (low < high) {
      int middle = (low + high) / 2;
      if (does.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return enough >= from && does.test(high) ? OptionalInt.of(high) : OptionalInt.empty();
  }

  private List<Place> places(java.util.function.Predicate<Place> wanted) {
    return inventory.places().stream().filter(wanted).sorted(NewPlace.CHEAPEST_FIRST).toList();
  }

  private boolean helpsAsMuch(Remedy remedy, Replanning.Outcome other) {
    return replan(remedy).filter(outcome -> outcome.helpsAsMuch(other)).isPresent();
  }

  /** Whether it helps; if so it is kept. */
  private boolean keep(Remedy remedy) {
    Optional<Replanning.Outcome> outcome = replan(remedy).filter(Replanning.Outcome::helps);
    outcome.ifPresent(o -> kept.add(o.told(remedy)));
    return outcome.isPresent();
  }

  private Optional<Replanning.Outcome> share(Inventory changed) {
    return share(replanning.wishes().in(changed));
  }

  private Optional<Replanning.Outcome> share(Wishes wishes) {
    return afford(sharingWork()) ? Optional.of(replanning.share(wishes)) : Optional.empty();
  }

  private Optional<Replanning.Outcome> replan(Remedy remedy) {
    int searches =
        remedy.change() == Remedy.Change.ACCEPT_RISK
            ? 1 + SEARCHES_A_FAILURE * (int) remedy.amount()
            : 1;
    int work = searches * replanning.plantsToPlan(remedy) + sharingWork();
    return afford(work) ? replanning.replan(remedy) : Optional.empty();
  }

  private int sharingWork() {
    return 1 + inventory.plants().size() / SHARED_FOR_ONE_PLANNED;
  }

  private boolean afford(int work) {
    if (plannedAgain + work > MOST_PLANNED_AGAIN) {
      allTried = false;
      return false;
    }
    pace.reached(Pace.Part.REMEDIES, plannedAgain, MOST_PLANNED_AGAIN);
    plannedAgain += work;
    return true;
  }
}
