package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Dates written as the keeper says. Month names are English; a two-digit year lies in 1969 to 2068.
 *
 * @param shown the letters given, such as {@code d.M.yy HH:mm}
 * @param formatter made of them
 */
record GivenDateFormat(String shown, DateTimeFormatter formatter) implements DateRule {

  private static final LocalDateTime EXAMPLE = LocalDateTime.of(2025, 1, 14, 6, 30);

  /** A rule of letters, or one of the words for counted time; throws if it is neither. */
  static DateRule rule(String given) {
    if (given.equalsIgnoreCase(DayNumber.OPTION)) {
      return new DayNumber();
    }
    return of(given);
  }

  /** Throws {@link IllegalArgumentException} for letters that do not make up a date. */
  static GivenDateFormat of(String letters) {
    // "y" counts years of an era and would ask for the era too; keepers mean the year.
    String[] parts = letters.replace('y', 'u').split("(?<!u)uu(?!u)", -1);
    DateTimeFormatterBuilder builder = new DateTimeFormatterBuilder().parseCaseInsensitive();
    for (int i = 0; i < parts.length; i++) {
      if (i > 0) {
        builder.appendValueReduced(ChronoField.YEAR, 2, 2, Years.ofTwoDigits(69));
      }
      builder.appendPattern(parts[i]);
    }
    DateTimeFormatter formatter =
        builder.toFormatter(Locale.ENGLISH).withResolverStyle(ResolverStyle.STRICT);
    try {
      LocalDate.from(formatter.parse(formatter.format(EXAMPLE)));
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("no date in " + letters, e);
    }
    return new GivenDateFormat(letters, formatter);
  }

  @Override
  public Optional<Stamp> read(String cell) {
    Optional<Stamp> whole = parse(cell);
    int gap = Math.max(cell.indexOf(' '), cell.indexOf('T'));
    if (whole.isPresent() || gap < 0) {
      return whole;
    }
    return TimeOfDay.of(cell.substring(gap + 1))
        .flatMap(time -> parse(cell.substring(0, gap)).map(s -> s.at(time)));
  }

  private Optional<Stamp> parse(String text) {
    try {
      TemporalAccessor parsed = formatter.parseBest(text, LocalDateTime::from, LocalDate::from);
      if (parsed instanceof LocalDateTime moment) {
        int second = moment.toLocalTime().toSecondOfDay();
        return Optional.of(
            new Stamp(moment.toLocalDate(), OptionalInt.of(second), OptionalInt.empty()));
      }
      return Optional.of(Stamp.of(LocalDate.from(parsed)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
