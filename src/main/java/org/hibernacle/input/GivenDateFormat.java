package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Dates written as the keeper says. Month names are English; a two-digit year lies in 2000 to 2099.
 *
 * @param shown the letters given, such as {@code d.M.yy HH:mm}
 * @param formatter made of them
 */
record GivenDateFormat(String shown, DateTimeFormatter formatter) implements DateRule {

  private static final LocalDateTime EXAMPLE = LocalDateTime.of(2025, 1, 14, 6, 30);

  /** Throws {@link IllegalArgumentException} for letters that do not make up a date. */
  static GivenDateFormat of(String letters) {
    // "y" counts years of an era and would ask for the era too; keepers mean the year.
    DateTimeFormatter formatter =
        new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .appendPattern(letters.replace('y', 'u'))
            .toFormatter(Locale.ENGLISH)
            .withResolverStyle(ResolverStyle.STRICT);
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
    OptionalInt second = TimeOfDay.second(cell.substring(gap + 1));
    return second.isPresent()
        ? parse(cell.substring(0, gap)).map(s -> s.at(second))
        : Optional.empty();
  }

  private Optional<Stamp> parse(String text) {
    try {
      TemporalAccessor parsed = formatter.parseBest(text, LocalDateTime::from, LocalDate::from);
      if (parsed instanceof LocalDateTime moment) {
        int second = moment.toLocalTime().toSecondOfDay();
        return Optional.of(new Stamp(moment.toLocalDate(), OptionalInt.of(second)));
      }
      return Optional.of(new Stamp(LocalDate.from(parsed), OptionalInt.empty()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
