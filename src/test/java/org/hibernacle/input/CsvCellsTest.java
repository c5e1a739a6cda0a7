package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Headings, numbers, times and units, cell by cell. */
class CsvCellsTest {
  private static final DateRule ISO = DatePattern.USUAL.get(0);

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
    "tmin (K), tmin, K",
    "TN (0.1 °C), tn, TENTHS",
    "# STN, stn, ",
    "'Temp, °C (LGR S/N: 1, SEN S/N: 2)', temp°clgrsn1sensn2, C",
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
    "1200 UTC, 43200",
    "0015, 900",
  })
  void timesOfEitherClock(String text, int second) {
    assertEquals(second, TimeOfDay.of(text).orElseThrow().second());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "24:01", "25:00", "6:60", "0:30 AM", "13:00 PM", "noon", "6:3"})
  void whatIsNoTimeIsNone(String text) {
    assertTrue(TimeOfDay.of(text).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "2025-01-14T06:30:00Z, 0",
    "2025-01-14 06:30 UTC, 0",
    "2025-01-14 06:30 +01:00, 3600",
    "2025-01-14T06:30-0330, -12600",
  })
  void aTimeMayNameItsZone(String cell, int offsetS) {
    Stamp stamp = ISO.read(cell).orElseThrow();
    assertEquals(OptionalInt.of(offsetS), stamp.offsetS());
    assertEquals(OptionalInt.of(23400), stamp.secondOfDay());
  }

  @Test
  void mostTimesNameNone() {
    assertTrue(ISO.read("2025-01-14 06:30").orElseThrow().offsetS().isEmpty());
    assertTrue(ISO.read("2025-01-14").orElseThrow().offsetS().isEmpty());
  }

  /** Standard time of Newfoundland is 3:30 behind Greenwich, of Lord Howe Island 10:30 ahead. */
  @ParameterizedTest
  @CsvSource({
    "America/St_Johns, 2025-07-14T02:00Z, 2025-07-13, 81000",
    "Australia/Lord_Howe, 2025-01-14T14:00Z, 2025-01-15, 1800",
    "Asia/Tokyo, 2025-01-14T24:00Z, 2025-01-15, 32400",
  })
  void aMomentIsShiftedToStandardTimeAllYear(String zone, String cell, String day, int second) {
    Stamp there = ISO.read(cell).orElseThrow().in(ZoneId.of(zone));
    assertEquals(LocalDate.parse(day), there.day());
    assertEquals(OptionalInt.of(second), there.secondOfDay());
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
