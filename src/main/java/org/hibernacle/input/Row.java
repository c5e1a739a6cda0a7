package org.hibernacle.input;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hibernacle.input.Quantity.Unit;
import org.hibernacle.model.Phrase;

/**
 * One row of a sheet (or all of Settings), read value by value. Whatever can not be read becomes an
 * error with its cell and comes back empty; a default is counted as a note.
 */
final class Row {
  /**
   * One cell with what its heading says.
   *
   * @param heading as written
   * @param unit of its numbers
   * @param cell as found
   */
  record Entry(String heading, Unit unit, FoundCell cell) {}

  private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+[.,]?\\d*|[.,]\\d+)");

  private static final Pattern SPACES = Pattern.compile("\\s+");

  /** {@code 1,500}: a thousand and a half to some, one and a half to others. */
  private static final Pattern IN_DOUBT = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

  private final Phrase sheetWhere;
  private final Phrase rowName;
  private final Map<Column, Entry> entries;
  private final Problems problems;
  private final Tally tally;
  private final Tally.Noun noun;
  private final Set<Column> failed = EnumSet.noneOf(Column.class);

  Row(
      Phrase sheetWhere,
      Phrase rowName,
      Map<Column, Entry> entries,
      Problems problems,
      Tally tally,
      Tally.Noun noun) {
    this.sheetWhere = sheetWhere;
    this.rowName = rowName;
    this.entries = entries;
    this.problems = problems;
    this.tally = tally;
    this.noun = noun;
  }

  /** The same row, counted in notes under another noun. */
  Row countedAs(Tally.Noun other) {
    return new Row(sheetWhere, rowName, entries, problems, tally, other);
  }

  /** File, sheet and cell; the row where there is no such column. */
  private Phrase where(Column column) {
    return Phrase.of("where.in", sheetWhere, spot(column));
  }

  /** The cell; the row where there is no such column. */
  Object spot(Column column) {
    Entry entry = entries.get(column);
    return entry == null ? rowName : entry.cell().address();
  }

  boolean isBlank(Column column) {
    Entry entry = entries.get(column);
    return entry == null || entry.cell().isBlank();
  }

  /** Whether one of the columns has had an error so far. */
  boolean failed(Column... columns) {
    return Arrays.stream(columns).anyMatch(failed::contains);
  }

  /** Name of a column as the keeper wrote it. */
  String heading(Column column) {
    Entry entry = entries.get(column);
    return entry == null ? column.heading() : entry.heading();
  }

  /** The cell as text on one line; empty text where there is nothing. */
  String text(Column column) {
    return usable(column).map(Row::text).orElse("");
  }

  private static String text(Entry entry) {
    return SPACES.matcher(entry.cell().text()).replaceAll(" ");
  }

  /** The cell as text, or an error where there is nothing. */
  Optional<String> required(Column column, String key) {
    if (isBlank(column)) {
      missing(key, column);
      return Optional.empty();
    }
    return usable(column).map(Row::text);
  }

  /**
   * Reports that nothing stands in a column that is needed.
   *
   * @param key of the message, whose first argument is the heading
   * @param more arguments
   */
  void missing(String key, Column column, Object... more) {
    failed.add(column);
    problems.error(key, where(column), with(more, heading(column)));
  }

  /**
   * Reports a value that was read but can not be right.
   *
   * @param key of the message, whose first arguments are the heading and the value
   * @param more arguments
   */
  void error(String key, Column column, Object... more) {
    failed.add(column);
    problems.error(key, where(column), with(more, heading(column), shown(column)));
  }

  /** Reports a value together with what is used instead; the arguments are those of an error. */
  void warning(String key, Column column, Object... more) {
    problems.warning(key, where(column), with(more, heading(column), shown(column)));
  }

  /** Counts a note on this sheet. */
  void note(String key, Object... arguments) {
    tally.add(key, sheetWhere, noun, arguments);
  }

  private String shown(Column column) {
    return FoundCell.shortened(text(column));
  }

  private static Object[] with(Object[] more, Object... first) {
    return Stream.concat(Arrays.stream(first), Arrays.stream(more)).toArray();
  }

  /**
   * A number in our unit.
   *
   * @param low smallest allowed, in our unit
   * @param high largest allowed, in our unit
   */
  OptionalDouble number(Column column, double low, double high) {
    Optional<Entry> entry = usable(column);
    if (entry.isEmpty()) {
      return OptionalDouble.empty();
    }
    Unit unit = entry.get().unit();
    OptionalDouble written = numberAsWritten(column, entry.get());
    if (written.isPresent()) {
      double ours = unit.toOurs(written.getAsDouble());
      if (ours >= low - 1e-9 && ours <= high + 1e-9) {
        return OptionalDouble.of(ours);
      }
    }
    error(
        written.isPresent() ? "IN-120.outside" : "IN-120.no-number",
        column,
        rounded(unit.fromOurs(low)),
        rounded(unit.fromOurs(high)),
        unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    return OptionalDouble.empty();
  }

  private static double rounded(double bound) {
    return Math.round(bound * 100) / 100.0;
  }

  private OptionalDouble numberAsWritten(Column column, Entry entry) {
    if (entry.cell().value() instanceof Double number) {
      return OptionalDouble.of(number);
    }
    String text = entry.cell().text().replace('\u2212', '-');
    if (!NUMBER.matcher(text).matches() || IN_DOUBT.matcher(text).matches()) {
      return OptionalDouble.empty();
    }
    note(Code.NUMBER_AS_TEXT, heading(column));
    return OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
  }

  /** A number in our unit, or the default, which is noted. */
  double number(Column column, double low, double high, double otherwise) {
    if (isBlank(column)) {
      String symbol = column.quantity().ours().symbol();
      useDefault(column, symbol.isEmpty() ? otherwise : Phrase.of("quantity", otherwise, symbol));
    }
    return number(column, low, high).orElse(otherwise);
  }

  /** A whole number. */
  OptionalInt whole(Column column, int low, int high) {
    OptionalDouble number = number(column, low, high);
    if (number.isEmpty()) {
      return OptionalInt.empty();
    }
    if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
      error("IN-120.whole", column, low, high);
      return OptionalInt.empty();
    }
    return OptionalInt.of((int) number.getAsDouble());
  }

  /** A whole number, or the default, which is noted. */
  int whole(Column column, int low, int high, int otherwise) {
    if (isBlank(column)) {
      useDefault(column, otherwise);
    }
    return whole(column, low, high).orElse(otherwise);
  }

  /** A day, from a date cell or from text like {@code 2026-03-01}. */
  Optional<LocalDate> date(Column column) {
    Optional<Entry> entry = usable(column);
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    if (entry.get().cell().value() instanceof LocalDate day) {
      return Optional.of(day);
    }
    Optional<LocalDate> day = DayText.read(entry.get().cell().text());
    if (day.isPresent()) {
      note(Code.DATE_AS_TEXT, heading(column));
    } else {
      error(Code.BAD_DATE, column);
    }
    return day;
  }

  /** One of the words of a list. */
  <T> Optional<T> choice(Column column, Choice<T> choice) {
    return parsed(column, choice::find, Code.BAD_CHOICE, choice.words());
  }

  /** One of the words of a list, or the default, which is noted. */
  <T> T choice(Column column, Choice<T> choice, T otherwise) {
    if (isBlank(column)) {
      useDefault(column, choice.word(otherwise));
    }
    return choice(column, choice).orElse(otherwise);
  }

  /** Text that a function understands. */
  <T> Optional<T> parsed(
      Column column, Function<String, Optional<T>> parse, String key, Object... more) {
    Optional<String> text = usable(column).map(e -> e.cell().text());
    Optional<T> value = text.flatMap(parse);
    if (text.isPresent() && value.isEmpty()) {
      error(key, column, more);
    }
    return value;
  }

  /** Notes that a default was used. */
  void useDefault(Column column, Object value) {
    note(Code.DEFAULT, column.title(), value);
  }

  private Optional<Entry> usable(Column column) {
    return Optional.ofNullable(entries.get(column))
        .filter(e -> e.cell().isUsable() && !e.cell().isBlank());
  }
}
