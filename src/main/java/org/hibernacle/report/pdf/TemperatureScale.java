package org.hibernacle.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.report.TemperatureChart;

/**
 * A round scale, in the chart's unit.
 *
 * @param low a multiple of the step, at or below all values
 * @param high a multiple of the step, at or above all values, above {@code low}
 * @param step between ticks
 */
record TemperatureScale(double low, double high, double step) {
  private static final double[] STEPS = {1, 2, 5, 10, 20, 50};
  private static final int MOST_TICKS = 9;

  /** The narrowest round scale that holds the lines. */
  static TemperatureScale over(List<TemperatureChart.Line> lines) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (TemperatureChart.Line line : lines) {
      for (double value : line.values()) {
        if (Double.isFinite(value)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
    }
    for (double step : STEPS) {
      TemperatureScale scale = round(low, high, step);
      if (scale.ticks().size() <= MOST_TICKS) {
        return scale;
      }
    }
    return round(low, high, high - low);
  }

  private static TemperatureScale round(double low, double high, double step) {
    double floor = Math.floor(low / step) * step;
    double ceiling = Math.ceil(high / step) * step;
    return new TemperatureScale(floor, ceiling > floor ? ceiling : floor + step, step);
  }

  /** From low to high, both included. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    long count = Math.round((high - low) / step);
    for (int i = 0; i <= count; i++) {
      ticks.add(low + i * step);
    }
    return ticks;
  }

  /** How far up the scale that value lies, 0..1. */
  double share(double value) {
    return (value - low) / (high - low);
  }
}
