package org.hibernacle.input;

import java.util.Collection;
import org.hibernacle.model.DailyExtremes;

/**
 * Extremes of some hours of a day.
 *
 * @param hours that they cover, 1 to 23
 * @param minC lowest air, °C
 * @param maxC highest air, °C
 */
record PartOfDay(int hours, double minC, double maxC) {
  /** Of all parts together; at least one. */
  static DailyExtremes extremes(Collection<PartOfDay> parts) {
    return new DailyExtremes(
        parts.stream().mapToDouble(PartOfDay::minC).min().orElseThrow(),
        parts.stream().mapToDouble(PartOfDay::maxC).max().orElseThrow());
  }
}
