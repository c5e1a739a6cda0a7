package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.input.CsvLayout.Shape;

/** Tables with a column for each day of the month, or for each month of the year. */
final class WideTable {
  private static final Pattern DAY = Pattern.compile("(?:d|day|tag|value)?0?(\\d{1,2})");

  private WideTable() {}

  /** Columns of the days 1 to 31, or of the months 1 to 12, in that order; empty if any lacks. */
  static List<Integer> parts(Shape shape, List<CsvHeading> headings) {
    if (!shape.wide()) {
      return List.of();
    }
    int count = shape == Shape.MONTH ? 31 : 12;
    List<Integer> parts = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      for (int i = 0; i < headings.size() && parts.size() < number; i++) {
        OptionalInt found = number(shape, headings.get(i).key());
        if (found.isPresent() && found.getAsInt() == number) {
          parts.add(i);
        }
      }
    }
    return parts.size() == count ? parts : List.of();
  }

  private static OptionalInt number(Shape shape, String key) {
    if (shape == Shape.DAYNUMBER) {
      return MonthNames.number(key);
    }
    Matcher day = DAY.matcher(key);
    return day.matches() ? OptionalInt.of(Integer.parseInt(day.group(1))) : OptionalInt.empty();
  }
}
