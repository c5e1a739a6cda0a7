package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.hibernacle.model.Container.Material;
import org.hibernacle.thermal.ShelledBall.Medium;
import org.hibernacle.thermal.ShelledBall.Shape;
import org.junit.jupiter.api.Test;

/**
 * How far the ball of edge and core is from one cut into twenty shells. Like is compared with like:
 * heat leaves through the side only, the same substrate, wall and surface coefficient.
 */
class ShelledBallTest {
  private static final double ICE_GAIN = Math.pow(2.2 / 0.57, 0.27);
  private static final Medium GRIT =
      new Medium(0.90e6 + 0.27 * 4.18e6, 0.90e6 + 0.27 * 1.9e6, 0.27 * 334e6, 0.8, 0.8 * ICE_GAIN);

  private static final int SHELLS = 20;

  /** Pots: volume in L, radius in m. */
  private static final double[][] POTS = {{0.5, 0.045}, {5, 0.11}, {30, 0.18}, {60, 0.22}};

  private static final Material[] MATERIALS = {
    Material.CERAMIC, Material.PLASTIC, Material.CONCRETE, Material.WOOD
  };

  /** Weather by hour: a week of -9 ± 5 °C, a step to -10, a thaw, and forty days round zero. */
  private enum Weather {
    SINE(240, 0.5, hour -> -9 + 5 * Math.cos(2 * Math.PI * (hour - 3) / 24)),
    STEP(240, 4, hour -> -10),
    THAW(288, 4, hour -> hour < 120 ? -8 : 5 + 4 * Math.cos(2 * Math.PI * (hour - 15) / 24)),
    WAVES(
        960,
        4,
        hour ->
            -1
                + 6 * Math.sin(2 * Math.PI * hour / 24)
                + 6 * Math.sin(2 * Math.PI * hour / (24 * 9.7)));

    private final int hours;
    private final double startC;
    private final IntToDoubleFunction airC;

    Weather(int hours, double startC, IntToDoubleFunction airC) {
      this.hours = hours;
      this.startC = startC;
      this.airC = airC;
    }
  }

  /** The witness itself: Neumann's front in a half space, from checks/thermal.csv, within 1 %. */
  @Test
  void theManyShellsFreezeAsNeumannSays() {
    Medium soil = new Medium(2.8e6, 1.9e6, 100e6, 1.2, 1.7);
    ShelledBall plate = new ShelledBall(Shape.PLATE, 100, 1.5, 1, soil, 1e6, 4);
    for (int day = 1; day <= 10; day++) {
      plate.pass(-5, 86400);
      if (day == 1) {
        double front = expected(row("neumann", "two_phase_front_1d"));
        assertEquals(front, plate.frozenDepthM(), 0.02 * front);
      }
    }
    double front = expected(row("neumann", "two_phase_front_10d"));
    assertEquals(front, plate.frozenDepthM(), 0.01 * front);
  }

  /** What docs/models/root-ball.md promises of each pot, over four walls and four weathers. */
  @Test
  void theEdgeFollowsABallOfManyShells() {
    double[] edgeRmsK = {0.15, 0.25, 0.4, 0.5};
    double[] nightRmsK = {0.15, 0.25, 0.45, 0.6};
    double[] coreRmsK = {0.2, 0.5, 0.75, 0.9};
    for (int i = 0; i < POTS.length; i++) {
      Deviation ofPot = new Deviation();
      for (Material material : MATERIALS) {
        for (Weather weather : Weather.values()) {
          ofPot.add(compare(Shape.CYLINDER, POTS[i], material, weather));
        }
      }
      String found = POTS[i][0] + " L: " + ofPot;
      assertTrue(ofPot.edgeRmsK() < edgeRmsK[i], found);
      assertTrue(ofPot.nightRmsK() < nightRmsK[i], found);
      assertTrue(ofPot.coreRmsK() < coreRmsK[i], found);
      assertTrue(Math.abs(ofPot.edgeMeanK()) < 0.05, found);
      assertTrue(ofPot.edgeWorstK < 2.8, found);
      assertTrue(ofPot.restShare() > 0.75 && ofPot.restShare() < 1.05, found);
    }
  }

