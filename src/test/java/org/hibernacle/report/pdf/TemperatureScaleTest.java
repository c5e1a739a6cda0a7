package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hibernacle.report.TemperatureChart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected scales worked out by hand: the first of 1, 2, 5, 10 ... with at most nine ticks. */
class TemperatureScaleTest {
  @ParameterizedTest
  @CsvSource({
    "-10.4, 18.2, -15, 20, 5",
    "-3.2, 4.1, -4, 6, 2",
    "1.2, 6.9, 1, 7, 1",
    "-40, 100, -40, 100, 20",
    "5, 5, 5, 6, 1",
    "-300, 900, -1200, 1200, 1200"
  })
  void isRoundAndHoldsAllValues(double min, double max, double low, double high, double step) {
    TemperatureScale scale = TemperatureScale.over(List.of(line(min, max)));
    assertEquals(new TemperatureScale(low, high, step), scale);
    assertTrue(scale.ticks().size() <= 9);
    assertEquals(low, scale.ticks().get(0));
    assertEquals(high, scale.ticks().get(scale.ticks().size() - 1));
  }

  @Test
  void aGapInALineDoesNotCount() {
    TemperatureScale scale = TemperatureScale.over(List.of(line(1, Double.NaN), line(3, 7)));
    assertEquals(new TemperatureScale(1, 7, 1), scale);
    assertEquals(0.5, scale.share(4));
  }

  private static TemperatureChart.Line line(double a, double b) {
    return new TemperatureChart.Line("air", List.of(a, b));
  }
}
