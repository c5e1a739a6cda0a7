package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date in figures with a four-digit year, after which a time may follow.
 *
 * @param shown as a keeper would write it
 * @param shape with groups {@code y}, {@code m} and {@code d}
 */
record DatePattern(String shown, Pattern shape) implements DateRule {
  private static final Pattern TIME_FOLLOWS = Pattern.compile("[Tt\\s]\\s*");

  static final DatePattern ISO = of("yyyy-MM-dd", "(?<y>\\d{4})-(?<m>\\d{1,2})-(?<d>\\d{1,2})");
  static final DatePattern COMPACT = of("yyyyMMdd", "(?<y>\\d{4})(?<m>\\d{2})(?<d>\\d{2})");
  static final DatePattern YEAR_SLASH =
      of("yyyy/MM/dd", "(?<y>\\d{4})/(?<m>\\d{1,2})/(?<d>\\d{1,2})");
  static final DatePattern DAY_DOT =
      of("dd.MM.yyyy", "(?<d>\\d{1,2})\\.(?<m>\\d{1,2})\\.(?<y>\\d{4})");
  static final DatePattern DAY_SLASH =
      of("dd/MM/yyyy", "(?<d>\\d{1,2})/(?<m>\\d{1,2})/(?<y>\\d{4})");
  static final DatePattern MONTH_SLASH =
      of("MM/dd/yyyy", "(?<m>\\d{1,2})/(?<d>\\d{1,2})/(?<y>\\d{4})");
  static final DatePattern DAY_DASH =
      of("dd-MM-yyyy", "(?<d>\\d{1,2})-(?<m>\\d{1,2})-(?<y>\\d{4})");
  static final DatePattern MONTH_DASH =
      of("MM-dd-yyyy", "(?<m>\\d{1,2})-(?<d>\\d{1,2})-(?<y>\\d{4})");

  static final List<DatePattern> ALL =
      List.of(ISO, COMPACT, YEAR_SLASH, DAY_DOT, DAY_SLASH, MONTH_SLASH, DAY_DASH, MONTH_DASH);

  private static DatePattern of(String shown, String regex) {
    return new DatePattern(shown, Pattern.compile(regex));
  }

  @Override
  public Optional<Stamp> read(String cell) {
    Matcher date = shape.matcher(cell);
    if (!date.lookingAt()) {
      return Optional.empty();
    }
    Optional<Stamp> stamp = day(date).map(day -> new Stamp(day, OptionalInt.empty()));
    if (date.end() == cell.length()) {
      return stamp;
    }
    Matcher gap = TIME_FOLLOWS.matcher(cell).region(date.end(), cell.length());
    if (!gap.lookingAt()) {
      return Optional.empty();
    }
    OptionalInt second = TimeOfDay.second(cell.substring(gap.end()));
    return second.isPresent() ? stamp.map(s -> s.at(second)) : Optional.empty();
  }

  private static Optional<LocalDate> day(Matcher date) {
    try {
      return Optional.of(LocalDate.of(part(date, "y"), part(date, "m"), part(date, "d")));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int part(Matcher date, String name) {
    return Integer.parseInt(date.group(name));
  }
}
