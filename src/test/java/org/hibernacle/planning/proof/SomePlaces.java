package org.hibernacle.planning.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.PlaceKind;

/** Places by chance: a bench, and one to five more of any kind, often with little room. */
final class SomePlaces {
  private final Draw draw;

  SomePlaces(Draw draw) {
    this.draw = draw;
  }

  List<Place> places() {
    List<Place> places = new ArrayList<>();
    places.add(place("Bench", PlaceKind.BENCH));
    if (draw.chance(0.3)) {
      places.add(place("Other bench", PlaceKind.BENCH));
    }
    int more = draw.between(1, 4);
    for (int i = 0; i < more; i++) {
      PlaceKind kind = draw.oneOf(PlaceKind.values());
      if (kind == PlaceKind.BENCH) {
        kind = PlaceKind.GROUND;
      }
      places.add(place(draw.oneOf("Old", "New", "Far", "Low") + " " + kind + " " + (i + 1), kind));
    }
    return places;
  }

  private Place place(String name, PlaceKind kind) {
    boolean outdoors = !kind.roofed();
    OptionalDouble lowestHeldC =
        switch (kind) {
          case BENCH, GROUND, COLD_STORE -> OptionalDouble.empty();
          case GLASSHOUSE -> draw.sometimes(0.6, 0, 10);
          case FROST_FREE_ROOM -> OptionalDouble.of(draw.between(1.0, 6.0));
          case WARM_ROOM -> OptionalDouble.of(draw.between(13.0, 20.0));
        };
    OptionalDouble highestHeldC =
        lowestHeldC.isPresent()
            ? draw.sometimes(0.5, lowestHeldC.getAsDouble() + 2, lowestHeldC.getAsDouble() + 12)
            : OptionalDouble.empty();
    OptionalDouble holdsDownToC =
        lowestHeldC.isPresent() ? draw.sometimes(0.5, -25, -8) : OptionalDouble.empty();
    Cover cover =
        switch (kind) {
          case BENCH -> draw.oneOf(Cover.NONE, Cover.NONE, Cover.FLEECE);
          case GROUND -> draw.oneOf(Cover.values());
          default -> Cover.NONE;
        };
    return new Place(
        name,
        kind,
        kind == PlaceKind.BENCH ? OptionalDouble.empty() : draw.sometimes(0.6, 0.05, 0.8),
        draw.oneOf(Place.Sun.values()),
        draw.oneOf(Place.Wind.values()),
        cover,
        cover == Cover.MULCH ? draw.between(5.0, 35.0) : 0,
        outdoors || draw.chance(0.5) ? kind.defaultLight() : draw.oneOf(Light.values()),
        lowestHeldC,
        highestHeldC,
        draw.chance(0.5)
            ? kind.defaultWarmerByK()
            : draw.between(outdoors ? -1.5 : 0, outdoors ? 1 : 5),
        outdoors || draw.chance(0.5) ? kind.defaultLagHours() : draw.evenlyByOrder(1, 90),
        holdsDownToC,
        outdoors ? OptionalDouble.empty() : draw.sometimes(0.4, 40, 220),
        kind.roofed() && draw.chance(0.5),
        "");
  }
}
