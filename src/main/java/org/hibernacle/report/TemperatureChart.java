package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;

/**
 * Lines over days, drawn natively by each writer.
 *
 * @param title above it
 * @param axis label of the temperature axis, with unit
 * @param days along the other axis
 * @param lines one or more, each as long as {@code days}
 */
public record TemperatureChart(String title, String axis, List<LocalDate> days, List<Line> lines) {
  /**
   * One line.
   *
   * @param name in the legend
   * @param values one a day
   */
  public record Line(String name, List<Double> values) {
    public Line {
      values = List.copyOf(values);
    }
  }

  public TemperatureChart {
    days = List.copyOf(days);
    lines = List.copyOf(lines);
  }
}
