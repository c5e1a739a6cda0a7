package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date in figures, or with the name of its month, after which a time may follow.
 *
 * @param shown as a keeper would write it
 * @param shape with groups {@code y}, {@code m} and {@code d}, and {@code h} and {@code n} where
 *     the time is part of the figures
 * @param timed whether it has the latter two
 */
record DatePattern(String shown, Pattern shape, boolean timed) implements DateRule {
  private static final String Y = "(?<y>\\d{4})";
  private static final String M = "(?<m>\\d{1,2})";
  private static final String NAME = "(?<m>\\p{L}{3,10}\\.?)";
  private static final String D = "(?<d>\\d{1,2})";

  /** Ways that a file may be found to use. */
  static final List<DateRule> USUAL =
      List.of(
          of("yyyy-MM-dd", Y + "-" + M + "-" + D),
          of("yyyyMMdd", Y + "(?<m>\\d{2})(?<d>\\d{2})"),
          of("yyyy/MM/dd", Y + "/" + M + "/" + D),
          of("yyyy.MM.dd", Y + "\\." + M + "\\." + D),
          of("dd.MM.yyyy", D + "\\." + M + "\\." + Y),
          of("dd/MM/yyyy", D + "/" + M + "/" + Y),
          of("MM/dd/yyyy", M + "/" + D + "/" + Y),
          of("dd-MM-yyyy", D + "-" + M + "-" + Y),
          of("MM-dd-yyyy", M + "-" + D + "-" + Y),
          of("dd-MMM-yyyy", D + "[-/. ]+" + NAME + "[-/, ]*" + Y),
          of("MMM dd, yyyy", NAME + " +" + D + ",? +" + Y),
          of("yyyyMMddHH", Y + "(?<m>\\d{2})(?<d>\\d{2})(?<h>\\d{2})(?<n>)"),
          of("yyyyMMddHHmm", Y + "(?<m>\\d{2})(?<d>\\d{2})(?<h>\\d{2})(?<n>\\d{2})"),
          new EpochRule("seconds since 1970", 10, 1),
          new EpochRule("milliseconds since 1970", 13, 1000));

  /** And those that only a layout of its own names. */
  static final List<DateRule> ALL = all();

  private static List<DateRule> all() {
    List<DateRule> all = new ArrayList<>(USUAL);
    all.add(of("dd-MMM-yy", D + "[-/. ]+" + NAME + "[-/. ]*(?<y>\\d{2})"));
    return List.copyOf(all);
  }

  private static DatePattern of(String shown, String regex) {
    return new DatePattern(shown, Pattern.compile(regex), regex.contains("<h>"));
  }

  @Override
  public Optional<Stamp> read(String cell) {
    Matcher date = shape.matcher(cell);
    if (!date.lookingAt()) {
      return Optional.empty();
    }
    Optional<Stamp> stamp = day(date).map(Stamp::of);
    if (timed) {
      return date.end() == cell.length()
          ? TimeOfDay.of(date.group("h") + date.group("n"))
              .flatMap(time -> stamp.map(s -> s.at(time)))
          : Optional.empty();
    }
    return date.end() == cell.length()
        ? stamp
        : stamp.flatMap(s -> timed(s.day(), cell, date.end()));
  }

  /** Where the date ends in a cell that begins with one. */
  int end(String cell) {
    Matcher date = shape.matcher(cell);
    return date.lookingAt() ? date.end() : 0;
  }

  /** That day with the time that follows in the cell from {@code end} on; empty if none does. */
  static Optional<Stamp> timed(LocalDate day, String cell, int end) {
    char between = cell.charAt(end);
    return between == 'T' || between == 't' || Character.isWhitespace(between)
        ? TimeOfDay.of(cell.substring(end + 1).strip()).map(time -> Stamp.of(day).at(time))
        : Optional.empty();
  }

  private static Optional<LocalDate> day(Matcher date) {
    int year = part(date, "y");
    if (date.group("y").length() == 2) {
      year = Years.ofTwoDigits(year);
    }
    OptionalInt month =
        Character.isDigit(date.group("m").charAt(0))
            ? OptionalInt.of(part(date, "m"))
            : MonthNames.number(date.group("m"));
    if (month.isEmpty() || !Years.plausible(year)) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.of(year, month.getAsInt(), part(date, "d")));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int part(Matcher date, String name) {
    return Integer.parseInt(date.group(name));
  }
}
