package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
  private Ledger ledger;

  Together(Inventory inventory, Caution caution, WintersOnFile winters) {
    this.inventory = inventory;
    this.winters = winters;
    planners =
        inventory.plants().parallelStream()
            .map(plant -> PlantPlanner.of(plant, inventory.settings(), caution, winters))
            .toList();
    wishes = planners.parallelStream().map(PlantPlanner::find).toList();
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
    takeBack(founds);
    List<Settled> settled = new ArrayList<>();
    for (int i = 0; i < planners.size(); i++) {
      settled.add(new Settled(planners.get(i), founds.get(i), displaced(i, founds.get(i))));
    }
    return settled;
  }

  /** Plans those anew that gave way; true if one breaks more rules there than was known. */
  private boolean giveWay(List<Claim> claims, List<Path> paths, List<PlantPlanner.Found> founds) {
    boolean surprised = false;
    for (int k = 0; k < paths.size(); k++) {
      int i = order.get(k);
      PlantPlanner.Found wish = wishes.get(i);
      if (paths.get(k).equals(wish.path())) {
        founds.set(i, wish);
        continue;
      }
      Ledger.Load load = claims.get(k).load();
      Toll expected = claims.get(k).toll(paths.get(k));
      ledger.giveBack(load, paths.get(k));
      PlantPlanner.Found found = planners.get(i).search(wish.excused(), ledger.left(load));
      ledger.take(load, found.path());
      founds.set(i, found);
      surprised |= Toll.of(inventory.plants().get(i), found.cost()).losesMoreThan(expected);
    }
    return surprised;
  }

  /** What others did not need in the end goes back to those who wished for it. */
  private void takeBack(List<PlantPlanner.Found> founds) {
    for (int i : order) {
      PlantPlanner.Found wish = wishes.get(i);
      Ledger.Load load = load(i);
      if (founds.get(i).path().equals(wish.path())) {
        continue;
      }
      ledger.giveBack(load, founds.get(i).path());
      if (Ledger.fits(wish.path(), ledger.left(load))) {
        founds.set(i, wish);
      }
      ledger.take(load, founds.get(i).path());
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
    return Ledger.Load.of(inventory.plants().get(i), planners.get(i).home());
  }

  private Ledger emptyLedger() {
    return new Ledger(inventory.places(), winters.season().days(), inventory.settings());
  }
}
