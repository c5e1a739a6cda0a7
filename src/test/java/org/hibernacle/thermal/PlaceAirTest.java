package org.hibernacle.thermal;

import static org.hibernacle.SomeWinter.LATITUDE_DEG;
import static org.hibernacle.SomeWinter.steady;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

class PlaceAirTest {
  private static final LocalDate FIRST = LocalDate.of(2020, 10, 1);
  private static final LocalDate COLD = LocalDate.of(2021, 1, 10);
  private static final long SEED = 7_501;

  @Test
  void aWeekOfMinusTwelveTakesAnUnheatedShedToMinusEleven() {
    Winter winter = coldWeek(2, -12);
    double[] airC = hours(SomePlace.of(PlaceKind.COLD_STORE).place(), winter);
    int start = 24 * winter.index(COLD);
    assertTrue(airC[start + 12] > -6, "the first noon is still mild: " + airC[start + 12]);
    assertEquals(-11, airC[start + 7 * 24 - 1], 0.05);
  }

  /** Slow or quick, after some weeks a shed is at the mean of the air and what warms it. */
  @Test
  void noLagSavesAShedFromALongFrost() {
    Winter winter =
        SomeWinter.from(FIRST, day -> day.isBefore(COLD) ? steady(4) : new DailyExtremes(-17, -7));
    for (double lagH : new double[] {0.5, 6, 18, 72}) {
      double[] airC = hours(SomePlace.of(PlaceKind.COLD_STORE).lag(lagH).place(), winter);
      int day = winter.index(COLD) + 21;
      double insideC = mean(airC, 24 * day);
      assertEquals(mean(winter.airC(), 24 * day) + 1, insideC, 0.4, "lag " + lagH);
    }
  }

  private static double mean(double[] hours, int from) {
    return Arrays.stream(hours, from, from + 24).average().orElseThrow();
  }

  /** A first-order lag keeps {@code exp(-t / lag)} of a step. */
  @Test
  void aShedFollowsAStepWithItsLag() {
    Winter winter = coldWeek(2, -12);
    double[] airC = hours(SomePlace.of(PlaceKind.COLD_STORE).warmerBy(0).lag(10).place(), winter);
    int start = 24 * winter.index(COLD);
    double before = airC[start - 1];
    for (int hour = 0; hour < 48; hour++) {
      double expected = -12 + (before + 12) * Math.exp(-(hour + 1) / 10.0);
      assertEquals(expected, airC[start + hour], 0.02 * (before + 12), "hour " + hour);
    }
  }

  @Test
  void thermostatsHold() {
    Place room =
        SomePlace.of(PlaceKind.WARM_ROOM).lowestHeld(16).highestHeld(24).warmerBy(15).place();
    double lowest = 99;
    double highest = -99;
    for (double airC : hours(room, wild())) {
      lowest = Math.min(lowest, airC);
      highest = Math.max(highest, airC);
    }
    assertEquals(16, lowest, "seed " + SEED);
    assertEquals(24, highest, "seed " + SEED);
  }

  @Test
  void belowWhatItsHeaterCopesWithTheRoomFollowsKelvinByKelvin() {
    SomePlace room = SomePlace.of(PlaceKind.FROST_FREE_ROOM).lowestHeld(4).holdsDownTo(-10);
    assertEquals(4, settled(room, -9));
    assertEquals(4, settled(room, -10));
    assertEquals(3, settled(room, -11), 1e-9);
    assertEquals(-1, settled(room, -15), 1e-9);
  }

  /** A heater that fails leaves what walls and lag give, which may be more. */
  @Test
  void aFailingHeaterNeverMakesARoomColderThanUnheated() {
    SomePlace room = SomePlace.of(PlaceKind.FROST_FREE_ROOM).lowestHeld(4).holdsDownTo(0);
    assertEquals(-16 + 4, settled(SomePlace.of(PlaceKind.FROST_FREE_ROOM), -16), 0.01);
    assertEquals(-12, settled(room, -16), 0.01);
  }

  /** checks/thermal.csv, greenhouse: steady rise of a small single-glazed house in 300 W/m2. */
  @Test
  void glassWarmsAsItsHeatBalanceSays() {
    CSVRecord row = ThermalChecks.row("greenhouse", "solar_rise");
    double sunW = ThermalChecks.input(row, "G");
    assertEquals(ThermalChecks.expected(row), PlaceAir.GLASS_K_PER_W * sunW, 0.005);
  }

