package org.hibernacle.report;

import java.util.List;

/**
 * A chart that a workbook draws from the columns of a section, days along its first column.
 *
 * @param section id of the section
 * @param title above it
 * @param daysTitle of the axis of days
 * @param valueTitle of the other axis, with the unit
 * @param step between two marks of that axis; its ends are multiples of it
 * @param alone whether paper shows the chart without the table
 * @param lines in order, one or more
 */
public record SheetChart(
    String section,
    String title,
    String daysTitle,
    String valueTitle,
    double step,
    boolean alone,
    List<Line> lines) {
  /**
   * A line.
   *
   * @param column id of the column it is drawn from
   * @param limit whether it is a bound that the others are held against
   */
  public record Line(String column, boolean limit) {}

  public SheetChart {
    lines = List.copyOf(lines);
  }
}
