package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.junit.jupiter.api.Test;

class MassTest {
  /** 10 L of ball at 1.2 and tree at 0.1 kg/L; 0.25 m2 of wall and floor at 20 kg/m2. */
  @Test
  void ballTreeAndWallAddUp() {
    Container pot =
        new Container(Shape.RECTANGULAR, 50, 20, 10.714285714285714, 10, Material.CERAMIC);
    assertEquals(0.25, pot.sideM2() + pot.footprintM2(), 1e-9);
    assertEquals(13 + 5, Mass.wetKg(pot), 1e-6);
  }

  /**
   * Wet peat weighs 0.98 kg/L (Int. J. Agronomy 2012, 978528, table 1) and wet sand 2.0 (Moene and
   * van Dam 2014, table 2.2): a ball of grit and peat lies between.
   */
  @Test
  void aWetBallWeighsBetweenPeatAndSand() {
    Container bag = new Container(Shape.ROUND, 30, 30, 30, 20, Material.FABRIC);
    double kgPerL = Mass.wetKg(bag) / bag.volumeL();
    assertTrue(kgPerL > 0.98 && kgPerL < 2.0, kgPerL + " kg/L");
  }

  @Test
  void heavierWallsMakeHeavierPots() {
    Material[] byMass = {
      Material.FABRIC,
      Material.PLASTIC,
      Material.WOOD,
      Material.CERAMIC,
      Material.TERRACOTTA,
      Material.CONCRETE
    };
    double before = 0;
    for (Material material : byMass) {
      double massKg = Mass.wetKg(new Container(Shape.ROUND, 40, 40, 20, 20, material));
      assertTrue(massKg > before, material.name());
      before = massKg;
    }
  }
}