  @Test
  void sunRaisesTheGlasshouseByItsShare() {
    Winter winter = SomeWinter.from(FIRST, day -> new DailyExtremes(-6, 4));
    SomePlace house = SomePlace.of(PlaceKind.GLASSHOUSE).warmerBy(0).lag(0);
    double[] full = hours(house.sun(Sun.FULL).place(), winter);
    double[] part = hours(house.sun(Sun.PART).place(), winter);
    double[] none = hours(house.sun(Sun.NONE).place(), winter);
    LocalDate day = LocalDate.of(2021, 3, 20);
    int noon = 24 * winter.index(day) + 12;
    double[] air = Arrays.copyOfRange(winter.airC(), noon - 12, noon + 12);
    double rangeK = Arrays.stream(air).max().orElseThrow() - Arrays.stream(air).min().orElseThrow();
    double dayLengthH = winter.dayLengthH()[winter.index(day)];
    double sunW = Sunshine.wattPerM2(LATITUDE_DEG, day, rangeK, dayLengthH, 12);
    assertEquals(winter.airC()[noon], none[noon]);
    assertEquals(PlaceAir.GLASS_K_PER_W * sunW, full[noon] - none[noon], 1e-9);
    assertEquals((full[noon] - none[noon]) / 2, part[noon] - none[noon], 1e-9);
    assertTrue(full[noon] - none[noon] > 5, "sun counts in March");
    assertEquals(none[noon - 12], full[noon - 12], "no sun at midnight");
  }

  @Test
  void ventsKeepAGlasshouseNearTheAirOutside() {
    Winter winter = SomeWinter.from(FIRST, day -> new DailyExtremes(2, 14));
    SomePlace house = SomePlace.of(PlaceKind.GLASSHOUSE);
    double[] shut = hours(house.place(), winter);
    double[] vented = hours(house.vented().place(), winter);
    boolean shutGotHot = false;
    for (int i = 0; i < vented.length; i++) {
      double most = Math.max(PlaceAir.VENT_OPENS_C, winter.airC()[i] + 3);
      assertTrue(vented[i] <= most + 1e-9, "hour " + i + ": " + vented[i]);
      shutGotHot |= shut[i] > most + 5;
    }
    assertTrue(shutGotHot);
  }

  @Test
  void aStoreIsVentedWhenItIsWarmAndColderOutside() {
    Winter winter = SomeWinter.from(FIRST, day -> steady(day.isBefore(COLD) ? 12 : -3));
    SomePlace store = SomePlace.of(PlaceKind.COLD_STORE).lag(40);
    double[] shut = hours(store.place(), winter);
    double[] vented = hours(store.vented().place(), winter);
    int hour = 24 * winter.index(COLD) + 1;
    assertTrue(vented[hour + 1] < shut[hour + 1] - 3, vented[hour + 1] + " " + shut[hour + 1]);
    while (vented[hour] > 5) {
      hour++;
    }
    // From 5 °C down it is shut again and as slow as before.
    assertTrue(vented[hour] - vented[hour + 1] < 0.3, vented[hour] + " " + vented[hour + 1]);
  }

  @Test
  void aFrostPocketIsColderAtEveryHour() {
    Winter winter = wild();
    double[] airC = hours(SomePlace.of(PlaceKind.BENCH).warmerBy(-2).place(), winter);
    for (int i = 0; i < airC.length; i++) {
      assertEquals(winter.airC()[i] - 2, airC[i]);
    }
  }

  @Test
  void coolingStopsAtTheHighestHeldOrAtTheAirOutside() {
    SomePlace cellar = SomePlace.of(PlaceKind.COLD_STORE).highestHeld(5).warmerBy(3);
    assertEquals(4, settled(cellar, 1), 1e-9);
    assertEquals(5, settled(cellar, 4));
    assertEquals(5, settled(cellar, 5));
    assertEquals(12, settled(cellar, 12));
  }

  private static double settled(SomePlace place, double outsideC) {
    Winter winter = coldWeek(outsideC, outsideC);
    double[] airC = hours(place.place(), winter);
    return airC[24 * (winter.index(COLD) + 6)];
  }

  private static Winter coldWeek(double elseC, double coldC) {
    return SomeWinter.from(
        FIRST,
        day -> steady(day.isBefore(COLD) || !day.isBefore(COLD.plusDays(7)) ? elseC : coldC));
  }

  private static Winter wild() {
    SplittableRandom random = new SplittableRandom(SEED);
    return SomeWinter.from(
        FIRST,
        day -> {
          double lowC = random.nextDouble(-20, 12);
          return new DailyExtremes(lowC, lowC + random.nextDouble(0, 11.9));
        });
  }

  private static double[] hours(Place place, Winter winter) {
    return PlaceAir.hours(place, winter, LATITUDE_DEG);
  }
}
