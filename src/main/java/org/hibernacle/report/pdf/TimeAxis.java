package org.hibernacle.report.pdf;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Days from left to right.
 *
 * @param from first day, at {@code left}
 * @param toExclusive day after the last, at {@code left + width}
 * @param left in points
 * @param width in points
 */
record TimeAxis(LocalDate from, LocalDate toExclusive, float left, float width) {
  /** Where a day begins; days outside stand at the nearer end. */
  float x(LocalDate day) {
    long days = ChronoUnit.DAYS.between(from, toExclusive);
    long at = Math.max(0, Math.min(days, ChronoUnit.DAYS.between(from, day)));
    return left + width * at / days;
  }

  /** First days of the months on the axis; the first one is the axis's own first day. */
  List<LocalDate> months() {
    List<LocalDate> months = new ArrayList<>();
    for (LocalDate month = from;
        month.isBefore(toExclusive);
        month = month.withDayOfMonth(1).plusMonths(1)) {
      months.add(month);
    }
    return months;
  }

  /** The name of a month, with its year where one begins and there is room for it. */
  String name(LocalDate month, Typefaces type, Style style, Locale language) {
    float room = x(month.withDayOfMonth(1).plusMonths(1)) - x(month) - 2;
    List<String> patterns = new ArrayList<>(List.of("LLL", "LLLLL"));
    if (month.equals(from) || month.getMonthValue() == 1) {
      patterns.add(0, "LLL yyyy");
    }
    for (String pattern : patterns) {
      String name = DateTimeFormatter.ofPattern(pattern, language).format(month);
      if (type.width(name, style) <= room) {
        return name;
      }
    }
    return "";
  }
}