  /** Plates and spheres are the ends of what pots can be; a shallow tray lies near the plate. */
  @Test
  void otherShapesAreNotFarOff() {
    for (Shape shape : new Shape[] {Shape.PLATE, Shape.SPHERE}) {
      Deviation all = new Deviation();
      for (double[] pot : POTS) {
        for (Weather weather : Weather.values()) {
          all.add(compare(shape, pot, Material.CERAMIC, weather));
        }
      }
      assertTrue(all.edgeRmsK() < 0.6, shape + ": " + all);
      assertTrue(Math.abs(all.edgeMeanK()) < 0.05, shape + ": " + all);
    }
  }

  private static Deviation compare(Shape shape, double[] pot, Material material, Weather weather) {
    double volumeM3 = pot[0] / 1000;
    double surfaceM2 = 2 * volumeM3 / pot[1];
    ThermalClass size = new ThermalClass(pot[0], surfaceM2, 0, material);
    double wallWPerM2K = 1 / (1 / 13.3 + size.wallM2KPerW());
    ShelledBall many =
        new ShelledBall(shape, SHELLS, volumeM3, surfaceM2, GRIT, wallWPerM2K, weather.startC);
    RootBall two = new RootBall(size, RootBall.WATER_FRACTION, weather.startC);
    Deviation deviation = new Deviation();
    for (int hour = 0; hour < weather.hours; hour++) {
      double airC = weather.airC.applyAsDouble(hour);
      many.pass(airC, 3600);
      two.hour(airC, surfaceM2 * wallWPerM2K);
      deviation.hour(two, many);
    }
    return deviation;
  }

  /** Sums over hours and nights of two stores minus many shells. */
  private static final class Deviation {
    private int hours;
    private int nights;
    private double edgeSquares;
    private double edgeSum;
    private double edgeWorstK;
    private double coreSquares;
    private double nightSquares;
    private double nightWorstK;
    private double twoRestHours;
    private double manyRestHours;
    private double twoLowestC = 99;
    private double manyLowestC = 99;

    void hour(RootBall two, ShelledBall many) {
      double edgeK = two.edgeC() - many.edgeC();
      edgeSquares += edgeK * edgeK;
      edgeSum += edgeK;
      edgeWorstK = Math.max(edgeWorstK, Math.abs(edgeK));
      coreSquares += Math.pow(two.coreC() - many.coreC(), 2);
      twoRestHours += two.coreIce() > 0.001 && two.coreIce() < 0.999 ? 1 : 0;
      manyRestHours += many.coreIce() > 0.001 && many.coreIce() < 0.999 ? 1 : 0;
      twoLowestC = Math.min(twoLowestC, two.edgeC());
      manyLowestC = Math.min(manyLowestC, many.edgeC());
      hours++;
      if (hours % 24 == 0) {
        double nightK = twoLowestC - manyLowestC;
        nightSquares += nightK * nightK;
        nightWorstK = Math.max(nightWorstK, Math.abs(nightK));
        nights++;
        twoLowestC = 99;
        manyLowestC = 99;
      }
    }

    void add(Deviation other) {
      hours += other.hours;
      nights += other.nights;
      edgeSquares += other.edgeSquares;
      edgeSum += other.edgeSum;
      edgeWorstK = Math.max(edgeWorstK, other.edgeWorstK);
      coreSquares += other.coreSquares;
      nightSquares += other.nightSquares;
      nightWorstK = Math.max(nightWorstK, other.nightWorstK);
      twoRestHours += other.twoRestHours;
      manyRestHours += other.manyRestHours;
    }

    double edgeRmsK() {
      return Math.sqrt(edgeSquares / hours);
    }

    double edgeMeanK() {
      return edgeSum / hours;
    }

    double coreRmsK() {
      return Math.sqrt(coreSquares / hours);
    }

    double nightRmsK() {
      return Math.sqrt(nightSquares / nights);
    }

    double restShare() {
      return twoRestHours / manyRestHours;
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "edge rms %.2f mean %+.2f worst %.2f, night rms %.2f worst %.2f, core rms %.2f K,"
              + " core's plateau %.2f of %.0f h",
          edgeRmsK(),
          edgeMeanK(),
          edgeWorstK,
          nightRmsK(),
          nightWorstK,
          coreRmsK(),
          restShare(),
          manyRestHours);
    }
  }
}
