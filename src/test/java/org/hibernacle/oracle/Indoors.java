package org.hibernacle.oracle;

import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;

/** Air in a place, hour by hour; docs/models/places.md. */
final class Indoors {
  private static final double SUN_K_PER_W_PER_M2 = 0.7 * 6 / (6 * 18 + 1206 * 12 * 1 / 3600.0);

  private Indoors() {}

  static double[] airC(Place place, Outside outside) {
    double[] air = new double[outside.hours()];
    double before = outside.airC(0) + place.warmerByK();
    for (int hour = 0; hour < air.length; hour++) {
      double outC = outside.airC(hour);
      air[hour] =
          place.roofed()
              ? underRoof(place, before, outC, sunK(place, outside.sunWPerM2(hour)))
              : outC + place.warmerByK();
      before = air[hour];
    }
    return air;
  }

  private static double underRoof(Place place, double beforeC, double outC, double sunK) {
    double goalC = outC + place.warmerByK() + sunK;
    boolean glass = place.kind() == PlaceKind.GLASSHOUSE;
    boolean opened =
        place.kind() == PlaceKind.COLD_STORE && place.vents() && beforeC > 5 && outC < beforeC;
    double lagHours = opened ? Math.min(2, place.lagHours()) : place.lagHours();
    double airC = goalC + (beforeC - goalC) * Math.exp(-1 / lagHours);
    if (glass && place.vents() && airC > 10) {
      airC = Math.min(airC, Math.max(10, outC + 3));
    }
    if (place.highestHeldC().isPresent()) {
      airC = Math.min(airC, Math.max(place.highestHeldC().getAsDouble(), outC));
    }
    if (place.lowestHeldC().isPresent()) {
      double shortK = Math.max(0, place.holdsDownToC().orElse(-100) - outC);
      airC = Math.max(airC, place.lowestHeldC().getAsDouble() - shortK);
    }
    return airC;
  }

  private static double sunK(Place place, double sunWPerM2) {
    if (place.kind() != PlaceKind.GLASSHOUSE) {
      return 0;
    }
    double share =
        switch (place.sun()) {
          case NONE -> 0;
          case PART -> 0.5;
          case FULL -> 1;
        };
    return SUN_K_PER_W_PER_M2 * sunWPerM2 * share;
  }
}
