package org.hibernacle.planning;

import org.hibernacle.model.Container;

/**
 * Estimates what one pot weighs when rain-soaked, the case to lift for.
 *
 * <p>Root ball 1.2 kg/L wet, tree 0.1 kg per litre of ball, wall by material and usual thickness;
 * all own round figures. What one person lifts: {@link Lifting}.
 */
final class Mass {
  private static final double WET_BALL_KG_PER_L = 1.2;
  private static final double TREE_KG_PER_L = 0.1;

  private Mass() {}

  /** Mass of one pot with its plant, kg. */
  static double wetKg(Container pot) {
    double wallKgPerM2 =
        switch (pot.material()) {
          case CERAMIC -> 20;
          case TERRACOTTA -> 22;
          case PLASTIC -> 3;
          case WOOD -> 12;
          case CONCRETE -> 65;
          case FABRIC -> 0.5;
        };
    double wallM2 = pot.sideM2() + pot.footprintM2();
    return pot.volumeL() * (WET_BALL_KG_PER_L + TREE_KG_PER_L) + wallM2 * wallKgPerM2;
  }
}
