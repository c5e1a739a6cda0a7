package org.hibernacle.thermal;

import static org.hibernacle.SomeWinter.LATITUDE_DEG;
import static org.hibernacle.SomeWinter.steady;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** Air of places in weather so plain that it can be told by hand. */
class PlaceAirByHandTest {
  private static final LocalDate FIRST = LocalDate.of(2020, 10, 1);

  @Test
  void aPlaceStartsAtTheMeanOfTheFirstDayAndWhatWarmsIt() {
    Winter winter = SomeWinter.from(FIRST, day -> new DailyExtremes(2, 14));
    double mean = Arrays.stream(winter.airC(), 0, 24).average().orElseThrow();
    double[] airC = hours(SomePlace.of(PlaceKind.COLD_STORE).warmerBy(3).lag(2000), winter);
    double goal = winter.airC()[0] + 3;
    assertEquals(goal + (mean + 3 - goal) * Math.exp(-1 / 2000.0), airC[0], 1e-9);
  }

  /** Goal 10 + 2 for ever, from the mean of a first day of 0: 12 (1 - e^(-h / 8)). */
  @Test
  void theLagIsOfFirstOrder() {
    Winter winter = SomeWinter.from(FIRST, day -> steady(day.equals(FIRST) ? 0 : 10));
    double[] airC = hours(SomePlace.of(PlaceKind.FROST_FREE_ROOM).warmerBy(2).lag(8), winter);
    double[] out = winter.airC();
    double expected = 2;
    for (int hour = 0; hour < 72; hour++) {
      double goal = out[hour] + 2;
      expected += (goal - expected) * (1 - Math.exp(-0.125));
      assertEquals(expected, airC[hour], 1e-9, "hour " + hour);
    }
    assertEquals(12, airC[24 * 10], 1e-9);
  }

  /** Vents open above 10 °C and let in air until the house is 3 K over outside, or 10 °C. */
  @Test
  void ventsOfAGlasshouseWorkAboveTenDegrees() {
    assertEquals(12, ventedGlass(9, 20));
    assertEquals(10, ventedGlass(2, 20));
    assertEquals(5, ventedGlass(-15, 20));
    assertEquals(10, ventedGlass(7.5, 2.5));
  }

  private static double ventedGlass(double outsideC, double warmerByK) {
    SomePlace house =
        SomePlace.of(PlaceKind.GLASSHOUSE).sun(Sun.NONE).lag(0).warmerBy(warmerByK).vented();
    double[] airC = hours(house, SomeWinter.from(FIRST, day -> steady(outsideC)));
    return airC[100];
  }

  @Test
  void onlyAGlasshouseAndAStoreHaveVentsThatAct() {
    Winter winter = stepTo(-3);
    SomePlace room = SomePlace.of(PlaceKind.FROST_FREE_ROOM).lag(40).warmerBy(8);
    double[] shut = hours(room, winter);
    assertArrayEquals(shut, hours(room.vented(), winter));
  }

  /** A vented store follows with two hours; one that is quicker anyway stays as quick. */
  @Test
  void anOpenStoreFollowsWithTwoHours() {
    Winter winter = stepTo(8);
    int step = 24 * winter.index(FIRST.plusDays(30));
    double[] slow = hours(SomePlace.of(PlaceKind.COLD_STORE).warmerBy(0).lag(40).vented(), winter);
    for (int h = 1; h < 12; h++) {
      assertEquals(8 + (slow[step] - 8) * Math.exp(-h / 2.0), slow[step + h], 1e-9, "hour " + h);
    }
    SomePlace quick = SomePlace.of(PlaceKind.COLD_STORE).warmerBy(0).lag(1);
    double[] shut = hours(quick, winter);
    assertArrayEquals(shut, hours(quick.vented(), winter));
  }

  @Test
  void aStoreStaysShutWhenItIsWarmerOutside() {
    Winter winter =
        SomeWinter.from(FIRST, day -> steady(day.isBefore(FIRST.plusDays(30)) ? 6 : 15));
    SomePlace store = SomePlace.of(PlaceKind.COLD_STORE).warmerBy(0).lag(40);
    double[] shut = hours(store, winter);
    assertArrayEquals(shut, hours(store.vented(), winter));
    int step = 24 * winter.index(FIRST.plusDays(30));
    assertTrue(shut[step + 1] < 7, "slow to warm: " + shut[step + 1]);
  }

  private static Winter stepTo(double thenC) {
    return SomeWinter.from(FIRST, day -> steady(day.isBefore(FIRST.plusDays(30)) ? 12 : thenC));
  }

  private static double[] hours(SomePlace place, Winter winter) {
    return PlaceAir.hours(place.place(), winter, LATITUDE_DEG);
  }
}
