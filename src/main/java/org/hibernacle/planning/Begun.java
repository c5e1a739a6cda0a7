package org.hibernacle.planning;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;

/**
 * What of a plant's season can not be changed any more; nothing for a plan before the season.
 *
 * @param home index of its home
 * @param placeByNight indices of the places of those nights, from the first on
 */
record Begun(int home, int[] placeByNight) {
  static Begun of(Plant plant, WintersOnFile winters) {
    Season season = winters.season();
    int tonight = winters.outlook().tonight();
    List<MoveMade> made = winters.outlook().madeBy(plant);
    boolean carriedToday =
        !made.isEmpty() && season.index(made.get(made.size() - 1).date()) == tonight;
    int home = index(plant.home(), winters);
    int[] places = new int[carriedToday ? tonight + 1 : tonight];
    Arrays.fill(places, home);
    for (MoveMade move : made) {
      int place = index(move.place(), winters);
      Arrays.fill(places, season.index(move.date()), places.length, place);
    }
    return new Begun(home, places);
  }

  private static int index(String name, WintersOnFile winters) {
    List<String> names = winters.places().stream().map(Place::name).toList();
    int index = names.indexOf(name);
    if (index < 0) {
      throw new IllegalArgumentException("no place named " + name);
    }
    return index;
  }

  /** First night that can still be changed. */
  int firstFree() {
    return placeByNight.length;
  }

  /** Whether it never left home so far. */
  boolean atHome() {
    return IntStream.of(placeByNight).allMatch(place -> place == home);
  }

  /** Index of the place where it stands now. */
  int standsIn() {
    return placeByNight.length == 0 ? home : placeByNight[placeByNight.length - 1];
  }

  /** The path of a season of so many nights without any more moves. */
  Path leftStanding(int nights) {
    int[] places = Arrays.copyOf(placeByNight, nights);
    Arrays.fill(places, placeByNight.length, nights, standsIn());
    return new Path(places);
  }
}
