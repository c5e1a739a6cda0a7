package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Headings, numbers, times and units, cell by cell. */
class CsvCellsTest {
  @ParameterizedTest
  @CsvSource({
    "tmin_c, tmin, C",
    "Min temp (°F), mintemp, F",
    "MIN_TEMP [°C], mintemp, C",
    "Tmin C, tmin, C",
    "TMIN deg F, tmin, F",
    "Minimum temperature (Degree C), minimumtemperature, C",
    "Minimum Temperature (℃), minimumtemperature, C",
    "tmax (deg c), tmax, C",
    "tmax (celsius), tmax, C",
    "tmax fahrenheit, tmax, F",
    "Date/Time, datetime, ",
    "TMIN, tmin, ",
    "température (°C), temperature, C",
    "tmin (K), tmink, ",
    "Temperature (ground) °C, temperatureground, C",
    "tmin_f (°C), tmin, ",
    "c, c, ",
    "'', '', ",
  })
  void aHeadingIsComparedWithoutItsUnit(String written, String key, String unit) {
    CsvHeading heading = CsvHeading.of(written);
    assertEquals(key, heading.key());
    assertEquals(Optional.ofNullable(unit), heading.unit().map(TemperatureUnit::name));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"-3.5|-3.5", "-3,5|-3.5", "−3,5|-3.5", "+2|2", ".5|0.5", "-,5|-0.5", "7.|7"})
  void numbersMayHaveEitherMark(String cell, double expected) {
    assertEquals(OptionalDouble.of(expected), NumberCell.number(cell));
    assertFalse(NumberCell.missing(cell));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "-", "3.5 C", "1.234,5", "1,234.5", "--3", "1e3", "NaN", "0x1p3", "٣"})
  void whatIsNotAPlainNumberIsNone(String cell) {
    assertEquals(OptionalDouble.empty(), NumberCell.number(cell));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "-", "---", "M", "na", "N/A", "NaN", "NULL", "None", "x", "-999", "-999,9", "9999.0",
        "32767"
      })
  void knownSignsForNoReadingAreMissing(String cell) {
    assertTrue(NumberCell.missing(cell));
  }

  @Test
  void ordinaryColdIsNotMissing() {
    assertFalse(NumberCell.missing("-40"));
    assertFalse(NumberCell.missing("-9.9"));
    assertFalse(NumberCell.missing("99"));
  }

  @ParameterizedTest
  @CsvSource({
    "00:00, 0",
    "6:30, 23400",
    "06:30:15, 23415",
    "06:30:15.250, 23415",
    "12:00 AM, 0",
    "12:30 pm, 45000",
    "1:00 p.m., 46800",
    "24:00, 86400",
    "6, 21600",
    "18:00Z, 64800",
    "18:00:00+01:00, 64800",
    "18:00 UTC, 64800",
  })
  void timesOfEitherClock(String text, int second) {
    assertEquals(OptionalInt.of(second), TimeOfDay.second(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "24:01", "25:00", "6:60", "0:30 AM", "13:00 PM", "noon", "6:3"})
  void whatIsNoTimeIsNone(String text) {
    assertEquals(OptionalInt.empty(), TimeOfDay.second(text));
  }

  @Test
  void onlyATimeCanNameAZone() {
    assertTrue(TimeOfDay.namesZone("2025-01-14T06:30:00Z"));
    assertTrue(TimeOfDay.namesZone("14.01.2025 06:30 +01:00"));
    assertFalse(TimeOfDay.namesZone("14-01-2025"));
    assertFalse(TimeOfDay.namesZone("2025-01-14 06:30"));
  }

  /** 32 °F is 0 °C and -40 is the same on both scales, by definition of the scales. */
  @Test
  void fahrenheitIsConvertedExactly() {
    assertEquals(0, TemperatureUnit.F.toC(32));
    assertEquals(-40, TemperatureUnit.F.toC(-40));
    assertEquals(100, TemperatureUnit.F.toC(212));
    assertEquals(-40, TemperatureUnit.C.toC(-40));
  }

  @Test
  void aDateFormatNeedsAYearAMonthAndADay() {
    assertEquals("d.M.yy", GivenDateFormat.of("d.M.yy").shown());
    assertThrows(IllegalArgumentException.class, () -> GivenDateFormat.of("HH:mm"));
    assertThrows(IllegalArgumentException.class, () -> GivenDateFormat.of("dd.MM"));
    assertThrows(IllegalArgumentException.class, () -> GivenDateFormat.of("{"));
  }
}
