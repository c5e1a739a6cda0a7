package org.hibernacle.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tries every way of sharing that could still be cheaper, depth first. */
final class EveryWay {
  /** Paths of one plant, more of which are too many to try. */
  static final int MOST_PATHS = 2000;

  /** Plants, of more of which all ways are too many to try. */
  static final int MOST_CLAIMS = 60;

  /** Nights looked at before it is given up, about a second. */
  private static final long MOST_NIGHTS = 300_000_000;

  private final List<Claim> claims;
  private final List<List<Path>> ways;
  private final Ledger ledger;
  private final Toll[] restAtLeast;
  private Toll best;
  private Optional<List<Path>> found = Optional.empty();
  private long nightsSeen;

  /**
   * A search.
   *
   * @param claims who share
   * @param ways paths of each, cheapest first
   * @param ledger empty, and again so afterwards
   * @param known toll of a way that is known
   */
  EveryWay(List<Claim> claims, List<List<Path>> ways, Ledger ledger, Toll known) {
    this.claims = claims;
    this.ways = ways;
    this.ledger = ledger;
    this.best = known;
    restAtLeast = new Toll[claims.size() + 1];
    restAtLeast[claims.size()] = Toll.NOTHING;
    for (int i = claims.size() - 1; i >= 0; i--) {
      Claim claim = claims.get(i);
      restAtLeast[i] = restAtLeast[i + 1].plus(claim.toll(ways.get(i).get(0)));
    }
  }

  /** Paths that together cost less than what is known, the least there are. */
  Optional<List<Path>> cheaper() {
    tryFrom(0, Toll.NOTHING, new ArrayList<>());
    return found;
  }

  /** Whether nothing was left untried. */
  boolean finished() {
    return nightsSeen < MOST_NIGHTS;
  }

  private void tryFrom(int i, Toll paid, List<Path> chosen) {
    if (i == claims.size()) {
      best = paid;
      found = Optional.of(List.copyOf(chosen));
      return;
    }
    if (paid.plus(atLeast(i)).compareTo(best) >= 0) {
      return;
    }
    Claim claim = claims.get(i);
    Openings left = ledger.left(claim.load());
    for (Path path : ways.get(i)) {
      Toll with = paid.plus(claim.toll(path));
      if (with.plus(restAtLeast[i + 1]).compareTo(best) >= 0 || !finished()) {
        return;
      }
      if (fits(path, left)) {
        ledger.take(claim.load(), path);
        chosen.add(path);
        tryFrom(i + 1, with, chosen);
        chosen.remove(chosen.size() - 1);
        ledger.giveBack(claim.load(), path);
      }
    }
  }

  private boolean fits(Path path, Openings left) {
    nightsSeen += path.placeByNight().length;
    return Ledger.fits(path, left);
  }

  /** What those from {@code i} on pay at least, each as if it came next. */
  private Toll atLeast(int i) {
    Toll sum = Toll.NOTHING;
    for (int k = i; k < claims.size(); k++) {
      Claim claim = claims.get(k);
      Openings left = ledger.left(claim.load());
      for (Path path : ways.get(k)) {
        if (fits(path, left)) {
          sum = sum.plus(claim.toll(path));
          break;
        }
      }
    }
    return sum;
  }
}
