package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.IntStream;

/**
 * Shares out room and hands where plants ask for more than there is.
 *
 * <p>Plants that get in each other's way choose one after the other, in the order given, each the
 * cheapest path that what is left allows. Then pairs are tried the other way round as long as that
 * makes both together cheaper. Where few enough other ways exist, all are tried ({@link EveryWay}),
 * so that nothing cheaper is left; else {@link Shared#bound} tells how far off the result can be at
 * most.
 */
final class Sharing {
  /** Pairs tried the other way round; more of them would take minutes with thousands of plants. */
  private static final int MOST_PAIRS = 2000;

  /** Pairs looked at for that; so many take some seconds. */
  private static final int MOST_ASKED = 200_000;

  private final List<Claim> claims;
  private final Ledger ledger;
  private final Path[] paths;

  private Sharing(List<Claim> claims, Ledger ledger) {
    this.claims = claims;
    this.ledger = ledger;
    this.paths = claims.stream().map(Claim::wish).toArray(Path[]::new);
  }

  /**
   * What came out.
   *
   * @param paths one a claim
   * @param toll paid by all together
   * @param bound toll that no way of sharing could go below
   * @param proven whether no cheaper way of sharing exists
   */
  record Shared(List<Path> paths, Toll toll, Toll bound, boolean proven) {}

  /**
   * Shares out.
   *
   * @param claims those who choose first come first
   * @param ledger empty; holds every path afterwards
   */
  static Shared share(List<Claim> claims, Ledger ledger) {
    return new Sharing(claims, ledger).share();
  }

  private Shared share() {
    IntStream.range(0, paths.length).forEach(i -> ledger.take(load(i), paths[i]));
    int[] contesting =
        IntStream.range(0, paths.length).filter(i -> ledger.contested(load(i), paths[i])).toArray();
    Toll bound = total();
    if (contesting.length == 0) {
      return new Shared(List.of(paths), bound, bound, true);
    }
    Arrays.stream(contesting).forEach(i -> ledger.giveBack(load(i), paths[i]));
    Arrays.stream(contesting).forEach(this::choose);
    turnPairsRound();
    boolean proven = tryEveryWay(bound);
    return new Shared(List.of(paths), total(), bound, proven);
  }

  private Ledger.Load load(int i) {
    return claims.get(i).load();
  }

  private Toll toll(int i) {
    return claims.get(i).toll(paths[i]);
  }

  private Toll total() {
    return IntStream.range(0, paths.length).mapToObj(this::toll).reduce(Toll.NOTHING, Toll::plus);
  }

  /** Takes the best that is left to a claim that has taken nothing. */
  private void choose(int i) {
    Claim claim = claims.get(i);
    Openings left = ledger.left(claim.load());
    paths[i] = Ledger.fits(claim.wish(), left) ? claim.wish() : claim.cheapest(left);
    ledger.take(claim.load(), paths[i]);
  }

  private void turnPairsRound() {
    int tried = 0;
    int asked = 0;
    boolean better = true;
    while (better && tried < MOST_PAIRS) {
      better = false;
      for (int late = 0; late < paths.length; late++) {
        OptionalInt missing = firstMissing(late);
        for (int early = 0; early < paths.length && missing.isPresent(); early++) {
          if (early == late || !takes(early, late, missing.getAsInt())) {
            continue;
          }
          if (tried >= MOST_PAIRS || asked++ >= MOST_ASKED) {
            return;
          }
          if (isInTheWay(early, late)) {
            tried++;
            if (turnRound(late, early)) {
              better = true;
              missing = firstMissing(late);
            }
          }
        }
      }
    }
  }

  /** First night on which others leave no room or no hands for a wish; empty if it has it. */
  private OptionalInt firstMissing(int wishing) {
    Path wish = claims.get(wishing).wish();
    if (paths[wishing].equals(wish)) {
      return OptionalInt.empty();
    }
    ledger.giveBack(load(wishing), paths[wishing]);
    OptionalInt night = Ledger.firstMissing(wish, ledger.left(load(wishing)));
    ledger.take(load(wishing), paths[wishing]);
    return night;
  }

  /** Whether one has something of the room or the hands that another wishes for that night. */
  private boolean takes(int other, int wishing, int night) {
    int[] places = paths[other].placeByNight();
    boolean room = places[night] == claims.get(wishing).wish().placeByNight()[night];
    return room || (night > 0 && places[night] != places[night - 1]);
  }

  /** Whether one would have its wish if the other were not there. */
  private boolean isInTheWay(int other, int wishing) {
    ledger.giveBack(load(other), paths[other]);
    ledger.giveBack(load(wishing), paths[wishing]);
    boolean free = Ledger.fits(claims.get(wishing).wish(), ledger.left(load(wishing)));
    ledger.take(load(wishing), paths[wishing]);
    ledger.take(load(other), paths[other]);
    return free;
  }

  /** Lets one choose before another; keeps the outcome if it is cheaper. */
  private boolean turnRound(int first, int second) {
    Path firstBefore = paths[first];
    Path secondBefore = paths[second];
    Toll before = toll(first).plus(toll(second));
    ledger.giveBack(load(first), firstBefore);
    ledger.giveBack(load(second), secondBefore);
    choose(first);
    choose(second);
    if (toll(first).plus(toll(second)).compareTo(before) < 0) {
      return true;
    }
    ledger.giveBack(load(first), paths[first]);
    ledger.giveBack(load(second), paths[second]);
    paths[first] = firstBefore;
    paths[second] = secondBefore;
    ledger.take(load(first), firstBefore);
    ledger.take(load(second), secondBefore);
    return false;
  }

  /** Whether every way was tried, so that the paths are the cheapest there are. */
  private boolean tryEveryWay(Toll bound) {
    if (claims.size() > EveryWay.MOST_CLAIMS) {
      return false;
    }
    OptionalLong extra = total().costsMoreThan(bound);
    List<List<Path>> ways = new ArrayList<>();
    for (Claim claim : claims) {
      List<Path> all = claim.paths(extra, EveryWay.MOST_PATHS);
      if (all.size() > EveryWay.MOST_PATHS) {
        return false;
      }
      ways.add(all.stream().sorted(Comparator.comparing(claim::toll)).toList());
    }
    IntStream.range(0, paths.length).forEach(i -> ledger.giveBack(load(i), paths[i]));
    EveryWay every = new EveryWay(claims, ways, ledger, total());
    Optional<List<Path>> cheaper = every.cheaper();
    cheaper.ifPresent(
        found -> IntStream.range(0, paths.length).forEach(i -> paths[i] = found.get(i)));
    IntStream.range(0, paths.length).forEach(i -> ledger.take(load(i), paths[i]));
    return every.finished();
  }
}
