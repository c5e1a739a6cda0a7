package org.hibernacle.thermal;

import static org.hibernacle.SomeWinter.LATITUDE_DEG;
import static org.hibernacle.SomeWinter.SEASON;
import static org.hibernacle.SomeWinter.steady;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.HourlyAir;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;

/**
 * In air that never changes a ball must end at the mean of what surrounds it, weighted by how well
 * each conducts.
 */
class SteadyWinterTest {
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);
  private static final LocalDate FIRST = LocalDate.of(2020, 10, 1);
  private static final LocalDate STEP = LocalDate.of(2020, 12, 1);

  @Test
  void underARoofABallEndsBetweenAirAndSlab() {
    Place store = SomePlace.of(PlaceKind.COLD_STORE).warmerBy(0).lag(1).place();
    for (double airC : new double[] {-8, 6}) {
      Winter winter = SomeWinter.from(FIRST, day -> steady(airC));
      Simulator simulator = new Simulator(winter, List.of(store), LATITUDE_DEG);
      BallTrace trace = simulator.simulate(POT, new int[winter.nights()]);
      Exchange exchange = Exchange.of(POT, store, false);
      double slabC = (airC + 27.5 - 0.38 * LATITUDE_DEG) / 2;
      double wattPerK = exchange.airWPerK() + exchange.baseWPerK();
      double ends = (exchange.airWPerK() * airC + exchange.baseWPerK() * slabC) / wattPerK;
      int last = winter.nights() - 1;
      assertEquals(ends, trace.ballMinC()[last], 1e-6);
      assertEquals(ends, trace.ballMeanC()[last], 1e-6);
      assertEquals(airC, trace.airMinC()[last], 1e-9);
      assertEquals(airC, trace.airMeanC()[last], 1e-9);
      assertEquals(ends < 0 ? 1 : 0, trace.edgeIceMax()[last]);
      assertEquals(ends < 0 ? 1 : 0, trace.coreIceMin()[last]);
    }
  }

  /** While it freezes there is more ice at the wall than in the core, and less than all. */
  @Test
  void theEdgeFreezesBeforeTheCore() {
    Winter winter = SomeWinter.from(FIRST, day -> steady(day.isBefore(STEP) ? 5 : -4));
    Place bench = SomePlace.of(PlaceKind.BENCH).place();
    BallTrace trace =
        new Simulator(winter, List.of(bench), LATITUDE_DEG).simulate(POT, new int[winter.nights()]);
    int night = winter.index(STEP) - 1;
    assertTrue(trace.edgeIceMax()[night] > 0.2, trace.edgeIceMax()[night] + "");
    assertEquals(0, trace.coreIceMin()[night], "at noon the core was unfrozen");
    assertEquals(1, trace.coreIceMin()[night + 10]);
  }

  /** Mulch delays: a step of the air arrives as {@code 1 - exp(-t / lag)}. */
  @Test
  void mulchDelaysAStepByItsLag() {
    Winter winter = SomeWinter.from(FIRST, day -> steady(day.isBefore(STEP) ? 6 : -6));
    Place bed = SomePlace.of(PlaceKind.COLD_STORE).warmerBy(0).lag(0).mulch(25).place();
    PlaceClimate climate = new Simulator(winter, List.of(bed), LATITUDE_DEG).climate(0);
    int step = 24 * winter.index(STEP);
    double lagHours = 0.25 * 0.25 / (2 * 3e-7) / 3600;
    double beforeC = climate.wrapC()[step];
    for (int h = 1; h < 60; h++) {
      double expected = -6 + (beforeC + 6) * Math.exp(-h / lagHours);
      assertEquals(expected, climate.wrapC()[step + h], 1e-9, "hour " + h);
    }
    assertTrue(beforeC > 4);
  }

  /** Fleece lies from 1 November: before, a ball under it fares like a bare one. */
  @Test
  void coversWorkOnlyWhileTheyLie() {
    Winter winter = SomeWinter.from(FIRST, day -> SomeWinter.wave(day, 12, 5, 10));
    Place bare = SomePlace.of(PlaceKind.BENCH).place();
    Place fleeced = SomePlace.of(PlaceKind.BENCH).fleece().place();
    Simulator simulator = new Simulator(winter, List.of(bare, fleeced), LATITUDE_DEG);
    int[] path = new int[winter.nights()];
    BallTrace without = simulator.simulate(POT, path);
    Arrays.fill(path, 1);
    BallTrace with = simulator.simulate(POT, path);
    int november = winter.index(LocalDate.of(2020, 11, 1));
    for (int n = 0; n < november; n++) {
      assertEquals(without.ballMinC()[n], with.ballMinC()[n], "night " + n);
    }
    assertTrue(with.ballMinC()[november + 2] > without.ballMinC()[november + 2]);
  }

  /** With snow on file a pot on the ground is kept by it, one on a bench is not. */
  @Test
  void snowKeepsPotsOnTheGroundOnly() {
    for (PlaceKind kind : List.of(PlaceKind.GROUND, PlaceKind.BENCH)) {
      Place place = SomePlace.of(kind).open().place();
      double bareC = coldest(place, 0);
      double snowyC = coldest(place, 30);
      if (kind == PlaceKind.GROUND) {
        assertTrue(snowyC > bareC + 2, snowyC + " and " + bareC);
      } else {
        assertEquals(bareC, snowyC, 1e-9);
      }
    }
  }

  private static double coldest(Place place, double snowCm) {
    Winter winter = snowyWinter(snowCm);
    BallTrace trace =
        new Simulator(winter, List.of(place), LATITUDE_DEG).simulate(POT, new int[winter.nights()]);
    return trace.ballMinC()[winter.index(STEP) + 14];
  }

  /** 10 cm of snow round a pot of 13: its top stays open, and the ball settles accordingly. */
  @Test
  void aHalfBuriedBallEndsBetweenAirAndSoil() {
    Place ground = SomePlace.of(PlaceKind.GROUND).place();
    Winter winter = snowyWinter(10);
    Simulator simulator = new Simulator(winter, List.of(ground), LATITUDE_DEG);
    BallTrace trace = simulator.simulate(POT, new int[winter.nights()]);
    int night = winter.index(STEP) + 40;
    int noon = 24 * night + 24;
    Exchange pot = Exchange.of(POT, ground, true, 0.10);
    PlaceClimate climate = simulator.climate(0);
    double ends =
        (pot.airWPerK() * -10 + pot.baseWPerK() * climate.baseC()[noon])
            / (pot.airWPerK() + pot.baseWPerK());
    assertEquals(ends, trace.ballMeanC()[night], 0.1);
    Exchange bare = Exchange.of(POT, ground, true);
    double bareEnds =
        (bare.airWPerK() * -10 + bare.baseWPerK() * climate.baseC()[noon])
            / (bare.airWPerK() + bare.baseWPerK());
    assertTrue(bareEnds < ends - 0.3, "snow on the wall counts: " + bareEnds + " and " + ends);
  }

  private static Winter snowyWinter(double snowCm) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    TreeMap<LocalDate, Double> snow = new TreeMap<>();
    FIRST
        .datesUntil(SEASON.endExclusive())
        .forEach(
            day -> {
              days.put(day, steady(day.isBefore(STEP) ? 5 : -10));
              snow.put(day, day.isBefore(STEP) ? 0 : snowCm);
            });
    TemperatureSeries series = new TemperatureSeries("invented", days, new TreeMap<>(), snow);
    return Winter.of(SEASON, new HourlyAir(series, LATITUDE_DEG), 0);
  }

  /** A year counts as whole from 350 days on; else the rule of latitude, alike on both sides. */
  @Test
  void theYearIsWholeFromThreeHundredAndFiftyDays() {
    Winter whole = SomeWinter.from(SEASON.endExclusive().minusDays(350), day -> steady(3));
    Winter shorter = SomeWinter.from(SEASON.endExclusive().minusDays(349), day -> steady(3));
    assertTrue(PlaceBase.hasWholeYear(whole));
    assertFalse(PlaceBase.hasWholeYear(shorter));
    assertEquals(3, PlaceBase.yearMeanC(whole, 50), 1e-9);
    assertEquals(27.5 - 0.38 * 50, PlaceBase.yearMeanC(shorter, 50), 1e-9);
    assertEquals(27.5 - 0.38 * 50, PlaceBase.yearMeanC(shorter, -50), 1e-9);
  }

  @Test
  void coversResistByKind() {
    assertEquals(0.06, PlaceBase.coverM2KPerW(SomePlace.of(PlaceKind.GROUND).fleece().place()));
    assertEquals(0, PlaceBase.coverM2KPerW(SomePlace.of(PlaceKind.GROUND).place()));
  }
}
