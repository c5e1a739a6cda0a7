package org.hibernacle.report;

import java.time.LocalDate;

/** What stands in one cell; a writer maps it to looks and computes nothing. */
public sealed interface Cell {
  /** Words. */
  record Text(String text) implements Cell {}

  /**
   * A number with its unit. The cell holds the full number, but zero for one that would be shown as
   * minus zero.
   *
   * @param value in {@code unit}, unrounded
   * @param unit printed after the number; empty where the heading names it
   * @param decimals shown, 0..3
   * @param role its look
   */
  record Quantity(double value, String unit, int decimals, StyleRole role) implements Cell {
    public Quantity {
      value = Display.withoutNegativeZero(value, decimals);
    }

    /** A number of plain look. */
    public Quantity(double value, String unit, int decimals) {
      this(value, unit, decimals, StyleRole.PLAIN);
    }
  }

  /**
   * A calendar day.
   *
   * @param date which
   * @param past a day of a winter on file: shown with its year rather than its weekday
   */
  record Day(LocalDate date, boolean past) implements Cell {
    /** A day of the planned season. */
    public Day(LocalDate date) {
      this(date, false);
    }
  }

  /** Words in a role's look, for a status. */
  record Level(StyleRole role, String text) implements Cell {}

  /** Nothing. */
  record Gap() implements Cell {}
}
