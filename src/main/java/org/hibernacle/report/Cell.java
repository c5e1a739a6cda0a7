package org.hibernacle.report;

import java.time.LocalDate;

/** What stands in one cell; a writer maps it to looks and computes nothing. */
public sealed interface Cell {
  /** Words. */
  record Text(String text) implements Cell {}

  /**
   * A number with its unit. The heading names the unit; the cell holds the full number.
   *
   * @param value in {@code unit}, unrounded
   * @param unit as printed after the number where there is no heading; may be empty
   * @param decimals shown, 0..3
   */
  record Quantity(double value, String unit, int decimals) implements Cell {}

  /** A calendar day. */
  record Day(LocalDate date) implements Cell {}

  /** Words in a role's look, for a status. */
  record Level(StyleRole role, String text) implements Cell {}

  /** Nothing, and why. The reason is shown where there is room, blank otherwise. */
  record Gap(String reason) implements Cell {}
}
