package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;

/**
 * Plans all plants of an inventory: each as if it were alone, then room and hands are shared out,
 * and whoever has to give way is planned again within what is left.
 */
final class Together {
  /** Rounds of sharing: what plants meet on their new paths may change who should give way. */
  private static final int MOST_ROUNDS = 3;

  private final Inventory inventory;
  private final WintersOnFile winters;
  private final List<PlantPlanner> planners;
  private final List<PlantPlanner.Found> wishes;
  private final List<Integer> order;
  private final Set<Integer> copied = new TreeSet<>();
  private Ledger ledger;
  private Set<String> gathered = new TreeSet<>();

  Together(Inventory inventory, Caution caution, WintersOnFile winters) {
    this(Wishes.of(inventory, caution, winters));
  }

  /** Shares between plants whose wishes are known; the wishes stay as they are. */
  Together(Wishes wishes) {
    this.inventory = wishes.inventory();
    this.winters = wishes.winters();
    this.planners = new ArrayList<>(wishes.planners());
    this.wishes = wishes.founds();
    order =
        IntStream.range(0, planners.size())
            .boxed()
            .sorted(Comparator.comparing(i -> inventory.plants().get(i), WHO_CHOOSES_FIRST))
            .toList();
    ledger = emptyLedger();
  }

  /** By priority, then value, then Id, so that the order of rows never matters. */
  private static final Comparator<Plant> WHO_CHOOSES_FIRST =
      Comparator.comparingInt(Plant::priority)
          .thenComparingDouble(plant -> plant.value().orElse(0))
          .reversed()
          .thenComparing(Plant::id);

  /**
   * What one plant does.
   *
   * @param planner of the plant
   * @param found its path
   * @param displaced why that is not the path it would take alone
   */
  record Settled(PlantPlanner planner, PlantPlanner.Found found, Optional<Displaced> displaced) {}

  /** All plants, in the order of the inventory. */
  List<Settled> settle() {
    List<PlantPlanner.Found> founds = new ArrayList<>(wishes);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      ledger = emptyLedger();
      List<Claim> claims = order.stream().map(i -> planners.get(i).claim(wishes.get(i))).toList();
      Sharing.Shared shared = Sharing.share(claims, ledger);
      if (!giveWay(claims, shared.paths(), founds)) {
        break;
      }
    }
    List<Optional<Displaced>> displaced = new ArrayList<>();
    Set<Integer> plainer = new TreeSet<>();
    takeBack(founds, plainer);
    makePlainer(founds, plainer);
    takeBack(founds, plainer);
    makePlainer(founds, plainer);
    for (int i = 0; i < planners.size(); i++) {
      displaced.add(displaced(i, founds.get(i)));
    }
    gathered =
        new HelperDays(inventory.plants(), inventory.places(), planners, founds, ledger).gather();
    List<Settled> settled = new ArrayList<>();
    for (int i = 0; i < planners.size(); i++) {
      settled.add(new Settled(planners.get(i), founds.get(i), displaced.get(i)));
    }
    return settled;
  }

  /** Ids of pots for two people whose dates were moved to a day on which help is there anyway. */
  List<String> gathered() {
    return List.copyOf(gathered);
  }

  /** Most floor that comes to be taken of a place on any night, m2. */
  double mostTakenM2(int place) {
    return ledger.mostTakenM2(place);
  }

  /** What is carried on each night's day. */
  Ledger ledger() {
    return ledger;
  }

  /** Plans those anew that gave way; true if one breaks more rules there than was known. */
  private boolean giveWay(List<Claim> claims, List<Path> paths, List<PlantPlanner.Found> founds) {
    List<Integer> surprises = new ArrayList<>();
    Twins.forEach(
        order.size(),
        k -> planners.get(order.get(k)),
        false,
        k -> {
          if (givesWay(order.get(k), claims.get(k), paths.get(k), founds)) {
            surprises.add(k);
          }
        });
    return !surprises.isEmpty();
  }

  /** Plans one row anew if it gave way; true if it breaks more rules then than was known. */
  private boolean givesWay(int i, Claim claim, Path path, List<PlantPlanner.Found> founds) {
    PlantPlanner.Found wish = wishes.get(i);
    if (path.equals(wish.path())) {
      founds.set(i, wish);
      return false;
    }
    Toll expected = claim.toll(path);
    ledger.giveBack(claim.load(), path);
    if (copied.add(i)) {
      planners.set(i, planners.get(i).copy());
    }
    PlantPlanner.Found found = planners.get(i).search(wish.excused(), ledger.left(claim.load()));
    ledger.take(claim.load(), found.path());
    founds.set(i, found);
    return Toll.of(inventory.plants().get(i), found.cost()).losesMoreThan(expected);
  }

  /** What others did not need in the end goes back to those who wished for it. */
  private void takeBack(List<PlantPlanner.Found> founds, Set<Integer> except) {
    for (int i : order) {
      PlantPlanner.Found wish = wishes.get(i);
      Ledger.Load load = load(i);
      if (except.contains(i) || founds.get(i).path().equals(wish.path())) {
        continue;
      }
      ledger.giveBack(load, founds.get(i).path());
      if (Ledger.fits(wish.path(), ledger.left(load))) {
        founds.set(i, wish);
      }
      ledger.take(load, founds.get(i).path());
    }
  }

  /** Spares the keeper moves that hardly help. */
  private void makePlainer(List<PlantPlanner.Found> founds, Set<Integer> plainer) {
    for (int i : order) {
      Path before = founds.get(i).path();
      ledger.giveBack(load(i), before);
      founds.set(i, Plainer.plainer(planners.get(i), founds.get(i), ledger.left(load(i))));
      ledger.take(load(i), founds.get(i).path());
      if (!founds.get(i).path().equals(before)) {
        plainer.add(i);
      }
    }
  }

  /** What is missing where its wish first asks for more than is left. */
  private Optional<Displaced> displaced(int i, PlantPlanner.Found found) {
    Path wish = wishes.get(i).path();
    if (found.path().equals(wish)) {
      return Optional.empty();
    }
    Ledger.Load load = load(i);
    ledger.giveBack(load, found.path());
    Openings left = ledger.left(load);
    Optional<Displaced> displaced = Optional.empty();
    List<Integer> moves = wish.moveNights();
    for (int n = 0; n < wish.placeByNight().length && displaced.isEmpty(); n++) {
      int place = wish.placeByNight()[n];
      if (!left.open(place, n)) {
        displaced = Optional.of(displaced(Displaced.Kind.ROOM, place, n));
      } else if (moves.contains(n) && !left.handsFree(n)) {
        displaced = Optional.of(displaced(Displaced.Kind.HANDS, place, n));
      }
    }
    ledger.take(load, found.path());
    return displaced;
  }

  private Displaced displaced(Displaced.Kind kind, int place, int night) {
    return new Displaced(kind, winters.places().get(place), winters.season().day(night));
  }

  private Ledger.Load load(int i) {
    return planners.get(i).load();
  }

  private Ledger emptyLedger() {
    return new Ledger(
        inventory.places(),
        winters.season().days(),
        inventory.settings(),
        winters.outlook().tonight());
  }
}
