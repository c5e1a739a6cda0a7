package org.hibernacle.input;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a layout may call one column, in the order of preference. */
final class KnownHeadings {
  /** Sorts behind every known one. */
  static final int UNKNOWN = Integer.MAX_VALUE;

  private final List<CsvHeading> headings;
  private final Map<String, Integer> places = new HashMap<>();

  KnownHeadings(List<CsvHeading> headings) {
    this.headings = List.copyOf(headings);
    for (CsvHeading heading : headings) {
      places.putIfAbsent(heading.key(), places.size());
    }
  }

  /** Place in the order of preference, from 0; {@link #UNKNOWN} if it means something else. */
  int place(CsvHeading heading) {
    return Math.min(
        places.getOrDefault(heading.key(), UNKNOWN), places.getOrDefault(heading.first(), UNKNOWN));
  }

  boolean knows(CsvHeading heading) {
    return place(heading) != UNKNOWN;
  }

  /** The unit that the known name of a column tells. */
  Optional<TemperatureUnit> unit(CsvHeading heading) {
    return headings.stream().filter(heading::means).flatMap(h -> h.unit().stream()).findFirst();
  }
}
