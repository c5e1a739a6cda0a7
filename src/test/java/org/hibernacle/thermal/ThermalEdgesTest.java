package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** Ends of ranges, and terms that vanish in the ordinary case. */
class ThermalEdgesTest {
  /** 12 m3 of air changed once more an hour carries off 1206 x 12 / 3600 = 4.02 W/K more. */
  @Test
  void everyChangeOfAirCostsAsMuchAsTheOneBefore() {
    double once = new Glasshouse(0.7, 6, 18, 6, 12, 1).lossWPerK();
    double thrice = new Glasshouse(0.7, 6, 18, 6, 12, 3).lossWPerK();
    assertEquals(2 * 4.02, thrice - once, 1e-9);
  }

  /** The layers reach to 8 m; the lowest, 1.41 m thick, has its middle 0.705 m above that. */
  @Test
  void belowTheLastMiddleItIsAsWarmAsThere() {
    SoilColumn soil = new SoilColumn(depthM -> 2 + depthM);
    assertEquals(2 + 8 - 0.705, soil.at(9), 1e-9);
  }

  /** What comes through mulch is on average the air, less what the sky takes off its surface. */
  @Test
  void theSkyCoolsTheSurfaceOfMulch() {
    Winter winter = SomeWinter.wholeYear(day -> new DailyExtremes(-8, 4));
    Place bed = SomePlace.of(PlaceKind.GROUND).open().mulch(10).place();
    Simulator simulator = new Simulator(winter, List.of(bed), SomeWinter.LATITUDE_DEG);
    PlaceClimate climate = simulator.climate(0);
    double wrapped = 0;
    double air = 0;
    double sky = 0;
    int from = 24 * winter.index(LocalDate.of(2021, 1, 10));
    int hours = 10 * 24;
    for (int i = from; i < from + hours; i++) {
      wrapped += climate.wrapC()[i] / hours;
      air += climate.airC()[i] / hours;
      sky += climate.skyK()[i] / hours;
    }
    assertTrue(sky > 0.2, sky + " K");
    assertEquals(air - sky, wrapped, 0.02);
    assertEquals(List.of(bed), simulator.places());
  }
}
