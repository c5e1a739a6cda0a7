package org.hibernacle.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A shape of temperature file, as data.
 *
 * @param name as given to {@code --layout}
 * @param rank how far it is trusted over others that fit too
 * @param shape what a row is
 * @param proof how its headings are known
 * @param columns headings by role; for the station the order is the order of preference
 * @param optional roles whose columns a file may lack
 * @param order roles of the columns of a file without headings; empty if it always has some
 * @param cuts where these columns stand in a text without delimiters; empty if it has some
 * @param dates how dates may be written
 * @param unit what temperatures are in where no heading says so; empty if that must be asked for
 * @param utc whether its clock is that of Greenwich
 * @param marks how values carry marks, and which of them count
 * @param shortRows whether rows may end before columns that are not needed
 */
record CsvLayout(
    String name,
    Rank rank,
    Shape shape,
    Proof proof,
    Map<Role, KnownHeadings> columns,
    List<Role> optional,
    List<Role> order,
    List<Cut> cuts,
    List<DateRule> dates,
    Optional<TemperatureUnit> unit,
    boolean utc,
    MarkRule marks,
    boolean shortRows) {

  /** Headings of its own go before any that mean the same, and both extremes before one. */
  enum Rank {
    KNOWN,
    GENERAL,
    SINGLE,
    /** Never tried unless its name is given. */
    ASKED
  }

  /** What one row tells. */
  enum Shape {
    /** Lowest and highest of a day. */
    DAY,
    /** One of them, named in a column or above the table. */
    ELEMENT,
    /** The air at one time. */
    READING,
    /** Lowest and highest of an hour or so. */
    SPELL,
    /** One element of a month, a column a day. */
    MONTH,
    /** One element on the same day of all months, a column a month. */
    DAYNUMBER;

    /** Whether its rows are times of a day. */
    boolean timed() {
      return this == READING || this == SPELL;
    }

    /** Whether a table of columns stands for days or months. */
    boolean wide() {
      return this == MONTH || this == DAYNUMBER;
    }
  }

  /** How the headings of a layout are known. */
  enum Proof {
    /** From documentation, or from files with which others test their readers. */
    PUBLISHED,
    /** A real file was read from its first to its last row. */
    SAMPLE,
    /** Neither. */
    MEMORY
  }

  /** What a column is for, with the words for it in messages. */
  enum Role {
    DATE("date"),
    YEAR("year"),
    MONTH("month"),
    DAY("day"),
    DAY_OF_YEAR("day of year"),
    TIME("time of day"),
    STATION("station"),
    LOWEST("lowest of the day"),
    HIGHEST("highest of the day"),
    READING("temperature"),
    ELEMENT("element"),
    VALUE("value"),
    SNOW("snow depth"),
    MARK("mark"),
    LOWEST_MARK("lowest mark"),
    HIGHEST_MARK("highest mark"),
    DAYS("days"),
    HOURS("hours"),
    /** One of the columns of a wide table. */
    PART("days or months"),
    /** Not read. */
    BESIDE("beside");

    private final String words;

    Role(String words) {
      this.words = words;
    }

    boolean isTemperature() {
      return this == LOWEST || this == HIGHEST || this == READING || this == VALUE || this == PART;
    }

    /** Where the mark of a value stands. */
    Role mark() {
      return switch (this) {
        case LOWEST -> LOWEST_MARK;
        case HIGHEST -> HIGHEST_MARK;
        default -> MARK;
      };
    }

    @Override
    public String toString() {
      return words;
    }
  }

  CsvLayout {
    columns = Map.copyOf(columns);
    optional = List.copyOf(optional);
    order = List.copyOf(order);
    cuts = List.copyOf(cuts);
    dates = List.copyOf(dates);
  }

  /** The unit of a column whose heading says none: that of the name, else that of the layout. */
  Optional<TemperatureUnit> unitOf(Role role, CsvHeading heading) {
    return Optional.ofNullable(columns.get(role)).flatMap(k -> k.unit(heading)).or(() -> unit);
  }
}
