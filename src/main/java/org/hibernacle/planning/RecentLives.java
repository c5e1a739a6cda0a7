package org.hibernacle.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Lives along the paths that were asked for last, so that twins that are planned one after the
 * other, and changes of one plan, need not be lived again. Few are kept: a life through ten winters
 * takes a quarter of a megabyte. Safe for several threads.
 */
final class RecentLives {
  private static final int MOST_PATHS = 64;

  private final Map<Path, List<Lived>> byPath =
      new LinkedHashMap<>(MOST_PATHS, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Path, List<Lived>> eldest) {
          return size() > MOST_PATHS;
        }
      };

  /** Lives along a path, one entry a winter, lived now if they are not remembered. */
  List<Lived> along(Path path, Supplier<List<Lived>> live) {
    synchronized (byPath) {
      List<Lived> known = byPath.get(path);
      if (known != null) {
        return known;
      }
    }
    List<Lived> lived = live.get();
    synchronized (byPath) {
      byPath.put(path, lived);
    }
    return lived;
  }

  void forget() {
    synchronized (byPath) {
      byPath.clear();
    }
  }
}
