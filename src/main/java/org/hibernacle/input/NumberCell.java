package org.hibernacle.input;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads a temperature, whichever mark its decimals have, and knows the signs for "no reading". */
final class NumberCell {
  private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)");

  /** Words and strokes. */
  private static final Set<String> MISSING_WORDS =
      Set.of(
          "",
          "-",
          "--",
          "---",
          "m",
          "na",
          "n/a",
          "nan",
          "null",
          "none",
          "*",
          "x",
          "×",
          "///",
          "err",
          "error",
          "unavailable",
          "unknown");

  /** Figures that no thermometer shows, in either unit. */
  private static final Set<Double> MISSING_FIGURES =
      Set.of(-999.0, -999.9, -9999.0, -9999.9, 9999.0, 999.9, 99999.0, -99.9, 32767.0);

  private NumberCell() {}

  /** Whether the cell says that there is no reading. */
  static boolean missing(String cell) {
    if (MISSING_WORDS.contains(cell.toLowerCase(Locale.ROOT))) {
      return true;
    }
    OptionalDouble number = number(cell);
    return number.isPresent() && MISSING_FIGURES.contains(number.getAsDouble());
  }

  /** The number in the cell; empty if it is none. */
  static OptionalDouble number(String cell) {
    String plain = cell.replace('\u2212', '-');
    return NUMBER.matcher(plain).matches()
        ? OptionalDouble.of(Double.parseDouble(plain.replace(',', '.')))
        : OptionalDouble.empty();
  }
}
