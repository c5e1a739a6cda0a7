package org.hibernacle.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A shape of temperature file, as data.
 *
 * @param name as given to {@code --layout}
 * @param daily whether a row is a day with its extremes; else it is one reading
 * @param required headings by role; all roles must be there. Each heading is a {@link
 *     CsvHeading#key}; for the station the order is the order of preference
 * @param optional the same for roles that may be there
 * @param dates how dates may be written
 * @param unit what temperatures are in where no heading says so; empty if that must be asked for
 */
record CsvLayout(
    String name,
    boolean daily,
    Map<Role, List<String>> required,
    Map<Role, List<String>> optional,
    List<DatePattern> dates,
    Optional<TemperatureUnit> unit) {

  /** What a column is for, with the words for it in messages. */
  enum Role {
    DATE("date"),
    TIME("time of day"),
    STATION("station"),
    LOWEST("lowest of the day"),
    HIGHEST("highest of the day"),
    READING("temperature"),
    SNOW("snow depth");

    private final String words;

    Role(String words) {
      this.words = words;
    }

    boolean isTemperature() {
      return this == LOWEST || this == HIGHEST || this == READING;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  CsvLayout {
    required = Map.copyOf(required);
    optional = Map.copyOf(optional);
    dates = List.copyOf(dates);
  }
}
