package org.hibernacle.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.model.Place;

/** Finds places by name, without regard to case and spaces. */
final class PlaceNames {
  private final Map<String, String> names = new LinkedHashMap<>();

  PlaceNames(List<Place> places) {
    places.forEach(p -> names.put(Words.key(p.name()), p.name()));
  }

  /** The place's name as the Places sheet has it, or empty with an error. */
  Optional<String> read(Row row, Column column) {
    return row.parsed(
        column,
        text -> Optional.ofNullable(names.get(Words.key(text))),
        Code.UNKNOWN_PLACE,
        Nearest.clause(Nearest.of(row.text(column), names.values(), 3)));
  }
}
