package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a day written as text, if it can mean one day only: the year in front, or the month by its
 * English name. {@code 1/10/2026} is October to some and January to others and is not read.
 */
final class DayText {
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})\\.?");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th|\\.)?[ -]+(\\p{L}{3,9})\\.?,?[ -]+(\\d{4})");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("(\\p{L}{3,9})\\.? +(\\d{1,2})(?:st|nd|rd|th)?,? +(\\d{4})");

  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  private DayText() {}

  /** The day; empty if the text is none, or could be two. */
  static Optional<LocalDate> read(String text) {
    String plain = text.strip();
    Matcher yearFirst = YEAR_FIRST.matcher(plain);
    if (yearFirst.matches()) {
      return day(yearFirst.group(1), Integer.parseInt(yearFirst.group(3)), yearFirst.group(4));
    }
    Matcher dayFirst = DAY_FIRST.matcher(plain);
    if (dayFirst.matches()) {
      return day(dayFirst.group(3), month(dayFirst.group(2)), dayFirst.group(1));
    }
    Matcher monthFirst = MONTH_FIRST.matcher(plain);
    return monthFirst.matches()
        ? day(monthFirst.group(3), month(monthFirst.group(1)), monthFirst.group(2))
        : Optional.empty();
  }

  /** From 1; 0 if it is no month. {@code Sept} is as common as {@code Sep}. */
  private static int month(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).startsWith(small)) {
        return i + 1;
      }
    }
    return 0;
  }

  private static Optional<LocalDate> day(String year, int month, String day) {
    try {
      return Optional.of(LocalDate.of(Integer.parseInt(year), month, Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
