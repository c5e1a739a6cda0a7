package org.hibernacle.input;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Days counted as spreadsheets do, 1 January 1900 being day 1 with a 29 February in 1900 that never
 * was, so that the count starts from 30 December 1899 for all days since (ECMA-376, part 1,
 * 18.17.4.1).
 */
record DayNumber() implements DateRule {
  /** As given to {@code --date-format}. */
  static final String OPTION = "day-number";

  private static final Pattern COUNT = Pattern.compile("[2-9]\\d{4}(?:[.,]\\d+)?");
  private static final LocalDate START = LocalDate.of(1899, 12, 30);

  /** Whether a cell could be such a number. */
  static boolean looksLike(String cell) {
    return COUNT.matcher(cell).matches();
  }

  @Override
  public String shown() {
    return OPTION;
  }

  @Override
  public Optional<Stamp> read(String cell) {
    if (!looksLike(cell)) {
      return Optional.empty();
    }
    double number = Double.parseDouble(cell.replace(',', '.'));
    long seconds = Math.round(number * Stamp.DAY_S);
    LocalDate day = START.plusDays(Math.floorDiv(seconds, Stamp.DAY_S));
    boolean timed = cell.contains(".") || cell.contains(",");
    return Optional.of(
        timed
            ? new Stamp(
                day, OptionalInt.of(Math.floorMod(seconds, Stamp.DAY_S)), OptionalInt.empty())
            : Stamp.of(day));
  }
}
