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
import org.hibernacle.input.Quantity.Unit;

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

  private final String sheetWhere;
  private final String rowName;
  private final Map<Column, Entry> entries;
  private final Problems problems;
  private final Tally tally;
  private final Tally.Noun noun;
  private final Set<Column> failed = EnumSet.noneOf(Column.class);

  Row(
      String sheetWhere,
      String rowName,
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
  String where(Column column) {
    Entry entry = entries.get(column);
    return sheetWhere + ", " + (entry == null ? rowName : entry.cell().address());
  }

  /** File, sheet and row. */
  String where() {
    return sheetWhere + ", " + rowName;
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
  Optional<String> required(Column column, String expected) {
    if (isBlank(column)) {
      missing(column, expected);
      return Optional.empty();
    }
    return usable(column).map(Row::text);
  }

  /** Reports that nothing stands in a column that is needed. */
  void missing(Column column, String expected) {
    missing(Code.NOTHING_THERE, column, expected);
  }

  /** The same under another code. */
  void missing(String code, Column column, String expected) {
    failed.add(column);
    problems.error(code, where(column), heading(column) + " is empty", expected);
  }

  /** Reports a value that was read but can not be right. */
  void error(String code, Column column, String expected) {
    failed.add(column);
    problems.error(code, where(column), quote(column), expected);
  }

  /** Reports a value together with what is used instead. */
  void warning(String code, Column column, String expected, String consequence) {
    problems.warning(code, where(column), quote(column), expected, consequence);
  }

  /** Counts a note on this sheet. */
  void note(String code, String found, String consequence) {
    tally.add(code, sheetWhere, found, noun, consequence);
  }

  /** {@code Depth cm "abc"}. */
  private String quote(Column column) {
    return heading(column) + " \"" + FoundCell.shortened(text(column)) + "\"";
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
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    error(
        Code.BAD_NUMBER,
        column,
        "a number from "
            + shown(unit.fromOurs(low))
            + " to "
            + shown(unit.fromOurs(high))
            + symbol
            + (written.isEmpty() ? ", with a point for decimals" : ""));
    return OptionalDouble.empty();
  }

  private static String shown(double bound) {
    return FoundCell.plain(Math.round(bound * 100) / 100.0);
  }

  private OptionalDouble numberAsWritten(Column column, Entry entry) {
    if (entry.cell().value() instanceof Double number) {
      return OptionalDouble.of(number);
    }
    String text = entry.cell().text().replace('\u2212', '-');
    if (!NUMBER.matcher(text).matches() || IN_DOUBT.matcher(text).matches()) {
      return OptionalDouble.empty();
    }
    note(
        Code.NUMBER_AS_TEXT, heading(column) + " holds a number as text", "it is read as a number");
    return OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
  }

  /** A number in our unit, or the default, which is noted. */
  double number(Column column, double low, double high, double otherwise) {
    if (isBlank(column)) {
      String symbol = column.quantity().ours().symbol();
      useDefault(column, FoundCell.plain(otherwise) + (symbol.isEmpty() ? "" : " " + symbol));
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
      error(Code.BAD_NUMBER, column, "a whole number from " + low + " to " + high);
      return OptionalInt.empty();
    }
    return OptionalInt.of((int) number.getAsDouble());
  }

  /** A whole number, or the default, which is noted. */
  int whole(Column column, int low, int high, int otherwise) {
    if (isBlank(column)) {
      useDefault(column, Integer.toString(otherwise));
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
      note(Code.DATE_AS_TEXT, heading(column) + " holds a date as text", "it is read as a date");
    } else {
      error(Code.BAD_DATE, column, DayText.EXPECTED);
    }
    return day;
  }

  /** One of the words of a list. */
  <T> Optional<T> choice(Column column, Choice<T> choice) {
    return parsed(column, choice::find, Code.BAD_CHOICE, choice.expected());
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
      Column column, Function<String, Optional<T>> parse, String code, String expected) {
    Optional<String> text = usable(column).map(e -> e.cell().text());
    Optional<T> value = text.flatMap(parse);
    if (text.isPresent() && value.isEmpty()) {
      error(code, column, expected);
    }
    return value;
  }

  /** Notes that a default was used. */
  void useDefault(Column column, String value) {
    note(Code.DEFAULT, column.title() + " is empty", value + " is used");
  }

  private Optional<Entry> usable(Column column) {
    return Optional.ofNullable(entries.get(column))
        .filter(e -> e.cell().isUsable() && !e.cell().isBlank());
  }
}
