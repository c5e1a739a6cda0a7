package org.hibernacle.input;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The marks beside values, and which of them mean that a value must not be used.
 *
 * @param carrier whether a value carries its own mark
 * @param part of the mark, between commas, that counts, from 1; 0 if all of it does
 * @param drop the marks; {@code any} for every one
 */
record MarkRule(Carrier carrier, int part, Set<String> drop) {
  static final MarkRule NONE = new MarkRule(Carrier.NONE, 0, Set.of());

  private static final Pattern WITH_LETTER = Pattern.compile("([+-]?[0-9.,]+)([A-Za-z*])");

  /** How a value carries a mark. */
  enum Carrier {
    NONE,
    /** Behind a comma: {@code +0050,1}. */
    COMMA,
    /** A letter behind the figure: {@code 34s}. */
    LETTER
  }

  /**
   * A cell taken apart.
   *
   * @param value the figure or a sign for none
   * @param mark empty if there is none
   */
  record Marked(String value, String mark) {}

  MarkRule {
    drop = Set.copyOf(drop);
  }

  /** Parts a value from its own mark, or from that of the column beside it. */
  Marked of(String cell, Optional<String> beside) {
    if (carrier == Carrier.COMMA && cell.contains(",")) {
      int comma = cell.indexOf(',');
      return new Marked(cell.substring(0, comma).strip(), cell.substring(comma + 1).strip());
    }
    if (carrier == Carrier.LETTER) {
      Matcher letter = WITH_LETTER.matcher(cell);
      if (letter.matches()) {
        return new Marked(letter.group(1), letter.group(2));
      }
    }
    return new Marked(cell, beside.map(this::counting).orElse(""));
  }

  /** Whether a value with that mark must not be used. */
  boolean drops(String mark) {
    return !mark.isEmpty() && (drop.contains("any") || drop.contains(mark));
  }

  private String counting(String mark) {
    if (part == 0) {
      return mark;
    }
    String[] parts = mark.split(",", -1);
    return parts.length < part ? "" : parts[part - 1].strip();
  }

  /** The figure of a cell of such a layout, mark aside; empty if there is none. */
  OptionalDouble number(String cell) {
    return NumberCell.number(of(cell, Optional.empty()).value());
  }
}
