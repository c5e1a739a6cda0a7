package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hibernacle.SomePlace;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/**
 * Resistances in series and areas side by side, worked out apart from the code: a wall of 0.09 m2
 * and 0.010 m2K/W, a floor of 0.038 m2.
 */
class ExchangeByHandTest {
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);
  private static final double WALL = 0.010;

  /** A sheltered spot on the ground, 0.3 m/s: 5.7 + 3.8 x 0.3. */
  private static final double OUTER = 1 / 6.84;

  /** Settled snow of 300 kg/m3 by Sturm and others 1997. */
  private static final double SNOW_W_PER_MK = 0.138 - 1.01 * 0.3 + 3.233 * 0.09;

  private static final double HEIGHT_M = 0.09 / (2 * Math.sqrt(Math.PI * 0.038));

  @Test
  void theSkyDrawsTheWholeTopAndHalfTheWall() {
    double wall = 0.09 / (OUTER + WALL);
    double top = 0.038 / OUTER;
    Exchange ground = Exchange.of(POT, SomePlace.of(PlaceKind.GROUND).place(), false);
    assertEquals(wall + top, ground.airWPerK(), 1e-9);
    assertEquals(top + wall / 2, ground.skyWPerK(), 1e-9);
    double benchOuter = 1 / 13.3;
    Exchange bench = Exchange.of(POT, SomePlace.of(PlaceKind.BENCH).open().place(), false);
    assertEquals(0.038 / benchOuter + 0.045 / (benchOuter + WALL), bench.skyWPerK(), 1e-9, "bench");
  }

  /** Over crown and wall; it does not reach below the pot. */
  @Test
  void fleeceLiesInSeriesWithTheAir() {
    double outer = 1 / 13.3 + 0.06;
    Exchange bench = Exchange.of(POT, SomePlace.of(PlaceKind.BENCH).open().fleece().place(), true);
    double below = 0.038 / (1 / 13.3 + WALL);
    assertEquals(0.09 / (outer + WALL) + 0.038 / outer + below, bench.airWPerK(), 1e-9);
    assertEquals(0.038 / outer + 0.045 / (outer + WALL), bench.skyWPerK(), 1e-9);
  }

  /**
   * 5 cm: the buried part of the wall lies 2.5 cm deep on average, the rest and the top are bare.
   */
  @Test
  void snowBelowTheRimBuriesPartOfTheWall() {
    double buried = 0.09 * 0.05 / HEIGHT_M;
    double open = (0.09 - buried) / (OUTER + WALL);
    double inSnow = buried / (OUTER + WALL + 0.025 / SNOW_W_PER_MK);
    Exchange pot = Exchange.of(POT, SomePlace.of(PlaceKind.GROUND).place(), false, 0.05);
    assertEquals(open + inSnow + 0.038 / OUTER, pot.airWPerK(), 1e-9);
    assertEquals(0.038 / OUTER + open / 2, pot.skyWPerK(), 1e-9);
  }

  /** 20 cm on a pot of 13: the wall lies 20 less half of 13 cm deep, the top 7 cm. */
  @Test
  void snowAboveTheRimBuriesTheTop() {
    double inSnow = 0.09 / (OUTER + WALL + (0.20 - HEIGHT_M / 2) / SNOW_W_PER_MK);
    double top = 0.038 / (OUTER + (0.20 - HEIGHT_M) / SNOW_W_PER_MK);
    Exchange pot = Exchange.of(POT, SomePlace.of(PlaceKind.GROUND).place(), false, 0.20);
    assertEquals(inSnow + top, pot.airWPerK(), 1e-9);
    assertEquals(top, pot.skyWPerK(), 1e-9);
  }

  @Test
  void snowOnMulchAddsToItsLidAndTheSkyIsOut() {
    Exchange bare = Exchange.of(POT, SomePlace.of(PlaceKind.GROUND).mulch(25).place(), true);
    Exchange pot = Exchange.of(POT, SomePlace.of(PlaceKind.GROUND).mulch(25).place(), true, 0.20);
    double lid = 0.10 / 0.3;
    double loss = 0.038 / (OUTER + lid) - 0.038 / (OUTER + lid + 0.20 / SNOW_W_PER_MK);
    assertEquals(bare.airWPerK() - loss, pot.airWPerK(), 1e-9);
    assertEquals(0, pot.skyWPerK());
    assertEquals(2 * 2 * Math.sqrt(0.038 / Math.PI) * 1.2, pot.baseWPerK(), 1e-9);
  }

  /** Our own round figures of docs/models. */
  @Test
  void windIsThatOfTheTable() {
    assertEquals(1.2, Exchange.windMPerS(SomePlace.of(PlaceKind.GROUND).open().place()));
    assertEquals(0.3, Exchange.windMPerS(SomePlace.of(PlaceKind.GROUND).place()));
    assertEquals(0, Exchange.windMPerS(SomePlace.of(PlaceKind.GLASSHOUSE).open().place()));
  }
}
