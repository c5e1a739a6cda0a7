package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.hibernacle.thermal.ThermalChecks.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.thermal.SoilColumn.Material;
import org.junit.jupiter.api.Test;

/** Soil against the analytic solutions in checks/thermal.csv. */
class SoilColumnTest {
  private static final double DAY_S = 86_400;

  /** The surface as good as held at the temperature above it, m2K/W. */
  private static final double NEXT_TO_NOTHING = 1e-6;

  /** Two phases, Carslaw and Jaeger 1959, chapter 11, in the very layers gardens are given. */
  @Test
  void frostGoesAsDeepAsNeumannsSolution() {
    SoilColumn soil = new SoilColumn(new Material(1.2, 1.7, 2.8e6, 1.9e6, 100e6), depthM -> 4);
    int before = 0;
    for (int days : new int[] {1, 10, 30}) {
      soil.pass(-5, NEXT_TO_NOTHING, (days - before) * DAY_S);
      double expected = expected(row("neumann", "two_phase_front_" + days + "d"));
      assertNear(expected, 0.01, soil.frostDepthM());
      before = days;
    }
  }

  /**
   * One phase: loam at 0 °C, {@code X = 2 lambda sqrt(kappa t)} with the table's lambda. A loam of
   * Stefan number 1 would need -44 °C and one of 0.01 has frozen for an hour at -0.4 °C only, so
   * the ends of the table are met less closely on the first day.
   */
  @Test
  void frostInWetSoilGrowsWithTheRootOfTime() {
    Material loam = Material.GARDEN_LOAM;
    for (CSVRecord row : rows("neumann", "lambda_St", 6)) {
      double stefan = input(row, "St");
      double surfaceC = -stefan * loam.latentJPerM3() / loam.frozenJPerM3K();
      SoilColumn soil = new SoilColumn(depthM -> 1e-9);
      int before = 0;
      for (int days : new int[] {1, 10, 30}) {
        soil.pass(surfaceC, NEXT_TO_NOTHING, (days - before) * DAY_S);
        double kappa = loam.frozenWPerMK() / loam.frozenJPerM3K();
        double frontM = 2 * expected(row) * Math.sqrt(kappa * days * DAY_S);
        assertNear(frontM, days == 1 && stefan == 0.01 ? 0.02 : 0.01, soil.frostDepthM());
        before = days;
      }
    }
  }

  /** Ice growing down from the surface of water at 0 °C. */
  @Test
  void iceGrowsAsThickAsNeumannsSolution() {
    CSVRecord row = row("neumann", "ice_1day");
    double joulePerM3K = input(row, "rho") * input(row, "c");
    double latentJPerM3 = input(row, "rho") * input(row, "L");
    double k = input(row, "k");
    Material water = new Material(k, k, joulePerM3K, joulePerM3K, latentJPerM3);
    SoilColumn column = new SoilColumn(water, depthM -> 1e-9);
    column.pass(input(row, "Ts"), NEXT_TO_NOTHING, DAY_S);
    assertNear(expected(row), 0.01, column.frostDepthM());
  }

  /** Thaw is frost upside down: the same material with its two states exchanged. */
  @Test
  void thawGoesAsDeepAsFrostWould() {
    Material loam = Material.GARDEN_LOAM;
    Material mirrored =
        new Material(
            loam.frozenWPerMK(),
            loam.unfrozenWPerMK(),
            loam.frozenJPerM3K(),
            loam.unfrozenJPerM3K(),
            loam.latentJPerM3());
    SoilColumn thawing = new SoilColumn(loam, depthM -> -4);
    SoilColumn freezing = new SoilColumn(mirrored, depthM -> 4);
    double icyM = thawing.frostDepthM();
    thawing.pass(5, NEXT_TO_NOTHING, 10 * DAY_S);
    freezing.pass(-5, NEXT_TO_NOTHING, 10 * DAY_S);
    assertEquals(freezing.frostDepthM(), icyM - thawing.frostDepthM(), 1e-6);
  }

