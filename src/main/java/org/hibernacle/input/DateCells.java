package org.hibernacle.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.Phrase;

/**
 * Reads when a row was measured, from one column or from several.
 *
 * @param columns of the file
 * @param rule of its dates; empty where year, month and day have columns of their own
 */
record DateCells(CsvColumns columns, Optional<DateRule> rule) {
  private static final Pattern YEAR = Pattern.compile("(\\d{4})(?:\\.0+)?");
  private static final Pattern SMALL = Pattern.compile("(\\d{1,3})(?:\\.0+)?");

  /** The way dates are written, for messages. */
  Phrase shown() {
    if (rule.isPresent()) {
      return rule.get().told();
    }
    return Phrase.of(columns.has(Role.DAY_OF_YEAR) ? "year-and-day" : "year-month-day");
  }

  /** The column that messages name. */
  Role role() {
    return rule.isPresent() ? Role.DATE : Role.YEAR;
  }

  /** The date, and the time where the row has one; empty if either can not be read. */
  Optional<Stamp> read(CsvText.Row row) {
    Optional<Stamp> day =
        rule.isPresent()
            ? rule.get().read(columns.cell(Role.DATE, row).orElse(""))
            : split(row).map(Stamp::of);
    boolean utc = columns.layout().utc();
    return day.map(stamp -> utc ? stamp.orUtc() : stamp);
  }

  private Optional<LocalDate> split(CsvText.Row row) {
    if (columns.has(Role.DAY_OF_YEAR)) {
      OptionalInt year = year(row);
      OptionalInt day = small(row, Role.DAY_OF_YEAR);
      try {
        return year.isPresent() && day.isPresent()
            ? Optional.of(LocalDate.ofYearDay(year.getAsInt(), day.getAsInt()))
            : Optional.empty();
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }
    return day(year(row), month(row), small(row, Role.DAY));
  }

  OptionalInt year(CsvText.Row row) {
    OptionalInt year = number(YEAR, columns.cell(Role.YEAR, row).orElse(""));
    return year.isPresent() && Years.plausible(year.getAsInt()) ? year : OptionalInt.empty();
  }

  /** In figures or by its name. */
  OptionalInt month(CsvText.Row row) {
    OptionalInt number = small(row, Role.MONTH);
    return number.isPresent()
        ? number
        : MonthNames.number(columns.cell(Role.MONTH, row).orElse(""));
  }

  OptionalInt small(CsvText.Row row, Role role) {
    return number(SMALL, columns.cell(role, row).orElse(""));
  }

  /** That day; empty if a part is missing or there is no such day. */
  static Optional<LocalDate> day(OptionalInt year, OptionalInt month, OptionalInt day) {
    try {
      return year.isPresent() && month.isPresent() && day.isPresent()
          ? Optional.of(LocalDate.of(year.getAsInt(), month.getAsInt(), day.getAsInt()))
          : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static OptionalInt number(Pattern shape, String cell) {
    Matcher match = shape.matcher(cell);
    return match.matches() ? OptionalInt.of(Integer.parseInt(match.group(1))) : OptionalInt.empty();
  }
}
