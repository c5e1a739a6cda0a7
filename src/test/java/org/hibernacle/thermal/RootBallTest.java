package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** The ball of edge and core: what must hold whatever the weather. */
class RootBallTest {
  /** 5 L, round, ceramic, 22 cm wide. */
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);

  private static final double WATT_PER_K = 2;

  /**
   * Conservation through a whole winter on an open bench: what flowed in, summed minute by minute
   * from the outside, is what the ball's heat changed by, to a thousandth of all that flowed.
   */
  @Test
  void aWintersHeatAddsUp() {
    Winter winter =
        SomeWinter.wholeYear(day -> SomeWinter.wave(day, 5, 11, 4 + day.getDayOfMonth() % 7));
    Place bench = SomePlace.of(PlaceKind.BENCH).open().place();
    double[] airC = PlaceAir.hours(bench, winter, SomeWinter.LATITUDE_DEG);
    double wattPerK = Exchange.of(POT, bench, false).airWPerK();
    InnerPath path = new InnerPath(0.005, POT.sideM2() + 2 * POT.footM2(), 0.27);
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 15);
    double first = ball.heatJ();
    double cameInJ = 0;
    double turnoverJ = 0;
    double mostIce = 0;
    for (double hourC : airC) {
      for (int minute = 0; minute < 60; minute++) {
        double outerWPerK = path.outerWPerK(wattPerK, ball.edgeIce());
        double edgeC = ball.edgeC();
        ball.pass(hourC, wattPerK, 60);
        double flowJ = 60 * outerWPerK * (hourC - (edgeC + ball.edgeC()) / 2);
        cameInJ += flowJ;
        turnoverJ += Math.abs(flowJ);
        mostIce = Math.max(mostIce, ball.coreIce());
      }
    }
    assertEquals(1, mostIce, "the winter freezes it through");
    assertEquals(ball.heatJ() - first, cameInJ, 1e-3 * turnoverJ);
    assertTrue(turnoverJ > 100 * Math.abs(cameInJ), "there is something to lose");
  }

  /** Hours and quarter hours of a ball are its minutes, whatever the plateau does meanwhile. */
  @Test
  void hoursAreSixtyMinutes() {
    long seed = 7_301;
    SplittableRandom random = new SplittableRandom(seed);
    RootBall hours = new RootBall(POT, RootBall.WATER_FRACTION, 15);
    RootBall minutes = new RootBall(POT, RootBall.WATER_FRACTION, 15);
    for (int hour = 0; hour < 200 * 24; hour++) {
      double aroundC = 6 * Math.sin(2 * Math.PI * hour / 24) + random.nextDouble(-8, 7);
      hours.hour(aroundC, WATT_PER_K);
      for (int minute = 0; minute < 60; minute++) {
        minutes.pass(aroundC, WATT_PER_K, 60);
      }
      String where = "seed " + seed + ", hour " + hour;
      assertEquals(minutes.edgeC(), hours.edgeC(), 0.4, where);
      assertEquals(minutes.coreC(), hours.coreC(), 0.4, where);
    }
  }

  /** With next to no way out, core and edge share what there is and none is lost. */
  @Test
  void coreAndEdgeEvenOutWithoutLoss() {
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 10);
    ball.step(-40, WATT_PER_K);
    assertTrue(ball.edgeC() < ball.coreC() - 1, ball.edgeC() + " " + ball.coreC());
    double heatJ = ball.heatJ();
    for (int step = 0; step < 96; step++) {
      ball.step(-40, 1e-9);
    }
    assertEquals(ball.coreC(), ball.edgeC(), 1e-3);
    assertEquals(heatJ, ball.heatJ(), 0.1);
  }

  /**
   * An explicit scheme in steps of a second, written out below, is the witness. What counts for a
   * plan is the lowest temperature of a night.
   */
  @Test
  void stepsOfAQuarterHourFollowStepsOfASecond() {
    long seed = 7_302;
    SplittableRandom random = new SplittableRandom(seed);
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 6);
    Fine fine = new Fine(6);
    double worstK = 0;
    double worstNightK = 0;
    for (int night = 0; night < 60; night++) {
      double lowestC = 99;
      double fineLowestC = 99;
      for (int hour = 0; hour < 24; hour++) {
        double day = night + hour / 24.0;
        double aroundC =
            6 * Math.sin(2 * Math.PI * day)
                + 6 * Math.sin(2 * Math.PI * day / 9.7)
                + random.nextDouble(-1, 1);
        for (int step = 0; step < 4; step++) {
          ball.step(aroundC, WATT_PER_K);
          fine.pass(aroundC, 900);
          worstK = Math.max(worstK, Math.abs(ball.edgeC() - fine.edgeC()));
          worstK = Math.max(worstK, Math.abs(ball.coreC() - fine.coreC()));
        }
        lowestC = Math.min(lowestC, ball.edgeC());
        fineLowestC = Math.min(fineLowestC, fine.edgeC());
      }
      worstNightK = Math.max(worstNightK, Math.abs(lowestC - fineLowestC));
    }
    assertTrue(worstNightK < 0.1, "seed " + seed + ": lowest of a night, K: " + worstNightK);
    assertTrue(worstK < 0.25, "seed " + seed + ": where a plateau ends, K: " + worstK);
  }

  @Test
  void whatFrozeStaysFrozenUntilHeatHasThawedIt() {
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 1);
    steps(ball, -10, 3 * 96);
    assertEquals(1, ball.coreIce());
    steps(ball, 0, 7 * 96);
    assertEquals(1, ball.coreIce(), 1e-9);
    assertEquals(1, ball.edgeIce(), 1e-9);
    double latentJ = 0.005 * RootBall.WATER_FRACTION * HeatStore.WATER_LATENT_J_PER_M3;
    int atLeast = (int) (latentJ / (WATT_PER_K * 5 * RootBall.STEP_S));
    steps(ball, 5, atLeast - 1);
    assertTrue(ball.coreIce() > 0, "thawed with less heat than its ice asks for");
    steps(ball, 5, 3 * atLeast);
    assertEquals(0, ball.coreIce());
    assertTrue(ball.edgeC() > 0);
  }

  /**
   * Hysteresis: a ball remembers by its ice. From any mixture of ice, at 0 °C all round nothing
   * changes; above it never freezes and below it never thaws; and no more melts than heat came in.
   */
  @Test
  void iceChangesOnlyWithHeat() {
    long seed = 7_304;
    SplittableRandom random = new SplittableRandom(seed);
    double latentJ = 0.005 * RootBall.WATER_FRACTION * HeatStore.WATER_LATENT_J_PER_M3;
    for (int run = 0; run < 200; run++) {
      RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 0.5);
      steps(ball, -6, random.nextInt(20, 300));
      double aroundC = run % 4 == 0 ? 0 : random.nextDouble(-9, 9);
      String where = "seed " + seed + ", run " + run;
      for (int hour = 0; hour < 12; hour++) {
        double ice = ice(ball);
        double edgeC = Math.min(0, ball.edgeC());
        ball.hour(aroundC, WATT_PER_K);
        double thawed = ice - ice(ball);
        if (aroundC == 0) {
          assertTrue(thawed <= 1e-9, where);
        } else {
          assertTrue(aroundC > 0 || thawed <= 1e-9, where);
          double mostJ = 3600 * WATT_PER_K * Math.max(0, aroundC - edgeC);
          assertTrue(thawed * latentJ <= mostJ, where);
        }
      }
    }
  }

  private static double ice(RootBall ball) {
    return RootBall.EDGE_SHARE * ball.edgeIce() + (1 - RootBall.EDGE_SHARE) * ball.coreIce();
  }

  /** 5 L, 22 cm wide and 13 cm deep, straight sides: what is left inside a shell of 1 to 2 cm. */
  @Test
  void theEdgeIsAShellOfOneToTwoCentimetres() {
    double insideOne = Math.pow(20 / 22.0, 2) * 11 / 13;
    double insideTwo = Math.pow(18 / 22.0, 2) * 9 / 13;
    double core = 1 - RootBall.EDGE_SHARE;
    assertTrue(core < insideOne && core > insideTwo, core + " of " + insideOne);
  }

  @Test
  void aWetterBallFreezesLater() {
    int before = 0;
    for (double water = 0.05; water < 0.65; water += 0.05) {
      RootBall ball = new RootBall(POT, water, 4);
      int steps = 0;
      while (ball.coreIce() < 1) {
        ball.step(-5, WATT_PER_K);
        steps++;
      }
      assertTrue(steps > before, "water " + water);
      before = steps;
    }
  }

  @Test
  void theEdgeFreezesBeforeTheCoreAndThawsBeforeIt() {
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, 2);
    while (ball.edgeIce() < 1) {
      ball.step(-8, WATT_PER_K);
      assertTrue(ball.edgeIce() >= ball.coreIce());
    }
    assertTrue(ball.coreIce() < 1);
    steps(ball, -8, 3 * 96);
    while (ball.edgeIce() > 0) {
      ball.step(8, WATT_PER_K);
      assertTrue(ball.edgeIce() <= ball.coreIce());
    }
    assertTrue(ball.coreIce() > 0);
  }

  /**
   * Core and ice exactly; the edge but for the quarter of an hour in which a core begins to freeze
   * and for the first time stands by its edge: then up to 0.4 K, in less than one step of a
   * thousand, in weather that jumps by 17 K from one quarter hour to the next.
   */
  @Test
  void colderSurroundingsNeverGiveAWarmerBall() {
    long seed = 7_303;
    SplittableRandom random = new SplittableRandom(seed);
    int crossed = 0;
    for (int run = 0; run < 40; run++) {
      RootBall warm = new RootBall(POT, RootBall.WATER_FRACTION, random.nextDouble(0.1, 10));
      RootBall cold = new RootBall(POT, RootBall.WATER_FRACTION, warm.edgeC());
      double perK = random.nextDouble(0.1, 8);
      for (int step = 0; step < 30 * 96; step++) {
        double aroundC = wildC(random, step);
        warm.step(aroundC, perK);
        cold.step(aroundC - Math.max(0, random.nextDouble(-2, 3)), perK);
        String where = "seed " + seed + ", run " + run + ", step " + step;
        assertTrue(cold.edgeC() <= warm.edgeC() + 0.4, where);
        assertTrue(cold.coreC() <= warm.coreC() + 0.01, where);
        assertTrue(cold.edgeIce() >= warm.edgeIce() - 1e-9, where);
        crossed += cold.edgeC() > warm.edgeC() + 1e-9 ? 1 : 0;
      }
    }
    assertTrue(crossed < 40 * 30 * 96 / 1000, "seed " + seed + ": " + crossed);
  }

  private static void steps(RootBall ball, double aroundC, int count) {
    for (int i = 0; i < count; i++) {
      ball.step(aroundC, WATT_PER_K);
    }
  }

  /** A daily wave around freezing with jumps from hour to hour, °C. */
  private static double wildC(SplittableRandom random, int step) {
    return 5 * Math.sin(2 * Math.PI * step / 96) + random.nextDouble(-9, 8);
  }

  /** The same two stores with the law in its plainest form: 5 L with the surface of the pot. */
  private static final class Fine {
    private static final double VOLUME_M3 = 0.005;
    private static final double SURFACE_M2 = 0.09 + 2 * 0.038;
    private static final double UNFROZEN_J_PER_M3K = 0.90e6 + 0.27 * 4.18e6;
    private static final double FROZEN_J_PER_M3K = 0.90e6 + 0.27 * 1.9e6;
    private static final double LATENT_J_PER_M3 = 0.27 * 334e6;
    private final double[] volumeM3 = {0.35 * VOLUME_M3, 0.65 * VOLUME_M3};
    private final double[] heatJ = new double[2];

    Fine(double startC) {
      for (int i = 0; i < 2; i++) {
        heatJ[i] = volumeM3[i] * UNFROZEN_J_PER_M3K * startC;
      }
    }

    void pass(double aroundC, int seconds) {
      for (int s = 0; s < seconds; s++) {
        double edgeIce = ice(0);
        double conductivity = 0.8 * (1 + edgeIce * (Math.pow(2.2 / 0.57, 0.27) - 1));
        double shellWPerK = conductivity * SURFACE_M2 * SURFACE_M2 / (2 * VOLUME_M3);
        double alike = edgeIce * ice(1) + (1 - edgeIce) * (1 - ice(1));
        double front = alike < 1 ? Math.min(0.5, -0.5 * Math.log(1 - alike)) : 0.5;
        double inward = (edgeC() - coreC()) * shellWPerK / (0.5 * Math.log(0.825 / 0.65) + front);
        double outerWPerK = 1 / (1 / WATT_PER_K - 0.5 * Math.log(0.825) / shellWPerK);
        heatJ[0] += outerWPerK * (aroundC - edgeC()) - inward;
        heatJ[1] += inward;
      }
    }

    private double ice(int store) {
      return Math.min(1, Math.max(0, -heatJ[store] / (LATENT_J_PER_M3 * volumeM3[store])));
    }

    double edgeC() {
      return temperatureC(0);
    }

    double coreC() {
      return temperatureC(1);
    }

    private double temperatureC(int store) {
      if (heatJ[store] > 0) {
        return heatJ[store] / (volumeM3[store] * UNFROZEN_J_PER_M3K);
      }
      double latentJ = volumeM3[store] * LATENT_J_PER_M3;
      return Math.min(0, (heatJ[store] + latentJ) / (volumeM3[store] * FROZEN_J_PER_M3K));
    }
  }
}
