package org.hibernacle.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.hibernacle.SomeWinter;
import org.hibernacle.model.DailyExtremes;
import org.junit.jupiter.api.Test;

/** What a winter says of its own length and mean, counted by hand. */
class WinterExtentTest {
  /** 1 July 2020 to 30 June 2021 are 365 days with 364 nights between them. */
  @Test
  void aYearHasOneNightLessThanDays() {
    Winter year = SomeWinter.wholeYear(day -> SomeWinter.steady(5));
    assertEquals(365, year.days());
    assertEquals(364, year.nights());
    assertEquals(0, year.index(LocalDate.of(2020, 7, 1)));
    assertEquals(-1, year.index(LocalDate.of(2020, 6, 30)));
    assertEquals(364, year.index(LocalDate.of(2021, 6, 30)));
  }

  /** 184 days of 20 °C up to 31 December, 181 of 2 °C after it. */
  @Test
  void theMeanIsTakenOverAllHours() {
    Winter year = SomeWinter.wholeYear(day -> steadyOf(day));
    assertEquals((184 * 20 + 181 * 2) / 365.0, year.meanC(), 0.02);
  }

  private static DailyExtremes steadyOf(LocalDate day) {
    return SomeWinter.steady(day.getYear() == 2020 ? 20 : 2);
  }
}
