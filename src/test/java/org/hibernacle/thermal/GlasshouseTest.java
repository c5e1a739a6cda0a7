package org.hibernacle.thermal;

import static org.hibernacle.thermal.ThermalChecks.expected;
import static org.hibernacle.thermal.ThermalChecks.input;
import static org.hibernacle.thermal.ThermalChecks.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.SomePlace;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;

/** The house of checks/thermal.csv, group greenhouse, is the one every glasshouse is taken for. */
class GlasshouseTest {
  @Test
  void theSmallHouseIsThatOfTheTable() {
    CSVRecord row = row("greenhouse", "solar_rise");
    CSVRecord air = row("greenhouse", "vent_loss");
    assertEquals(
        new Glasshouse(
            input(row, "tau"),
            input(row, "floor"),
            input(row, "cover"),
            input(row, "U"),
            input(air, "V"),
            input(air, "ACH")),
        Glasshouse.SMALL);
  }

  @Test
  void sunWarmsItAsItsBalanceSays() {
    CSVRecord row = row("greenhouse", "solar_rise");
    assertEquals(expected(row), Glasshouse.SMALL.riseKPerWPerM2() * input(row, "G"), 1e-5);
    assertEquals(expected(row), PlaceAir.GLASS_K_PER_W * input(row, "G"), 1e-5);
  }

  @Test
  void itLosesWhatAHeaterWouldHaveToGive() {
    CSVRecord row = row("greenhouse", "heater_W");
    assertEquals(expected(row), Glasshouse.SMALL.lossWPerK() * input(row, "dT"), 1e-4);
    CSVRecord air = row("greenhouse", "vent_loss");
    assertEquals(expected(air), Glasshouse.SMALL.lossWPerK() - 6 * 18, 1e-6);
  }

  /** Double glass lets in less and loses less; US extension services say 35 % is saved. */
  @Test
  void doubleGlassSavesAThird() {
    Glasshouse twin = new Glasshouse(0.7 * 77 / 88, 6, 18, 3.9, 12, 1);
    assertEquals(0.65, twin.lossWPerK() / Glasshouse.SMALL.lossWPerK(), 0.03);
    assertTrue(twin.riseKPerWPerM2() > Glasshouse.SMALL.riseKPerWPerM2());
  }

  /** An unheated house is within 1 to 3 K of outside by night: common practice, no source. */
  @Test
  void withoutHeatANightInsideIsAsColdAsOutside() {
    Winter winter = SomeWinter.wholeYear(day -> new DailyExtremes(-9, 3));
    double[] airC =
        PlaceAir.hours(SomePlace.of(PlaceKind.GLASSHOUSE).place(), winter, SomeWinter.LATITUDE_DEG);
    int midnight = 24 * winter.index(LocalDate.of(2021, 1, 15));
    for (int hour = midnight; hour < midnight + 7; hour++) {
      double gainK = airC[hour] - winter.airC()[hour];
      assertTrue(gainK > 0.9 && gainK < 3, gainK + " K");
    }
  }
}
