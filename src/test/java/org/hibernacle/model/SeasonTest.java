package org.hibernacle.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Leap years by the calendar's own rule: 2000 and 2024 are, 1900 and 2023 are not. */
class SeasonTest {
  private static final Season NORTH = new Season(2023, false);
  private static final Season SOUTH = new Season(2024, true);

  @Test
  void aSeasonWithTheLeapDayIsADayLonger() {
    assertEquals(366, NORTH.days());
    assertEquals(365, NORTH.next().days());
    assertEquals(366, SOUTH.days());
    assertEquals(365, new Season(1899, false).days());
    assertEquals(366, new Season(1999, false).days());
  }

  @Test
  void everyDayBelongsToOneSeasonAndToItsNumberInIt() {
    for (boolean southern : new boolean[] {false, true}) {
      for (LocalDate day = LocalDate.of(2022, 1, 1);
          day.isBefore(LocalDate.of(2026, 1, 1));
          day = day.plusDays(1)) {
        Season season = Season.containing(day, southern);
        assertTrue(season.contains(day));
        assertFalse(season.next().contains(day));
        assertEquals(day, season.day(season.index(day)));
        assertTrue(season.index(day) < season.days());
      }
    }
  }

  @Test
  void theSameDayOfAnotherSeasonHasItsMonthAndDay() {
    assertEquals(LocalDate.of(2026, 10, 24), new Season(2026, false).sameDay(d("2019-10-24")));
    assertEquals(LocalDate.of(2027, 3, 1), new Season(2026, false).sameDay(d("2020-03-01")));
    assertEquals(LocalDate.of(2026, 3, 1), new Season(2026, true).sameDay(d("2020-03-01")));
  }

  @Test
  void theLeapDayBecomesTheTwentyEighthWhereThereIsNone() {
    assertEquals(d("2027-02-28"), new Season(2026, false).sameDay(d("2024-02-29")));
    assertEquals(d("2027-02-28"), new Season(2026, false).sameDay(d("2024-02-28")));
    assertEquals(d("2028-02-29"), new Season(2027, false).sameDay(d("2024-02-29")));
    assertEquals(d("2028-02-28"), new Season(2027, false).sameDay(d("2023-02-28")));
    assertEquals(d("2025-02-28"), new Season(2025, true).sameDay(d("2024-02-29")));
  }

  /** No day is mapped out of the season, and none before one that it follows. */
  @Test
  void mappingKeepsTheOrderOfTheDays() {
    for (boolean southern : new boolean[] {false, true}) {
      for (int to = 2023; to <= 2026; to++) {
        Season season = new Season(to, southern);
        for (int from = 2023; from <= 2026; from++) {
          Season other = new Season(from, southern);
          LocalDate before = season.start();
          for (int i = 0; i < other.days(); i++) {
            LocalDate mapped = season.sameDay(other.day(i));
            assertTrue(season.contains(mapped), mapped + " is not in " + season);
            assertFalse(mapped.isBefore(before), mapped + " comes before " + before);
            before = mapped;
          }
          assertEquals(season.endExclusive().minusDays(1), before);
        }
      }
    }
  }

  @Test
  void theColdMonthsAndMidwinterLieHalfAYearApart() {
    assertEquals(d("2023-10-01"), NORTH.coreStart());
    assertEquals(d("2024-05-01"), NORTH.coreEndExclusive());
    assertEquals(d("2024-01-15"), NORTH.midwinter());
    assertEquals(d("2024-04-01"), SOUTH.coreStart());
    assertEquals(d("2024-11-01"), SOUTH.coreEndExclusive());
    assertEquals(d("2024-07-15"), SOUTH.midwinter());
    assertEquals("2023/24", NORTH.toString());
    assertEquals("1999/00", new Season(1999, false).toString());
    assertEquals("2024", SOUTH.toString());
  }

  private static LocalDate d(String day) {
    return LocalDate.parse(day);
  }
}
