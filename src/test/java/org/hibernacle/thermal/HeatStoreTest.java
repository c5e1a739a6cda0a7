package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.hibernacle.thermal.ThermalChecks.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * One heat store against closed forms: the groups {@code lumped}, {@code sinusoid} and {@code
 * timescale} of checks/thermal.csv.
 */
class HeatStoreTest {
  private static final double WATT_PER_K = 3;
  private static final double AROUND_C = -10;

  @Test
  void coolsWithItsTimeConstant() {
    HeatStore wet = fiveLitres(8);
    passes(wet, 4, expected(row("lumped", "tau_unfrozen")));
    assertEquals(4 + 4 / Math.E, wet.temperatureC(), 1e-6);
    HeatStore frozen = fiveLitres(-8);
    passes(frozen, -4, expected(row("lumped", "tau_frozen")));
    assertEquals(-4 - 4 / Math.E, frozen.temperatureC(), 1e-6);
  }

  @Test
  void reachesZeroAndLeavesThePlateauOnTime() {
    double toZeroS = expected(row("lumped", "time_to_0C"));
    double plateauS = expected(row("lumped", "plateau_duration"));
    assertTrue(after(toZeroS * (1 - 1e-6)).heatJ > 0);
    assertEquals(0, after(toZeroS * (1 - 1e-6)).ice());
    assertTrue(after(toZeroS * (1 + 1e-6)).ice() > 0);
    assertTrue(after((toZeroS + plateauS) * (1 - 1e-6)).ice() < 1);
    assertEquals(0, after((toZeroS + plateauS) * (1 - 1e-6)).temperatureC());
    assertTrue(after((toZeroS + plateauS) * (1 + 1e-6)).temperatureC() < 0);
  }

  @Test
  void standsAtTheTemperaturesOfTheClosedForm() {
    assertEquals(expected(row("lumped", "T_after_1800s")), after(1800).temperatureC(), 1e-6);
    assertEquals(expected(row("lumped", "T_after_3h")), after(3 * 3600).temperatureC());
    assertEquals(expected(row("lumped", "frozen_fraction_after_3h")), after(10800).ice(), 1e-6);
    assertEquals(expected(row("lumped", "T_after_8h")), after(8 * 3600).temperatureC(), 1e-6);
    assertEquals(expected(row("lumped", "T_after_10h")), after(36000).temperatureC(), 1e-6);
  }

  /** Incropera and DeWitt, example 5.1 (from memory): 5.2 s from 25 to 199 °C in gas of 200 °C. */
  @Test
  void aThermocoupleBeadAnswersAsInTheTextbook() {
    CSVRecord row = row("lumped", "textbook_thermocouple");
    double joulePerM2K = input(row, "rho") * input(row, "c") * input(row, "D") / 6;
    HeatStore bead = new HeatStore(joulePerM2K, joulePerM2K, 0, input(row, "Ti"));
    bead.heatJ = bead.advance(input(row, "Tinf"), input(row, "h"), expected(row));
    assertEquals(input(row, "T"), bead.temperatureC(), 1e-3);
    assertEquals(5.2, expected(row), 0.05);
  }

  @Test
  void plateausLastAsLongAsTheirLatentHeatSays() {
    for (CSVRecord row : rows("timescale", "plateau", 9)) {
      double latentJ = input(row, "V") * input(row, "latent");
      double wattPerK = input(row, "A") * input(row, "h");
      HeatStore store = new HeatStore(1, 1, latentJ, 1e-12);
      store.heatJ = 0;
      store.heatJ = store.advance(input(row, "air"), wattPerK, expected(row) * 3600 * (1 - 1e-6));
      assertEquals(1, store.ice(), 2e-6, row.toString());
      assertEquals(0, store.temperatureC(), row.toString());
    }
    for (CSVRecord row : rows("timescale", "tau", 3)) {
      double joulePerK = input(row, "V") * input(row, "C");
      HeatStore store = new HeatStore(joulePerK, joulePerK, 0, 10);
      double wattPerK = input(row, "A") * input(row, "h");
      store.heatJ = store.advance(5, wattPerK, expected(row) * 3600);
      assertEquals(5 + 5 / Math.E, store.temperatureC(), 1e-5, row.toString());
    }
  }

  /** Gain and lag in a daily wave, stepped in minutes with the wave's value in the middle. */
  @Test
  void followsADailyWaveWithTheGainAndLagOfItsTimeConstant() {
    for (CSVRecord row : rows("sinusoid", "gain", 5)) {
      double tauH = input(row, "tau");
      double omega = 2 * Math.PI / 24;
      HeatStore store = new HeatStore(tauH * 3600, tauH * 3600, 1, 20);
      double cosine = 0;
      double sine = 0;
      int minutes = 12 * 1440;
      for (int m = 0; m < minutes; m++) {
        double aroundC = 20 + 5 * Math.sin(omega * (m + 0.5) / 60);
        store.heatJ = store.advance(aroundC, 1, 60);
        if (m >= minutes - 1440) {
          cosine += store.temperatureC() * Math.cos(omega * (m + 1) / 60) / 720;
          sine += store.temperatureC() * Math.sin(omega * (m + 1) / 60) / 720;
        }
      }
      assertEquals(expected(row), Math.hypot(cosine, sine) / 5, 0.01 * expected(row));
      String tau = row.get("case").substring("gain".length());
      double lagH = Math.atan2(-cosine, sine) / omega;
      assertEquals(expected(row("sinusoid", "lag" + tau)), lagH, 0.02, row.toString());
    }
  }

  /** The closed form knows no step: a piece of time is the same in one or in many parts. */
  @Test
  void splittingTheTimeChangesNothing() {
    long seed = 20_201;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      double aroundC = random.nextDouble(-15, 15);
      double seconds = random.nextDouble(1, 20 * 3600);
      HeatStore whole = fiveLitres(random.nextDouble(0.1, 5));
      whole.heatJ -= random.nextDouble(0, 1.2) * whole.latentJ;
      HeatStore parts = fiveLitres(1);
      parts.heatJ = whole.heatJ;
      passes(whole, aroundC, seconds);
      for (int part = 0; part < 3; part++) {
        passes(parts, aroundC, seconds / 3);
      }
      assertEquals(whole.heatJ, parts.heatJ, 1e-3, "seed " + seed + ", case " + i);
    }
  }

  private static HeatStore after(double seconds) {
    HeatStore store = fiveLitres(8);
    passes(store, AROUND_C, seconds);
    return store;
  }

  private static void passes(HeatStore store, double aroundC, double seconds) {
    store.heatJ = store.advance(aroundC, WATT_PER_K, seconds);
  }

  /** V 0.005 m3, 2.5 MJ/m3K unfrozen, 1.7 frozen, 133.6 MJ/m3 latent: the store of the rows. */
  private static HeatStore fiveLitres(double startC) {
    return new HeatStore(0.005 * 2.5e6, 0.005 * 1.7e6, 0.005 * 133.6e6, startC);
  }
}