  /** Steps half as long move no hour of a freezing and thawing month by more than 0.03 K. */
  @Test
  void stepsAreShortEnough() {
    Material loam = Material.GARDEN_LOAM;
    SoilColumn whole = new SoilColumn(loam, depthM -> 2 + depthM);
    SoilColumn half = new SoilColumn(loam, SoilColumn.STEP_S / 2, depthM -> 2 + depthM);
    double worst = 0;
    for (int hour = 0; hour < 30 * 24; hour++) {
      double aboveC =
          -5 * Math.sin(Math.PI * hour / 360) - 6 * Math.cos(2 * Math.PI * (hour - 15) / 24);
      whole.pass(aboveC, 0.1, 3600);
      half.pass(aboveC, 0.1, 3600);
      worst = Math.max(worst, Math.abs(whole.at(0.10) - half.at(0.10)));
    }
    assertTrue(worst < 0.03, worst + " K");
  }

  @Test
  void aStepAtTheSurfaceSinksInLikeTheErrorFunction() {
    for (CSVRecord row : rows("semi_infinite", "T_x", 4)) {
      SoilColumn soil = new SoilColumn(dry(0.5e-6), depthM -> input(row, "Ti"));
      soil.pass(input(row, "Ts"), NEXT_TO_NOTHING, input(row, "t"));
      assertEquals(expected(row), soil.at(input(row, "x")), 0.03, row.toString());
    }
  }

  /** Incropera and DeWitt (from memory): how deep to lay a water main, printed as 0.68 m. */
  @Test
  void theWaterMainLiesAsDeepAsInTheTextbook() {
    CSVRecord row = row("semi_infinite", "textbook");
    Material soil = dry(input(row, "alpha"));
    SoilColumn column = new SoilColumn(soil, depthM -> input(row, "Ti"));
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
    PeriodicSoil law = new PeriodicSoil(12, 10, 35, 1.2 / 2.5e6 * DAY_S);
    assertFollows(law, new SoilColumn(z -> law.at(z, 0)), 0.1);
  }

  private static void assertFollows(PeriodicSoil law, SoilColumn soil, double withinK) {
    double worst = 0;
    for (int hour = 0; hour < 2 * 365 * 24; hour++) {
      soil.pass(law.at(0, (hour + 0.5) / 24), NEXT_TO_NOTHING, 3600);
      if (hour > 365 * 24) {
        double day = (hour + 1) / 24.0;
        for (double depthM : new double[] {0.1, 0.5, 1, 2}) {
          worst = Math.max(worst, Math.abs(law.at(depthM, day) - soil.at(depthM)));
        }
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
      soil.pass(aboveC, surfaceM2KPerW, SoilColumn.STEP_S);
      cameInJ += soil.enteringWPerM2() * SoilColumn.STEP_S;
      turnedOverJ += Math.abs(soil.enteringWPerM2()) * SoilColumn.STEP_S;
    }
    double held = soil.heatJPerM2() - startJ;
    assertEquals(held, cameInJ, 1e-9 * turnedOverJ, "seed " + seed);
  }

  /** Stefan's rule leaves out what soil holds beside its ice, so it is always too deep. */
  @Test
  void frostStaysShortOfStefansRuleButNotByMuch() {
    CSVRecord row = row("stefan", "freezing_index_100");
    Material material = new Material(1.5, 1.5, 2.5e6, 2e6, input(row, "Lv"));
    SoilColumn soil = new SoilColumn(material, depthM -> 1e-9);
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
    assertEquals(soil.at(7.5), soil.at(9));
  }

  private static void assertNear(double expected, double share, double found) {
    assertEquals(expected, found, share * expected);
  }

  private static Material dry(double diffusivityM2PerS) {
    return new Material(diffusivityM2PerS * 2e6, diffusivityM2PerS * 2e6, 2e6, 2e6, 0);
  }
}
