package org.hibernacle.input;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hibernacle.model.Phrase;

/**
 * A cell as it was found.
 *
 * @param address {@code C7}, or a line and heading in a text file
 * @param value a {@link String} (stripped, may be empty), {@link Double}, {@link
 *     java.time.LocalDate} or {@link Boolean}; of an error also a {@link Phrase}
 * @param state whether the value can be used
 */
record FoundCell(String address, Object value, State state) {
  /** Whether the value can be used. */
  enum State {
    TYPED,
    /** The stored result of a formula. */
    FORMULA,
    /** A formula whose result was never stored. */
    FORMULA_WITHOUT_VALUE,
    /** {@code #REF!} and the like, as text in the value. */
    ERROR
  }

  /** Most characters of a text that a message repeats. */
  private static final int SHOWN = 60;

  /** From here on a number is written with its power of ten. */
  private static final double LONG_NUMBER = 1e15;

  static FoundCell typed(String address, Object value) {
    return new FoundCell(address, value, State.TYPED);
  }

  boolean isBlank() {
    return value.equals("") && (state == State.TYPED || state == State.FORMULA);
  }

  boolean isUsable() {
    return state == State.TYPED || state == State.FORMULA;
  }

  /** The value as it is carried along. */
  Object carried() {
    return value instanceof Phrase phrase ? phrase.toString() : value;
  }

  /** The value as the keeper would read it; whole numbers without decimals. */
  String text() {
    return value instanceof Double number ? plain(number) : value.toString();
  }

  /** The beginning of a text that is too long for a message. */
  static String shortened(String text) {
    return text.length() <= SHOWN ? text : text.substring(0, SHOWN).strip() + "…";
  }

  /** A number without needless zeros, at most six decimals, with a point in every locale. */
  static String plain(double number) {
    if (!Double.isFinite(number) || Math.abs(number) >= LONG_NUMBER) {
      return Double.toString(number);
    }
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(6, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
