package org.hibernacle.oracle;

import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;

/**
 * What a place offers a pot in one winter, at each full hour.
 *
 * @param place which
 * @param airC air in the place, °C
 * @param inMulchC air as it comes through the mulch, °C; the same as {@code airC} without mulch
 * @param skyK how far the night sky draws a level surface below the air, K
 * @param belowC soil, slab, or the air below a bench, °C
 */
record PlaceHours(Place place, double[] airC, double[] inMulchC, double[] skyK, double[] belowC) {
  private static final double MULCH_DIFFUSIVITY_M2_PER_S = 3e-7;

  static PlaceHours of(Place place, Outside outside) {
    double[] air = Indoors.airC(place, outside);
    double[] below = air;
    if (place.roofed()) {
      below = Ground.slabC(outside, air);
    } else if (place.kind() == PlaceKind.GROUND) {
      below = Ground.soilC(place, outside, air);
    }
    double[] sky = new ClearNight(place, outside, air).drawnK();
    return new PlaceHours(place, air, throughMulch(place, air, sky), sky, below);
  }

  private static double[] throughMulch(Place place, double[] airC, double[] skyK) {
    if (place.cover() != Place.Cover.MULCH) {
      return airC;
    }
    double depthM = place.coverDepthCm() / 100;
    double lagHours = depthM * depthM / (2 * MULCH_DIFFUSIVITY_M2_PER_S) / 3600;
    double[] late = airC.clone();
    for (int hour = 1; hour < late.length; hour++) {
      double entersC = airC[hour] - skyK[hour];
      late[hour] = entersC + (late[hour - 1] - entersC) * Math.exp(-1 / lagHours);
    }
    return late;
  }
}
