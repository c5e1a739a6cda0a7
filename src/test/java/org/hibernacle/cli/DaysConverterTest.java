package org.hibernacle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.hibernacle.model.DateSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.TypeConversionException;

class DaysConverterTest {
  private final DaysConverter converter = new DaysConverter();

  @Test
  void theLastDayIsIncluded() {
    assertEquals(
        new DateSpan(LocalDate.of(2026, 12, 20), LocalDate.of(2027, 1, 6)),
        converter.convert("2026-12-20..2027-01-05"));
    LocalDate day = LocalDate.of(2026, 12, 20);
    assertEquals(new DateSpan(day, day.plusDays(1)), converter.convert("2026-12-20 .. 2026-12-20"));
  }

  @ParameterizedTest
  @CsvSource({
    "2027-01-05..2026-12-20, ends before it begins",
    "2026-12-01..2027-01-01, longer than 31 days",
    "2026-12-20, are not days",
    "2026-12-20-2027-01-05, are not days",
    "20.12.2026..5.1.2027, are not days",
    "2026-12-20..2026-02-30, are not days"
  })
  void otherDaysAreRefusedWithTheReason(String text, String reason) {
    String message =
        assertThrows(TypeConversionException.class, () -> converter.convert(text)).getMessage();
    assertTrue(message.startsWith("\"" + text + "\"") && message.contains(reason), message);
  }

  @Test
  void aLongMonthIsNotTooLong() {
    assertEquals(
        LocalDate.of(2027, 1, 1), converter.convert("2026-12-01..2026-12-31").toExclusive());
  }
}
