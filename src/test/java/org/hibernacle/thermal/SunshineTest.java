package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.hibernacle.climate.DayLength;
import org.junit.jupiter.api.Test;

/** Worked examples 8 and 15 of FAO Irrigation and Drainage Paper 56, cited from memory. */
class SunshineTest {
  @Test
  void abovetheAirItIsThatOfTheWorkedExample() {
    assertEquals(32.2, Sunshine.extraterrestrialMJ(-20, LocalDate.of(2021, 9, 3)), 0.05);
  }

  /** Lyon in July: 26.6 and 14.8 °C, 40.6 MJ/m2 above the air, 22.3 MJ/m2 at the ground. */
  @Test
  void aDaysSumIsThatOfTheWorkedExample() {
    LocalDate day = LocalDate.of(2021, 7, 15);
    double latitudeDeg = 45 + 43 / 60.0;
    assertEquals(40.6, Sunshine.extraterrestrialMJ(latitudeDeg, day), 0.1);
    double dayLengthH = DayLength.at(latitudeDeg, day).lengthH();
    double sumJ = 0;
    for (int hour = 0; hour < 24; hour++) {
      sumJ += 3600 * Sunshine.wattPerM2(latitudeDeg, day, 26.6 - 14.8, dayLengthH, hour);
    }
    assertEquals(22.3e6, sumJ, 0.02 * 22.3e6);
  }

  @Test
  void itIsDarkAtNightAndBrightestAtNoon() {
    LocalDate day = LocalDate.of(2021, 12, 21);
    double dayLengthH = DayLength.at(50, day).lengthH();
    assertEquals(0, Sunshine.wattPerM2(50, day, 8, dayLengthH, 3));
    assertEquals(0, Sunshine.wattPerM2(50, day, 8, dayLengthH, 20));
    double noon = Sunshine.wattPerM2(50, day, 8, dayLengthH, 12);
    assertEquals(noon, Sunshine.wattPerM2(50, day, 8, dayLengthH, 11), 1e-9);
    assertTrue(noon > Sunshine.wattPerM2(50, day, 8, dayLengthH, 10));
    assertEquals(0, Sunshine.wattPerM2(50, day, 0, dayLengthH, 12));
  }
}
