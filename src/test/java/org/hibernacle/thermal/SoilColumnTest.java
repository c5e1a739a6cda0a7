package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.hibernacle.thermal.ThermalChecks.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.thermal.SoilColumn.Material;
import org.junit.jupiter.api.Test;

/** Soil against the analytic solutions in checks/thermal.csv. */
class SoilColumnTest {
  private static final double DAY_S = 86_400;

  /** The surface as good as held at the temperature above it, m2K/W. */
  private static final double NEXT_TO_NOTHING = 1e-6;

  /**
   * Two phases, Carslaw and Jaeger 1959, chapter 11. Only conductivity times time matters, so a
   * hundredth of the one and a hundredfold of the other let the layers be thin.
   */
  @Test
  void frostGoesAsDeepAsNeumannsSolution() {
    Material slow = new Material(0.012, 0.017, 2.8e6, 1.9e6, 100e6);
    SoilColumn soil = new SoilColumn(slow, layers(250, 0.004), depthM -> 4);
    soil.pass(-5, NEXT_TO_NOTHING, 100 * DAY_S);
    assertNear(expected(row("neumann", "two_phase_front_1d")), 0.02, soil.frostDepthM());
    soil.pass(-5, NEXT_TO_NOTHING, 900 * DAY_S);
    assertNear(expected(row("neumann", "two_phase_front_10d")), 0.02, soil.frostDepthM());
  }

  /** Layers of 3 cm, the thinnest a garden has, are coarse for one day and good for a spell. */
  @Test
  void theLayersOfAGardenAreThinEnough() {
    Material material = new Material(1.2, 1.7, 2.8e6, 1.9e6, 100e6);
    SoilColumn soil = new SoilColumn(material, layers(200, 0.03), depthM -> 4);
    soil.pass(-5, NEXT_TO_NOTHING, DAY_S);
    assertNear(expected(row("neumann", "two_phase_front_1d")), 0.08, soil.frostDepthM());
    soil.pass(-5, NEXT_TO_NOTHING, 9 * DAY_S);
    assertNear(expected(row("neumann", "two_phase_front_10d")), 0.02, soil.frostDepthM());
    soil.pass(-5, NEXT_TO_NOTHING, 20 * DAY_S);
    assertNear(expected(row("neumann", "two_phase_front_30d")), 0.02, soil.frostDepthM());
  }

  /** One phase: ice growing down from the surface of water at 0 °C. */
  @Test
  void iceGrowsAsThickAsNeumannsSolution() {
    CSVRecord row = row("neumann", "ice_1day");
    double joulePerM3K = input(row, "rho") * input(row, "c");
    double latentJPerM3 = input(row, "rho") * input(row, "L");
    double k = input(row, "k");
    Material water = new Material(k, k, joulePerM3K, joulePerM3K, latentJPerM3);
    SoilColumn column = new SoilColumn(water, layers(60, 0.0325), depthM -> 1e-9);
    column.pass(input(row, "Ts"), NEXT_TO_NOTHING, DAY_S);
    assertNear(expected(row), 0.02, column.frostDepthM());
  }

  @Test
  void aStepAtTheSurfaceSinksInLikeTheErrorFunction() {
    for (CSVRecord row : rows("semi_infinite", "T_x", 4)) {
      SoilColumn soil = new SoilColumn(dry(0.5e-6), layers(120, 0.03), depthM -> input(row, "Ti"));
      soil.pass(input(row, "Ts"), NEXT_TO_NOTHING, input(row, "t"));
      assertEquals(expected(row), soil.at(input(row, "x")), 0.01, row.toString());
    }
  }

  /** Incropera and DeWitt (from memory): how deep to lay a water main, printed as 0.68 m. */
  @Test
  void theWaterMainLiesAsDeepAsInTheTextbook() {
    CSVRecord row = row("semi_infinite", "textbook");
    Material soil = dry(input(row, "alpha"));
    SoilColumn column = new SoilColumn(soil, layers(200, 0.03), depthM -> input(row, "Ti"));
    column.pass(input(row, "Ts"), NEXT_TO_NOTHING, 60 * DAY_S);
    double depthM = 0;
    while (column.at(depthM) < 0) {
      depthM += 0.001;
    }
    assertEquals(expected(row), depthM, 0.01);
    assertEquals(0.68, expected(row), 0.005);
  }

