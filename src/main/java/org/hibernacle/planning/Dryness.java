package org.hibernacle.planning;

import java.util.OptionalDouble;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.physiology.Drying;

/** How far a plant has dried out while frozen, along one path through one winter. */
final class Dryness {
  private Dryness() {}

  /** Index of {@link Drying} after each night. */
  static double[] byNight(Plant plant, WintersOnFile winters, Lived lived) {
    double[] index = new double[lived.path().length];
    double before = 0;
    for (int n = 0; n < index.length; n++) {
      before =
          Drying.next(
              before,
              lived.trace().coreIceMin()[n],
              plant.species(),
              winters.places().get(lived.path()[n]),
              lived.trace().airMeanC()[n],
              crownInSnow(plant, winters, lived, n));
      index[n] = before;
    }
    return index;
  }

  /** Share of the crown that lies in snow; empty on benches, under roofs, and without a height. */
  private static OptionalDouble crownInSnow(
      Plant plant, WintersOnFile winters, Lived lived, int night) {
    boolean ground = winters.places().get(lived.path()[night]).kind() == PlaceKind.GROUND;
    if (!ground || plant.heightCm().isEmpty()) {
      return OptionalDouble.empty();
    }
    double potCm = plant.container().depthCm();
    double crownCm = Math.max(1, plant.heightCm().getAsDouble() - potCm);
    return OptionalDouble.of((winters.winter(lived.winter()).snowCm()[night] - potCm) / crownCm);
  }
}
