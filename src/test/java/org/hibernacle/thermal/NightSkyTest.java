package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.hibernacle.thermal.ThermalChecks.rows;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** Clear-sky cooling against checks/thermal.csv, and what it does to pots. */
class NightSkyTest {
  private static final double ZERO_C_IN_K = 273.15;
  private static final ThermalClass POT = new ThermalClass(5, 0.09, 0.038, Material.CERAMIC);

  @Test
  void aClearSkyShinesAsBrutsaertFound() {
    for (CSVRecord row : rows("sky", "brutsaert", 4)) {
      double airC = input(row, "T") - ZERO_C_IN_K;
      assertEquals(expected(row), NightSky.emissivity(airC, input(row, "e")), 1e-6, row.toString());
    }
  }

  @Test
  void aSurfaceAsWarmAsTheAirLosesWhatTheBalanceSays() {
    double loss = NightSky.lossWPerM2(0, NightSky.emissivity(0, 4));
    assertEquals(expected(row("sky", "net_longwave")), loss, 1e-4);
  }

  @Test
  void aSurfaceSettlesWhereAirAndSkyAgree() {
    for (CSVRecord row : rows("sky", "surface_T_h", 3)) {
      double h = Double.parseDouble(row.get("case").substring("surface_T_h".length()));
      double surfaceC = NightSky.surfaceC(0, NightSky.emissivity(0, 4), h);
      assertEquals(expected(row), surfaceC, 1e-5, row.toString());
    }
  }

  /** 4.391 W/m2K at 0 °C for an emissivity of 0.95. */
  @Test
  void radiationGrowsWithTheCubeOfTheTemperature() {
    for (CSVRecord row : rows("coefficient", "h_rad", 3)) {
      double kelvin = Double.parseDouble(row.get("case").replaceAll("[^0-9.]", ""));
      assertEquals(
          expected(row), NightSky.radiationWPerM2K(kelvin - ZERO_C_IN_K), 1e-5, row.toString());
    }
  }

  /** FAO paper 56, annex 2, table 2.3 (from memory): 0.611 kPa at 0 °C, 2.338 at 20 °C. */
  @Test
  void vapourIsThatOfTheTable() {
    assertEquals(6.11, NightSky.vapourHPa(0), 0.01);
    assertEquals(23.38, NightSky.vapourHPa(20), 0.03);
  }

  /** A dull day of 3 K leaves a small part of the loss, a desert's 22 K all of it. */
  @Test
  void cloudsAreGuessedFromTheRangeOfTheDay() {
    assertEquals(0.05, NightSky.clearShare(0));
    assertEquals(1.35 * 0.16 * Math.sqrt(9) / 0.75 - 0.35, NightSky.clearShare(9), 1e-12);
    assertEquals(1, NightSky.clearShare(22), 1e-12);
    assertEquals(1, NightSky.clearShare(40));
    assertTrue(NightSky.clearShare(3) < 0.2);
  }

  /** Half the sky takes half as much, near enough; roofs see none; by day nothing is charged. */
  @Test
  void theLossGoesWithTheViewOfTheSky() {
    double vapour = NightSky.vapourHPa(-8);
    double all = SkyView.belowAirK(-5, vapour, 0.4, 10);
    double half = SkyView.belowAirK(-5, vapour, 0.2, 10);
    assertEquals(0, SkyView.belowAirK(-5, vapour, 0, 10), 1e-9);
    assertEquals(all / 2, half, 0.02 * all);
    // Radiation that stays in the coefficient and the sky's deficit add up to the same.
    double linear = NightSky.lossWPerM2(-5, 1 - 0.4 * (1 - NightSky.emissivity(-5, vapour))) / 10;
    assertEquals(linear, all, 0.02 * linear);
    for (PlaceKind kind : PlaceKind.values()) {
      double share = SkyView.share(SomePlace.of(kind).open().place());
      assertEquals(kind.roofed(), share == 0, kind.name());
      assertTrue(share >= SkyView.share(SomePlace.of(kind).place()), kind.name());
    }
  }

  @Test
  void onlyDarkHoursAreCharged() {
    Winter winter = SomeWinter.wholeYear(day -> new DailyExtremes(-8, 2));
    Place bench = SomePlace.of(PlaceKind.BENCH).open().place();
    double[] belowK = SkyView.belowAirK(bench, winter, winter.airC());
    for (int day = 0; day < winter.days(); day++) {
      long dark = Arrays.stream(belowK, 24 * day, 24 * day + 24).filter(k -> k > 0).count();
      assertEquals(24 - winter.dayLengthH()[day], dark, 1.01, "day " + day);
      assertEquals(0, belowK[24 * day + 12], "noon");
    }
  }

  /**
   * The gap between a grass thermometer and one in a screen is 3 to 5 K on clear, calm nights, from
   * memory. A surface under all of such a sky, sheltered, must be of that order.
   */
  @Test
  void aSurfaceUnderTheWholeSkyIsAsMuchColderAsGrassIs() {
    double belowK =
        SkyView.belowAirK(0, NightSky.vapourHPa(-2), NightSky.clearShare(14), 5.7 + 3.8);
    assertTrue(belowK > 3 && belowK < 8, belowK + " K, without the warmth of the soil");
  }

  /** A clear night costs an open ball half a kelvin to a whole one; in mulch next to nothing. */
  @Test
  void aBallUnderTheSkyIsALittleColderThanTheAir() {
    Winter winter = SomeWinter.wholeYear(day -> new DailyExtremes(-10, 2));
    assertBelow(0.2, 1.2, winter, SomePlace.of(PlaceKind.BENCH).open().place());
    assertBelow(0.2, 1.2, winter, SomePlace.of(PlaceKind.GROUND).open().place());
    assertBelow(0, 0.4, winter, SomePlace.of(PlaceKind.GROUND).mulch(20).place());
    assertBelow(0, 0, winter, SomePlace.of(PlaceKind.COLD_STORE).place());
  }

  /** The setting and this page tell of the same nights: the larger counts, not their sum. */
  @Test
  void theOffsetOfTheSiteIsSetAgainstTheLoss() {
    Place bench = SomePlace.of(PlaceKind.BENCH).open().place();
    Winter measured = SomeWinter.coldClear(0);
    double[] alone = SkyView.belowAirK(bench, measured, measured.airC());
    Winter little = SomeWinter.coldClear(0.5);
    Winter much = SomeWinter.coldClear(5);
    double[] besideLittle = SkyView.belowAirK(bench, little, little.airC());
    double[] besideMuch = SkyView.belowAirK(bench, much, much.airC());
    int hour = 24 * measured.index(SomeWinter.SEASON.midwinter()) + 6;
    assertEquals(0.5, little.colderK()[hour], 0.1);
    assertEquals(alone[hour], little.colderK()[hour] + besideLittle[hour], 0.05);
    assertTrue(alone[hour] < much.colderK()[hour]);
    assertEquals(0, besideMuch[hour]);
  }

  private static void assertBelow(double least, double most, Winter winter, Place place) {
    Simulator simulator = new Simulator(winter, List.of(place), SomeWinter.LATITUDE_DEG);
    int midnight = 24 * winter.index(SomeWinter.SEASON.midwinter());
    PlaceClimate climate = simulator.climate(0);
    Exchange exchange = Exchange.of(POT, place, true);
    double wattPerK = exchange.airWPerK() + exchange.baseWPerK();
    double belowK = exchange.skyWPerK() * climate.skyK()[midnight] / wattPerK;
    assertTrue(belowK >= least && belowK <= most, place.kind() + " " + belowK + " K");
  }
}
