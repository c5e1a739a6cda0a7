package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** Which hours are charged for the sky, and with what. */
class SkyViewByHandTest {
  private static final Place BENCH = SomePlace.of(PlaceKind.BENCH).open().place();
  private static final Winter WINTER = SomeWinter.wholeYear(day -> new DailyExtremes(-8, 4));

  private final double[] belowK = SkyView.belowAirK(BENCH, WINTER, WINTER.airC());

  /** An hour is dark if its middle lies half a day or more from noon. */
  @Test
  void darkHoursAreThoseWhoseMiddleLiesOutsideTheDay() {
    for (int day = 0; day < WINTER.days(); day++) {
      for (int h = 0; h < 24; h++) {
        double fromNoonH = Math.abs(h + 0.5 - 12);
        boolean dark = fromNoonH >= WINTER.dayLengthH()[day] / 2;
        assertEquals(dark, belowK[24 * day + h] > 0, "day " + day + " hour " + h);
      }
    }
  }

  /**
   * The surface balance itself, from the charged kelvins back: what air gives by convection is what
   * the sky takes, {@code (h - 4 eps sigma T^3) (Ta - Ts) = eps sigma (Ts^4 - e Ta^4)}.
   */
  @Test
  void whatTheAirGivesTheSkyTakes() {
    for (int hour : new int[] {2, 24 * 100 + 5, 24 * 200 + 23}) {
      int midnight = hour / 24 * 24;
      double[] air = Arrays.copyOfRange(WINTER.airC(), midnight, midnight + 24);
      double lowC = Arrays.stream(air).min().orElseThrow();
      double highC = Arrays.stream(air).max().orElseThrow();
      double airK = WINTER.airC()[hour] + 273.15;
      double surfaceK = airK - belowK[hour];
      double vapourHPa = 6.108 * Math.exp(17.27 * lowC / (lowC + 237.3));
      double clear = 1.24 * Math.pow(vapourHPa / airK, 1 / 7.0);
      double clouds = 1.35 * 0.16 * Math.sqrt(highC - lowC) / 0.75 - 0.35;
      double above = 1 - 0.25 * clouds * (1 - clear);
      double sigma = 0.95 * 5.670374419e-8;
      double given = (13.3 - 4 * sigma * Math.pow(airK, 3)) * (airK - surfaceK);
      double taken = sigma * (Math.pow(surfaceK, 4) - above * Math.pow(airK, 4));
      assertEquals(given, taken, 1e-6, "hour " + hour);
      assertTrue(given > 0);
    }
  }

  @Test
  void aRoofTakesAllOfTheSkyAway() {
    Place shed = SomePlace.of(PlaceKind.COLD_STORE).place();
    assertEquals(0, Arrays.stream(SkyView.belowAirK(shed, WINTER, WINTER.airC())).sum());
  }

  /** Own round figures; docs/models tells how they were chosen. */
  @Test
  void shelterHidesPartOfTheSky() {
    assertEquals(0.25, SkyView.share(BENCH));
    assertEquals(0.15, SkyView.share(SomePlace.of(PlaceKind.BENCH).place()));
    assertEquals(0.25, SkyView.share(SomePlace.of(PlaceKind.GROUND).open().place()));
    assertEquals(0.10, SkyView.share(SomePlace.of(PlaceKind.GROUND).place()));
  }
}
