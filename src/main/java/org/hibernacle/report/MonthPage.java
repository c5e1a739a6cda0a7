package org.hibernacle.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/**
 * One month of the calendar.
 *
 * @param month which
 * @param title as printed
 * @param entries days with something to do, in order
 */
public record MonthPage(YearMonth month, String title, List<DayEntry> entries) {
  /**
   * What there is to do on one day.
   *
   * @param date which
   * @param lines one a task, or a move of pots that go together
   */
  public record DayEntry(LocalDate date, List<Line> lines) {
    public DayEntry {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One thing to do.
   *
   * @param role its look
   * @param mark a short mark that tells the kind without colour
   * @param text with the names of plants
   * @param brief with their Ids only, for a full month
   */
  public record Line(StyleRole role, String mark, String text, String brief) {
    /** A line that is brief by itself. */
    public Line(StyleRole role, String mark, String text) {
      this(role, mark, text, text);
    }
  }

  public MonthPage {
    entries = List.copyOf(entries);
  }
}
