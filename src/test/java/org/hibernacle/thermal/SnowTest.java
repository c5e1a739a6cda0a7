package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.hibernacle.thermal.ThermalChecks.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
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

/** Snow as Sturm and others measured it, and what it does to soil and pots. */
class SnowTest {
  private static final LocalDate FALLS = LocalDate.of(2021, 1, 1);
  private static final LocalDate MELTS = LocalDate.of(2021, 2, 1);
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);
  private static final Place GROUND = SomePlace.of(PlaceKind.GROUND).open().place();
  private static final Place MULCHED = SomePlace.of(PlaceKind.GROUND).mulch(20).place();

  @Test
  void conductsAsTheTableSays() {
    for (CSVRecord row : rows("snow", "k_rho", 10)) {
      double found = Snow.conductivityWPerMK(1000 * input(row, "rho"));
      assertEquals(expected(row), found, 1e-6, row.toString());
    }
  }

  /** By hand, where the two branches meet: 0.059504 below, 0.059118 above. */
  @Test
  void theBranchesNearlyMeet() {
    double jump = Snow.conductivityWPerMK(155.999999) - Snow.conductivityWPerMK(156);
    assertEquals(0.059504 - 0.059118, jump, 1e-6);
  }

  @Test
  void tenCentimetresInsulateAsTheTableSays() {
    CSVRecord row = row("snow", "R_10cm");
    assertEquals(expected(row), Snow.resistanceM2KPerW(0.10, 200), 1e-5);
    assertEquals(0, Snow.settledM2KPerW(0));
    assertTrue(Snow.settledM2KPerW(0.10) < 0.6 * expected(row), "settled snow is planned with");
  }

  @Test
  void refusesIceAndLess() {
    assertThrows(IllegalArgumentException.class, () -> Snow.conductivityWPerMK(601));
    assertThrows(IllegalArgumentException.class, () -> Snow.conductivityWPerMK(-1));
  }

  /**
   * A steady row of resistances: air, 15 cm of snow, and 10 cm of soil down to a spring at 4 °C.
   */
  @Test
  void soilUnderSnowStaysNearTheWarmthBelow() {
    CSVRecord row = row("snow", "surface_T_under_snow");
    double outer = 1 / input(row, "h");
    double snow = Snow.resistanceM2KPerW(0.15, 200);
    double soil = 0.10 / 1.0;
    double airC = input(row, "Tair");
    double surfaceC = airC + (4 - airC) * (outer + snow) / (outer + snow + soil);
    assertEquals(expected(row), surfaceC, 1e-6);
  }

  /** Rules of thumb put the frost line of snowed-in gardens at half or less: common practice. */
  @Test
  void frostHardlyEntersTheGroundUnderSnow() {
    Winter bare = winter(0, 0);
    Winter snowy = winter(20, 0);
    double bareC = lowest(soilC(GROUND, bare));
    double snowyC = lowest(soilC(GROUND, snowy));
    assertTrue(bareC < -5 && snowyC > -1, bareC + " and " + snowyC);
    assertTrue(lowest(soilC(MULCHED, snowy)) > lowest(soilC(MULCHED, bare)));
  }

  @Test
  void deeperSnowKeepsSoilAndPotWarmer() {
    for (Place place : List.of(GROUND, MULCHED)) {
      double soilC = -99;
      double ballC = -99;
      for (double cm : new double[] {0, 2, 5, 10, 20, 40, 80}) {
        Winter winter = winter(cm, 0);
        double nextSoilC = lowest(soilC(place, winter));
        double nextBallC = ballC(place, winter);
        assertTrue(nextSoilC >= soilC && nextBallC >= ballC, place.name() + " " + cm + " cm");
        soilC = nextSoilC;
        ballC = nextBallC;
      }
      assertTrue(ballC > ballC(place, winter(0, 0)) + 1, place.name());
    }
  }

  /** A bench stands above the snow, and nobody counts on what lies on it. */
  @Test
  void snowOnTheGroundDoesNothingForABench() {
    Place bench = SomePlace.of(PlaceKind.BENCH).open().place();
    assertEquals(ballC(bench, winter(0, 0)), ballC(bench, winter(60, 0)));
    assertEquals(Exchange.of(POT, bench, false), Exchange.of(POT, bench, false, 0.6));
  }

  /** Half the wall in snow, by hand: 5 cm of snow lie on its middle less half of that. */
  @Test
  void snowCoversTheWallAsHighAsItLies() {
    double outer = 1 / Exchange.surfaceWPerM2K(GROUND);
    double heightM = 0.09 / (2 * Math.sqrt(Math.PI * 0.038));
    double half = heightM / 2;
    double open = 0.045 / (outer + 0.010);
    double buried = 0.045 / (outer + 0.010 + Snow.settledM2KPerW(half / 2));
    double top = 0.038 / outer;
    Exchange exchange = Exchange.of(POT, GROUND, false, half);
    assertEquals(open + buried + top, exchange.airWPerK(), 1e-9);
    assertEquals(top + open / 2, exchange.skyWPerK(), 1e-9);
    double deepM = heightM + 0.20;
    double under = 0.09 / (outer + 0.010 + Snow.settledM2KPerW(0.20 + heightM / 2));
    double lid = 0.038 / (outer + Snow.settledM2KPerW(0.20));
    assertEquals(under + lid, Exchange.of(POT, GROUND, false, deepM).airWPerK(), 1e-9);
  }

  /** Thawing air does not warm ground that snow still covers. */
  @Test
  void snowKeepsTheGroundAtZeroWhileItMelts() {
    double[] soilC = soilC(GROUND, winter(30, 8));
    Winter winter = winter(30, 8);
    double last = soilC[24 * winter.index(MELTS) - 1];
    double bare = soilC(GROUND, winter(0, 8))[24 * winter.index(MELTS) - 1];
    assertTrue(last < bare - 1, last + " under snow, bare " + bare);
  }

  private static double[] soilC(Place place, Winter winter) {
    return PlaceBase.hours(place, winter, winter.airC(), SomeWinter.LATITUDE_DEG);
  }

  private static double ballC(Place place, Winter winter) {
    Simulator simulator = new Simulator(winter, List.of(place), SomeWinter.LATITUDE_DEG);
    return lowest(simulator.simulate(POT, new int[winter.nights()]).ballMinC());
  }

  private static double lowest(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }

  /** A January at -12 °C and some more, with snow on the ground all the month. */
  private static Winter winter(double snowCm, double moreC) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    TreeMap<LocalDate, Double> snow = new TreeMap<>();
    LocalDate end = SomeWinter.SEASON.endExclusive();
    for (LocalDate day = SomeWinter.SEASON.start(); day.isBefore(end); day = day.plusDays(1)) {
      boolean january = !day.isBefore(FALLS) && day.isBefore(MELTS);
      days.put(
          day,
          january
              ? new DailyExtremes(moreC > 0 ? moreC - 3 : -16, moreC > 0 ? moreC + 3 : -8)
              : SomeWinter.wave(day, 11, 8, 6));
      if (january && snowCm > 0) {
        snow.put(day, snowCm);
      }
    }
    TemperatureSeries series = new TemperatureSeries("invented", days, new TreeMap<>(), snow);
    return Winter.of(SomeWinter.SEASON, new HourlyAir(series, SomeWinter.LATITUDE_DEG), 0);
  }
}
