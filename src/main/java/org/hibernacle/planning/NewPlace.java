package org.hibernacle.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;

/**
 * A kind of place that a keeper could add, cheapest by the square metre first. Each is what the
 * inventory makes of a row with that kind, that cover and nothing else.
 */
public enum NewPlace {
  SHELTERED_GROUND(PlaceKind.GROUND),
  MULCHED_BED(PlaceKind.GROUND),
  /** Unheated, under glass, aired on warm days. */
  COLD_FRAME(PlaceKind.GLASSHOUSE),
  COOL_SHED(PlaceKind.COLD_STORE),
  /** Kept above {@value #FROST_FREE_C} °C. */
  FROST_FREE_ROOM(PlaceKind.FROST_FREE_ROOM),
  /** Kept at {@value #WARM_LOWEST_C} to {@value #WARM_HIGHEST_C} °C. */
  WARM_ROOM(PlaceKind.WARM_ROOM);

  /** Depth of the mulch, cm. */
  static final double MULCH_CM = 20;

  private static final double FROST_FREE_C = 4;
  private static final double WARM_LOWEST_C = 16;
  private static final double WARM_HIGHEST_C = 24;

  private final PlaceKind kind;

  NewPlace(PlaceKind kind) {
    this.kind = kind;
  }

  /** The kind that a place is of; empty for a bench. */
  public static Optional<NewPlace> of(Place place) {
    return switch (place.kind()) {
      case BENCH -> Optional.empty();
      case GROUND ->
          Optional.of(place.cover() == Place.Cover.MULCH ? MULCHED_BED : SHELTERED_GROUND);
      case GLASSHOUSE -> Optional.of(COLD_FRAME);
      case COLD_STORE -> Optional.of(COOL_SHED);
      case FROST_FREE_ROOM -> Optional.of(FROST_FREE_ROOM);
      case WARM_ROOM -> Optional.of(WARM_ROOM);
    };
  }

  /** Whether a garden has nothing of the kind: ground open to wind is no shelter. */
  boolean isLackedBy(Inventory inventory) {
    return inventory.places().stream()
        .noneMatch(
            p ->
                of(p).filter(this::equals).isPresent()
                    && (kind != PlaceKind.GROUND || p.wind() == Place.Wind.SHELTERED));
  }

  /** Such a place, under a name that no other place of the garden has. */
  Place place(Inventory inventory, OptionalDouble floorM2) {
    return new Place(
        freeName(inventory.places()),
        kind,
        floorM2,
        switch (kind) {
          case BENCH, GLASSHOUSE -> Place.Sun.FULL;
          case GROUND -> Place.Sun.PART;
          case COLD_STORE, FROST_FREE_ROOM, WARM_ROOM -> Place.Sun.NONE;
        },
        Place.Wind.SHELTERED,
        this == MULCHED_BED ? Place.Cover.MULCH : Place.Cover.NONE,
        this == MULCHED_BED ? MULCH_CM : 0,
        kind.defaultLight(),
        lowestHeldC(),
        this == WARM_ROOM ? OptionalDouble.of(WARM_HIGHEST_C) : OptionalDouble.empty(),
        kind.defaultWarmerByK(),
        kind.defaultLagHours(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        kind == PlaceKind.GLASSHOUSE,
        "");
  }

  private OptionalDouble lowestHeldC() {
    return switch (this) {
      case FROST_FREE_ROOM -> OptionalDouble.of(FROST_FREE_C);
      case WARM_ROOM -> OptionalDouble.of(WARM_LOWEST_C);
      default -> OptionalDouble.empty();
    };
  }

  private String freeName(List<Place> places) {
    String plain = "New " + name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    return java.util.stream.Stream.iterate(1, n -> n + 1)
        .map(n -> n == 1 ? plain : plain + " " + n)
        .filter(name -> places.stream().noneMatch(p -> p.name().equalsIgnoreCase(name)))
        .findFirst()
        .orElseThrow();
  }

  /** Places by how dear a square metre of them is, then by name. */
  static final Comparator<Place> CHEAPEST_FIRST =
      Comparator.comparing((Place p) -> of(p).orElse(SHELTERED_GROUND)).thenComparing(Place::name);
}
