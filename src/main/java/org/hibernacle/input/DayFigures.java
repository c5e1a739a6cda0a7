package org.hibernacle.input;

import java.util.OptionalDouble;
import org.hibernacle.model.Phrase;

/**
 * What is known of a day so far.
 *
 * @param minC lowest air, °C
 * @param maxC highest air, °C
 */
record DayFigures(OptionalDouble minC, OptionalDouble maxC) {
  static final DayFigures NONE = new DayFigures(OptionalDouble.empty(), OptionalDouble.empty());

  boolean contradicts(DayFigures more) {
    return differ(minC, more.minC) || differ(maxC, more.maxC);
  }

  private static boolean differ(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent() && one.getAsDouble() != other.getAsDouble();
  }

  /** Whether all of the other is known here. */
  boolean says(DayFigures more) {
    return (more.minC.isEmpty() || minC.equals(more.minC))
        && (more.maxC.isEmpty() || maxC.equals(more.maxC));
  }

  /** Both together; of what both know, the older. */
  DayFigures with(DayFigures more) {
    return new DayFigures(minC.isPresent() ? minC : more.minC, maxC.isPresent() ? maxC : more.maxC);
  }

  /** {@code -3 to 2 °C}. */
  Phrase shown() {
    if (minC.isPresent() && maxC.isPresent()) {
      return Phrase.of("min-to-max", round(minC.getAsDouble()), round(maxC.getAsDouble()));
    }
    return minC.isPresent()
        ? Phrase.of("a-lowest", round(minC.getAsDouble()))
        : Phrase.of("a-highest", round(maxC.getAsDouble()));
  }

  /** To a hundredth. */
  static double round(double value) {
    return Math.round(value * 100) / 100.0;
  }
}
