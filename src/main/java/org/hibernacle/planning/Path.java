package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.jspecify.annotations.Nullable;

/**
 * The place of a plant on each night of the planned season.
 *
 * @param placeByNight index of the place
 */
record Path(int[] placeByNight) {
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Path path && Arrays.equals(placeByNight, path.placeByNight);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(placeByNight);
  }

  static Path standing(int nights, int place) {
    return new Path(IntStream.range(0, nights).map(i -> place).toArray());
  }

  /** First nights of the stays after the first: the nights that follow a move. */
  List<Integer> moveNights() {
    List<Integer> nights = new ArrayList<>();
    for (int n = 1; n < placeByNight.length; n++) {
      if (placeByNight[n] != placeByNight[n - 1]) {
        nights.add(n);
      }
    }
    return nights;
  }

  /** The path with other nights {@code [from, to)} spent in one place. */
  Path with(int from, int to, int place) {
    int[] changed = placeByNight.clone();
    for (int n = Math.max(0, from); n < Math.min(to, changed.length); n++) {
      changed[n] = place;
    }
    return new Path(changed);
  }

  /** The stays, without gaps over the whole season. */
  List<Stay> stays(Season season, List<Place> places) {
    List<Stay> stays = new ArrayList<>();
    int from = 0;
    for (int n = 1; n <= placeByNight.length; n++) {
      if (n == placeByNight.length || placeByNight[n] != placeByNight[from]) {
        LocalDate to = n == placeByNight.length ? season.endExclusive() : season.day(n);
        stays.add(new Stay(places.get(placeByNight[from]), season.day(from), to));
        from = n;
      }
    }
    return stays;
  }
}
