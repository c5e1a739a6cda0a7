package org.hibernacle.model;

import java.util.List;

/**
 * The keeper's collection.
 *
 * @param plants in the order of the sheet
 * @param places in the order of the sheet
 * @param settings of the sheet, defaults filled in
 * @param sheets the sheets as found, to be carried through
 */
public record Inventory(
    List<Plant> plants, List<Place> places, Settings settings, List<SheetTable> sheets) {
  public Inventory {
    plants = List.copyOf(plants);
    places = List.copyOf(places);
    sheets = List.copyOf(sheets);
  }

  /** The same collection in other places. */
  public Inventory in(List<Place> otherPlaces) {
    return new Inventory(plants, otherPlaces, settings, sheets);
  }

  /** The place of that name; throws {@link IllegalArgumentException} if there is none. */
  public Place place(String name) {
    return places.stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no place named " + name));
  }
}
