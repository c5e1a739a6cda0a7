package org.hibernacle.thermal;

import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;

/**
 * Pots that cool alike. Sizes are rounded to steps of 0.1 %, volume down and areas up, which is the
 * side that freezes earlier. Wider steps would not do: where a plateau ends in the night, 4 % of
 * the size are already 2 K.
 *
 * @param volumeL of the root ball, L
 * @param sideM2 of the wall, m2
 * @param footM2 of the floor, and of the open top, m2
 * @param material of the wall
 */
public record ThermalClass(double volumeL, double sideM2, double footM2, Material material) {
  private static final double STEP = Math.log(1.001);

  /** The class of a container. */
  public static ThermalClass of(Container pot) {
    return new ThermalClass(
        roundDown(pot.volumeL()),
        roundUp(pot.sideM2()),
        roundUp(pot.footprintM2()),
        pot.material());
  }

  private static double roundDown(double value) {
    return Math.exp(Math.floor(Math.log(value) / STEP + 1e-9) * STEP);
  }

  private static double roundUp(double value) {
    return Math.exp(Math.ceil(Math.log(value) / STEP - 1e-9) * STEP);
  }

  /** Resistance of the wall, m2K/W; own round figures for usual thicknesses. */
  double wallM2KPerW() {
    return switch (material) {
      case CERAMIC -> 0.010;
      case TERRACOTTA -> 0.012;
      case PLASTIC -> 0.015;
      case WOOD -> 0.14;
      case CONCRETE -> 0.023;
      case FABRIC -> 0.010;
    };
  }
}
