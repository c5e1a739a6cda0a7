package org.hibernacle.input;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.hibernacle.model.Phrase;

/**
 * Time counted from midnight at Greenwich on 1 January 1970, as data bases and loggers keep it.
 *
 * @param shown in English words, as layouts name it
 * @param digits that such a count has between 2001 and 2286
 * @param perSecond counts in a second
 */
record EpochRule(String shown, int digits, int perSecond) implements DateRule {
  private static final Pattern COUNT = Pattern.compile("\\d{10}(?:\\d{3})?(?:\\.0+)?");

  @Override
  public Phrase told() {
    return Phrase.of(perSecond == 1 ? "seconds-since-1970" : "milliseconds-since-1970");
  }

  @Override
  public Optional<Stamp> read(String cell) {
    String whole = cell.replaceFirst("\\.0+$", "");
    if (!COUNT.matcher(cell).matches() || whole.length() != digits || whole.charAt(0) == '0') {
      return Optional.empty();
    }
    long second = Long.parseLong(whole) / perSecond;
    LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(second, Stamp.DAY_S));
    int ofDay = Math.floorMod(second, Stamp.DAY_S);
    return Optional.of(new Stamp(day, OptionalInt.of(ofDay), OptionalInt.of(0)));
  }
}
