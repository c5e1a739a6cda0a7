package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.SomePlace;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** Coefficients of checks/thermal.csv, and what covers must do to them. */
class ExchangeTest {
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);
  private static final Place BENCH = SomePlace.of(PlaceKind.BENCH).open().place();

  /** McAdams 1954, at the winds we take for a roof, a sheltered and an open bench. */
  @Test
  void surfacesExchangeAsMcAdamsMeasured() {
    Place shed = SomePlace.of(PlaceKind.COLD_STORE).open().place();
    Place sheltered = SomePlace.of(PlaceKind.BENCH).place();
    assertSurface("h_mcadams_v0", 0, shed);
    assertSurface("h_mcadams_v1", 1, sheltered);
    assertSurface("h_mcadams_v2", 2, BENCH);
    Place ground = SomePlace.of(PlaceKind.GROUND).open().place();
    assertTrue(Exchange.windMPerS(ground) < Exchange.windMPerS(BENCH));
    Place hedged = SomePlace.of(PlaceKind.GROUND).place();
    assertTrue(Exchange.windMPerS(hedged) < Exchange.windMPerS(ground));
  }

  private static void assertSurface(String name, double windMPerS, Place place) {
    CSVRecord row = row("coefficient", name);
    assertEquals(windMPerS, input(row, "v"));
    assertEquals(windMPerS, Exchange.windMPerS(place));
    assertEquals(expected(row), Exchange.surfaceWPerM2K(place), 1e-9);
  }

  /** Incropera and DeWitt (from memory): a disk on a half space passes 2 D k. */
  @Test
  void theFloorConductsAsADiskOnTheGround() {
    CSVRecord row = row("ground", "disk_shape_factor");
    double diameterM = input(row, "D");
    ThermalClass pot =
        new ThermalClass(10, 0.2, Math.PI / 4 * diameterM * diameterM, Material.PLASTIC);
    for (PlaceKind kind : PlaceKind.values()) {
      Exchange exchange = Exchange.of(pot, SomePlace.of(kind).place(), false);
      double perConductivity = expected(row) / input(row, "k");
      double groundWPerMK = kind == PlaceKind.BENCH ? 0 : 1.2;
      assertEquals(perConductivity * groundWPerMK, exchange.baseWPerK(), 1e-9, kind.name());
    }
  }

  /** Side through its wall, top bare, floor like the side: sums of areas over resistances. */
  @Test
  void aPotOnABenchLosesHeatOnAllSides() {
    double outer = 1 / 13.3;
    double byHand = (0.09 + 0.038) / (outer + 0.010) + 0.038 / outer;
    assertEquals(byHand, Exchange.of(POT, BENCH, true).airWPerK(), 1e-9);
    assertEquals(0, Exchange.of(POT, BENCH, true).baseWPerK());
  }

  @Test
  void deeperMulchCouplesLessAndDelaysMore() {
    Place bare = SomePlace.of(PlaceKind.GROUND).place();
    double before = Exchange.of(POT, bare, true).airWPerK();
    double lagBefore = Exchange.mulchLagHours(bare);
    assertEquals(0, lagBefore);
    for (double depthCm = 1; depthCm <= 60; depthCm++) {
      Place bed = SomePlace.of(PlaceKind.GROUND).mulch(depthCm).place();
      double airWPerK = Exchange.of(POT, bed, true).airWPerK();
      assertTrue(airWPerK < before, depthCm + " cm");
      assertTrue(Exchange.mulchLagHours(bed) > lagBefore, depthCm + " cm");
      before = airWPerK;
      lagBefore = Exchange.mulchLagHours(bed);
    }
    Place bed = SomePlace.of(PlaceKind.GROUND).mulch(25).place();
    assertEquals(0.25 * 0.25 / 6e-7 / 3600, Exchange.mulchLagHours(bed), 1e-9);
  }

  /** Limit of a thin layer: a flat wall, resistances d / k in series. */
  @Test
  void aThinMulchIsAFlatLayer() {
    double depthM = 1e-4;
    Place bed = SomePlace.of(PlaceKind.GROUND).mulch(100 * depthM).place();
    double outer = 1 / Exchange.surfaceWPerM2K(bed);
    double layer = depthM / Exchange.MULCH_W_PER_MK;
    double flat = 0.09 / (outer + 0.010 + layer) + 0.038 / (outer + layer);
    assertEquals(flat, Exchange.of(POT, bed, true).airWPerK(), 1e-5);
  }

  /**
   * Van Donk and Tollner 2000 measured 0.1 to 0.6 W/mK for mulches, still to windy: dry and wet lie
   * within. Wet lets more cold in, so it is what plans count on.
   */
  @Test
  void mulchIsPlannedWet() {
    assertTrue(0.1 < Exchange.DRY_MULCH_W_PER_MK && Exchange.MULCH_W_PER_MK < 0.6);
    for (double depthCm : new double[] {2, 5, 10, 25, 50}) {
      Place bed = SomePlace.of(PlaceKind.GROUND).mulch(depthCm).place();
      Exchange planned = Exchange.of(POT, bed, true);
      Exchange dry = Exchange.of(POT, bed, true, 0, Exchange.DRY_MULCH_W_PER_MK);
      assertTrue(dry.airWPerK() < planned.airWPerK(), depthCm + " cm");
    }
  }

  /** On a pot that is all top, mulch of 4 cm and of 6 cm insulates like one of 10 cm. */
  @Test
  void layersOnTopAdd() {
    ThermalClass flat = new ThermalClass(5, 1e-9, 0.038, Material.CERAMIC);
    double outer = resistance(flat, 0);
    double both = resistance(flat, 4) + resistance(flat, 6) - outer;
    assertEquals(both, resistance(flat, 10), 1e-6);
    assertEquals(0.10 / Exchange.MULCH_W_PER_MK, resistance(flat, 10) - outer, 1e-6);
  }

  private static double resistance(ThermalClass pot, double mulchCm) {
    Place bed = SomePlace.of(PlaceKind.GROUND).mulch(mulchCm).place();
    return pot.footM2() / Exchange.of(pot, bed, true).airWPerK();
  }

  /** 25 cm round the side as a hollow cylinder, and the 10 cm that stay on top. */
  @Test
  void aDeepMulchIsACylinderWithALid() {
    Place bed = SomePlace.of(PlaceKind.GROUND).mulch(25).place();
    double outer = 1 / Exchange.surfaceWPerM2K(bed);
    double radiusM = Math.sqrt(0.038 / Math.PI);
    double heightM = 0.09 / (2 * Math.PI * radiusM);
    double cylinder = Math.log((radiusM + 0.25) / radiusM) / (2 * Math.PI * heightM * 0.3);
    double side = 1 / ((outer + 0.010) / 0.09 + cylinder);
    double top = 0.038 / (outer + 0.10 / 0.3);
    assertEquals(side + top, Exchange.of(POT, bed, true).airWPerK(), 1e-9);
  }

  @Test
  void coversCountOnlyWhileTheyLie() {
    Place plain = SomePlace.of(PlaceKind.GROUND).place();
    for (Place place :
        new Place[] {
          SomePlace.of(PlaceKind.GROUND).mulch(20).place(),
          SomePlace.of(PlaceKind.GROUND).fleece().place()
        }) {
      assertEquals(Exchange.of(POT, plain, true), Exchange.of(POT, place, false));
      assertTrue(
          Exchange.of(POT, place, true).airWPerK() < Exchange.of(POT, plain, true).airWPerK());
    }
  }

  /**
   * A night in fleece is worth 1 to 2 K to a ball that is not frozen: common practice. In the mean
   * over how warm the ball is in the evening; over soil it gains less, since it rests at 0 °C with
   * and without.
   */
  @Test
  void fleeceGainsAKelvinOrTwoInOneNight() {
    double[] eveningsC = {0.5, 1, 2, 3, 4, 5};
    assertGains(0.7, 2, SomePlace.of(PlaceKind.BENCH), eveningsC);
    assertGains(0.7, 2, SomePlace.of(PlaceKind.BENCH).open(), eveningsC);
    assertGains(0.1, 2, SomePlace.of(PlaceKind.GROUND), eveningsC);
    assertGains(0.1, 2, SomePlace.of(PlaceKind.GROUND).open(), eveningsC);
  }

  /** Nothing below a bench warms what is already frozen: fleece then only delays. */
  @Test
  void fleeceDoesNextToNothingForAFrozenBallOnABench() {
    assertGains(0, 0.3, SomePlace.of(PlaceKind.BENCH).open(), -1);
  }

  private static void assertGains(double leastK, double mostK, SomePlace place, double... startsC) {
    double bareC = meanLowestC(place.place(), startsC);
    double gainK = meanLowestC(place.fleece().place(), startsC) - bareC;
    assertTrue(gainK > leastK && gainK < mostK, place.place().kind() + " " + gainK + " K");
  }

  private static double meanLowestC(Place place, double... startsC) {
    return Arrays.stream(startsC)
        .map(startC -> lowestOfOneNightC(place, startC))
        .average()
        .orElseThrow();
  }

  /** Sixteen hours that fall from -2 to -8 °C, over soil at +1 °C. */
  private static double lowestOfOneNightC(Place place, double startC) {
    Exchange exchange = Exchange.of(POT, place, true);
    double wattPerK = exchange.airWPerK() + exchange.baseWPerK();
    RootBall ball = new RootBall(POT, RootBall.WATER_FRACTION, startC);
    double lowestC = 0;
    for (int hour = 0; hour < 16; hour++) {
      double airC = -5 + 3 * Math.cos(2 * Math.PI * (hour - 2) / 24);
      double aroundC = (exchange.airWPerK() * airC + exchange.baseWPerK() * 1) / wattPerK;
      for (int step = 0; step < 4; step++) {
        ball.step(aroundC, wattPerK);
      }
      lowestC = Math.min(lowestC, ball.edgeC());
    }
    return lowestC;
  }
}
