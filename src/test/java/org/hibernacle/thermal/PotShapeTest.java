package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.csv.CSVRecord;
import org.hibernacle.SomePlace;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** What shape, wall and water do to the time a pot needs to freeze through. */
class PotShapeTest {
  private static final Place BENCH = SomePlace.of(PlaceKind.BENCH).open().place();

  /**
   * Plank's formula for the freezing time of food (Plank 1941, from memory; long cylinder of
   * diameter D already at its freezing point): {@code L / dT * (D / 4U + D^2 / 16k)}, k frozen.
   */
  @Test
  void freezesThroughWhenPlankSaysSo() {
    double frozenWPerMK = 0.8 * Math.pow(2.2 / 0.57, 0.27);
    double latentJPerM3 = 0.27 * 334e6;
    for (double volumeL : new double[] {0.5, 5, 30, 60}) {
      for (double airC : new double[] {-5, -10}) {
        for (double wattPerM2K : new double[] {4, 12}) {
          double diameterM = 0.12 * Math.cbrt(volumeL);
          double surfaceM2 = 4 * volumeL / 1000 / diameterM;
          RootBall ball =
              new RootBall(new ThermalClass(volumeL, surfaceM2, 0, Material.CERAMIC), 0.27, 1e-3);
          double hours = 0;
          while (ball.coreIce() < 1) {
            ball.step(airC, wattPerM2K * surfaceM2);
            hours += 0.25;
          }
          double plankS =
              latentJPerM3
                  / -airC
                  * (diameterM / 4 / wattPerM2K + diameterM * diameterM / 16 / frozenWPerMK);
          assertEquals(plankS / 3600, hours, 0.13 * plankS / 3600 + 0.5, volumeL + " L " + airC);
        }
      }
    }
  }

  /**
   * The lumped plateaus of checks/thermal.csv (6.2 h for 0.5 L, 12.4 h for 5 L, 24.7 h for 30 L in
   * air of -5 °C), longer by what Plank's second term adds: heat also has to come out of the ball.
   * Water 0.40, as there.
   */
  @Test
  void restsAsLongAsALumpedBallAndTheWayOut() {
    for (CSVRecord row : rows("timescale", "plateau", 9)) {
      double volumeM3 = input(row, "V");
      double surfaceM2 = input(row, "A");
      ThermalClass pot = new ThermalClass(1000 * volumeM3, surfaceM2, 0, Material.CERAMIC);
      RootBall ball = new RootBall(pot, 0.40, 1e-3);
      double hours = 0;
      while (ball.coreIce() < 1) {
        ball.step(input(row, "air"), input(row, "h") * surfaceM2);
        hours += 0.25;
      }
      double frozenWPerMK = 0.8 * Math.pow(2.2 / 0.57, 0.40);
      double wayOut = 1 + input(row, "h") * volumeM3 / surfaceM2 / frozenWPerMK;
      double lumpedHours = expected(row);
      assertEquals(lumpedHours * wayOut, hours, 0.1 * hours + 0.25, row.get("case"));
    }
  }

  /** Free-draining grit after rain, and the same gone dry: common practice, no source. */
  @Test
  void aDryBallHasNextToNoPlateau() {
    Container pot = pot(22, 13, 5, Material.CERAMIC);
    double dryHours = hoursToFreeze(pot, 0.02);
    double lowHours = hoursToFreeze(pot, 0.27);
    double wetHours = hoursToFreeze(pot, 0.50);
    assertTrue(dryHours < 3, dryHours + " h dry");
    assertTrue(lowHours > 3 * dryHours, lowHours + " h");
    assertEquals(0.50 / 0.27, wetHours / lowHours, 0.25);
  }

  /** 10 L each: 6 cm deep, as high as wide, and a tall one. */
  @Test
  void aShallowTrayFreezesBeforeATallPot() {
    double tray = hoursToFreeze(pot(48, 6, 10, Material.CERAMIC), 0.27);
    double compact = hoursToFreeze(pot(24.3, 24, 10, Material.CERAMIC), 0.27);
    double tall = hoursToFreeze(pot(15, 63, 10, Material.CERAMIC), 0.27);
    assertTrue(tray < tall && tall < compact, tray + " " + tall + " " + compact + " h");
    assertTrue(tray < 0.7 * compact, tray + " h of " + compact);
  }

  /** Walls as thick as they are sold, the other way round: conductivity times resistance. */
  @Test
  void wallsAreAsThickAsPotsAreMade() {
    // Incropera and DeWitt, table A.3, from memory: fired clay about 1.0, concrete 1.4, softwood
    // 0.12, hardwood 0.16; polypropylene about 0.2 W/mK (from memory).
    assertThickness(Material.CERAMIC, 1.0, 6, 14);
    assertThickness(Material.TERRACOTTA, 1.0, 8, 16);
    assertThickness(Material.PLASTIC, 0.2, 1.5, 4);
    assertThickness(Material.WOOD, 0.14, 15, 25);
    assertThickness(Material.CONCRETE, 1.4, 25, 45);
  }

  private static void assertThickness(
      Material material, double wattPerMK, double leastMm, double mostMm) {
    double thickMm = 1000 * wattPerMK * new ThermalClass(5, 0.1, 0.04, material).wallM2KPerW();
    assertTrue(thickMm >= leastMm && thickMm <= mostMm, material + " " + thickMm + " mm");
  }

  @Test
  void aWoodenBoxFreezesLastAndAThinPotFirst() {
    Material[] byHours = {
      Material.CERAMIC, Material.TERRACOTTA, Material.PLASTIC, Material.CONCRETE, Material.WOOD
    };
    double before = 0;
    for (Material material : byHours) {
      double hours = hoursToFreeze(pot(35, 20, 15, material), 0.27);
      assertTrue(hours >= before, material + " " + hours);
      before = hours;
    }
    double thin = hoursToFreeze(pot(35, 20, 15, Material.CERAMIC), 0.27);
    assertTrue(before > 1.25 * thin, "wood " + before + " h, ceramic " + thin);
  }

  private static Container pot(double widthCm, double depthCm, double volumeL, Material material) {
    return new Container(Shape.ROUND, widthCm, widthCm, depthCm, volumeL, material);
  }

  /** From +2 °C on an open bench in air of -6 °C. */
  private static double hoursToFreeze(Container container, double waterFraction) {
    ThermalClass pot = ThermalClass.of(container);
    RootBall ball = new RootBall(pot, waterFraction, 2);
    double wattPerK = Exchange.of(pot, BENCH, false).airWPerK();
    double hours = 0;
    while (ball.coreIce() < 1) {
      ball.step(-6, wattPerK);
      hours += 0.25;
    }
    return hours;
  }
}
