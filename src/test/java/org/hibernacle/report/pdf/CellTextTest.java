package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Locale;
import org.hibernacle.report.Cell;
import org.hibernacle.report.StyleRole;
import org.junit.jupiter.api.Test;

class CellTextTest {
  private final CellText english = new CellText(Locale.ENGLISH);

  @Test
  void aNumberShowsTheAskedDigitsRoundedToTheNearest() {
    assertEquals("-6.1", english.of(new Cell.Quantity(-6.14, "K", 1)));
    assertEquals("-6.2", english.of(new Cell.Quantity(-6.16, "K", 1)));
    assertEquals("2.50", english.of(new Cell.Quantity(2.5, "K", 2)));
    assertEquals("3", english.of(new Cell.Quantity(2.5, "K", 0)), "a half goes up");
    assertEquals("1,240", english.of(new Cell.Quantity(1240, "h", 0)));
  }

  @Test
  void numbersFollowTheLanguage() {
    assertEquals("-6,1", new CellText(Locale.GERMAN).of(new Cell.Quantity(-6.14, "K", 1)));
  }

  /** 31 October 2026 is a Saturday by any calendar. */
  @Test
  void aDayNamesItsWeekdayAndYear() {
    assertEquals("Sat 31 Oct 2026", english.of(new Cell.Day(LocalDate.of(2026, 10, 31))));
  }

  @Test
  void wordsAreLeftAsTheyAre() {
    assertEquals("shed", english.of(new Cell.Text("shed")));
    assertEquals("moves", english.of(new Cell.Level(StyleRole.MOVE_DOWN, "moves")));
    assertEquals("one day", english.of(new Cell.Gap("one day")));
  }
}