  @Test
  void aYearlyWaveSinksInAsKusudaAndAchenbachSay() {
    PeriodicSoil law = new PeriodicSoil(10, 5, 35, 0.5e-6 * DAY_S);
    assertFollows(law, new SoilColumn(dry(0.5e-6), deep(), z -> law.at(z, 0)), 0.1);
    // Garden loam never freezes here; its layers end at 4 m, where no heat passes.
    PeriodicSoil loam = new PeriodicSoil(10, 5, 35, 1.2 / 2.5e6 * DAY_S);
    assertFollows(loam, new SoilColumn(z -> loam.at(z, 0)), 0.2);
  }

  private static void assertFollows(PeriodicSoil law, SoilColumn soil, double withinK) {
    double worst = 0;
    for (int hour = 0; hour < 2 * 365 * 24; hour++) {
      soil.pass(law.at(0, (hour + 0.5) / 24), NEXT_TO_NOTHING, 3600);
      if (hour > 365 * 24) {
        double day = (hour + 1) / 24.0;
        worst = Math.max(worst, Math.abs(law.at(0.5, day) - soil.at(0.5)));
        worst = Math.max(worst, Math.abs(law.at(1, day) - soil.at(1)));
      }
    }
    assertTrue(worst < withinK, worst + " K");
  }

  @Test
  void thePeriodicSoilIsThatOfTheTable() {
    for (CSVRecord row : rows("kusuda", "z", 30)) {
      PeriodicSoil soil =
          new PeriodicSoil(
              input(row, "Tm"), input(row, "As"), input(row, "t0"), input(row, "alpha"));
      assertEquals(expected(row), soil.at(input(row, "z"), input(row, "t")), 1e-6, row.toString());
    }
  }

  /** What comes in at the surface is what the column holds more; nothing passes its bottom. */
  @Test
  void theHeatBalanceClosesOverAnyYear() {
    long seed = 7_401;
    SplittableRandom random = new SplittableRandom(seed);
    double surfaceM2KPerW = 0.1;
    SoilColumn soil = new SoilColumn(depthM -> 10 - depthM);
    double cameInJ = 0;
    double turnedOverJ = 0;
    double startJ = soil.heatJPerM2();
    for (int step = 0; step < 365 * 288; step++) {
      double aboveC = 8 * Math.sin(2 * Math.PI * step / 288) + random.nextDouble(-20, 20);
      double topC = soil.at(0);
      double conductivity = topC < 0 ? 1.7 : 1.2;
      double watt = (aboveC - topC) / (surfaceM2KPerW + 0.015 / conductivity);
      cameInJ += watt * SoilColumn.STEP_S;
      turnedOverJ += Math.abs(watt) * SoilColumn.STEP_S;
      soil.pass(aboveC, surfaceM2KPerW, SoilColumn.STEP_S);
    }
    double held = soil.heatJPerM2() - startJ;
    assertEquals(held, cameInJ, 1e-9 * turnedOverJ, "seed " + seed);
  }

  /** Stefan's rule leaves out what soil holds beside its ice, so it is always too deep. */
  @Test
  void frostStaysShortOfStefansRuleButNotByMuch() {
    CSVRecord row = row("stefan", "freezing_index_100");
    Material material = new Material(1.5, 1.5, 2.5e6, 2e6, input(row, "Lv"));
    SoilColumn soil = new SoilColumn(material, layers(100, 0.03), depthM -> 1e-9);
    soil.pass(-5, NEXT_TO_NOTHING, input(row, "FI") / 5 * DAY_S);
    assertTrue(soil.frostDepthM() < expected(row), soil.frostDepthM() + " m");
    assertNear(expected(row), 0.03, soil.frostDepthM());
  }

  @Test
  void temperaturesBetweenLayersLieOnALine() {
    SoilColumn soil = new SoilColumn(depthM -> 2 + depthM);
    assertEquals(2.015, soil.at(0), 1e-12);
    assertEquals(2.1, soil.at(0.1), 1e-12);
    assertEquals(3.3, soil.at(1.3), 1e-12);
    assertEquals(soil.at(4), soil.at(9));
  }

  private static void assertNear(double expected, double share, double found) {
    assertEquals(expected, found, share * expected);
  }

  private static Material dry(double diffusivityM2PerS) {
    return new Material(diffusivityM2PerS * 2e6, diffusivityM2PerS * 2e6, 2e6, 2e6, 0);
  }

  private static double[] layers(int count, double thicknessM) {
    double[] layers = new double[count];
    Arrays.fill(layers, thicknessM);
    return layers;
  }

  /** Thin on top, 12 m in all. */
  private static double[] deep() {
    double[] layers = layers(120, 0.1);
    Arrays.fill(layers, 0, 40, 0.05);
    return layers;
  }
}
