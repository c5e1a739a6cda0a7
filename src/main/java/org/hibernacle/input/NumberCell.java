package org.hibernacle.input;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads a temperature, whichever mark its decimals have, and knows the signs for "no reading". */
final class NumberCell {
  /** More figures than that do not fit into a double without rounding. */
  private static final int MOST_EXACT = 15;

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
    OptionalDouble number = number(cell);
    return number.isPresent()
        ? Math.abs(number.getAsDouble()) > 99 && MISSING_FIGURES.contains(number.getAsDouble())
        : MISSING_WORDS.contains(cell.toLowerCase(Locale.ROOT));
  }

  /** The number in the cell; empty if it is none. By hand, since files have millions of them. */
  static OptionalDouble number(String cell) {
    boolean negative = !cell.isEmpty() && (cell.charAt(0) == '-' || cell.charAt(0) == '\u2212');
    boolean signed = negative || cell.startsWith("+");
    long figures = 0;
    int count = 0;
    double scale = 0;
    for (int i = signed ? 1 : 0; i < cell.length(); i++) {
      char next = cell.charAt(i);
      if (next >= '0' && next <= '9') {
        figures = 10 * figures + next - '0';
        count++;
        scale *= 10;
      } else if ((next == '.' || next == ',') && scale == 0) {
        scale = 1;
      } else {
        return OptionalDouble.empty();
      }
    }
    if (count == 0) {
      return OptionalDouble.empty();
    }
    if (count > MOST_EXACT) {
      String plain = cell.replace('\u2212', '-').replace(',', '.');
      return OptionalDouble.of(Double.parseDouble(plain));
    }
    double number = scale > 1 ? figures / scale : figures;
    return OptionalDouble.of(negative ? -number : number);
  }
}
