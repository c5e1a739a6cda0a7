package org.hibernacle.input;

import static org.hibernacle.input.Column.ACCEPT_WARMTH;
import static org.hibernacle.input.Column.CLEAR_HEIGHT;
import static org.hibernacle.input.Column.COVER;
import static org.hibernacle.input.Column.COVER_DEPTH;
import static org.hibernacle.input.Column.FLOOR;
import static org.hibernacle.input.Column.HIGHEST_HELD;
import static org.hibernacle.input.Column.HOLDS_DOWN_TO;
import static org.hibernacle.input.Column.KIND;
import static org.hibernacle.input.Column.LAG;
import static org.hibernacle.input.Column.LOWEST_HELD;
import static org.hibernacle.input.Column.PLACE;
import static org.hibernacle.input.Column.PLACE_LIGHT;
import static org.hibernacle.input.Column.PLACE_NOTES;
import static org.hibernacle.input.Column.PROPOSED_WARMTH;
import static org.hibernacle.input.Column.SUN;
import static org.hibernacle.input.Column.VENTS;
import static org.hibernacle.input.Column.WARMER_BY;
import static org.hibernacle.input.Column.WIND;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.Place.Wind;
import org.hibernacle.model.PlaceKind;

/** Reads the Places sheet. A bare kind is enough; everything else has a default. */
final class PlaceRows {
  /** Lowest temperature of a frost-free room whose thermostat is not given, °C (own choice). */
  static final double FROST_FREE_LOWEST_C = 4;

  /** Temperatures of a heated dwelling room, °C (common practice, no source). */
  static final double WARM_LOWEST_C = 16;

  static final double WARM_HIGHEST_C = 24;

  /** Depth of a mulch that is not measured, cm (own choice). */
  static final double MULCH_CM = 10;

  private PlaceRows() {}

  static List<Place> read(KnownSheet sheet) {
    List<Place> places = new ArrayList<>();
    Map<String, Object> seen = new HashMap<>();
    for (Row row : sheet.rows(Tally.Noun.NOTHING)) {
      Optional<String> name = row.required(PLACE, "IN-129.place");
      name.ifPresent(n -> UniqueNames.check(seen, Words.key(n), row, PLACE));
      Optional<PlaceKind> kind = kind(row);
      if (name.isPresent() && kind.isPresent()) {
        place(row.countedAs(noun(kind.get())), name.get(), kind.get()).ifPresent(places::add);
      }
    }
    return places;
  }

  private static Optional<PlaceKind> kind(Row row) {
    if (row.isBlank(KIND)) {
      row.missing("IN-129.choice", KIND, Choice.KIND.words());
    }
    return row.choice(KIND, Choice.KIND);
  }

  private static Tally.Noun noun(PlaceKind kind) {
    return new Tally.Noun("for-places", Choice.KIND.word(kind));
  }

  private static Optional<Place> place(Row row, String name, PlaceKind kind) {
    ExampleRow.warn(row, PLACE);
    Cover cover = row.choice(COVER, Choice.COVER, Cover.NONE);
    OptionalDouble lowest = lowestHeld(row, kind);
    OptionalDouble highest = highestHeld(row, kind);
    OptionalDouble holdsDownTo = row.number(HOLDS_DOWN_TO, -60, 30);
    if (lowest.isPresent()
        && highest.isPresent()
        && lowest.getAsDouble() >= highest.getAsDouble()) {
      row.error(
          Code.THERMOSTAT_CROSSED,
          row.isBlank(HIGHEST_HELD) ? LOWEST_HELD : HIGHEST_HELD,
          lowest.getAsDouble());
      return Optional.empty();
    }
    if (holdsDownTo.isPresent() && lowest.isEmpty()) {
      row.warning(Code.HEATER_WITHOUT_TARGET, HOLDS_DOWN_TO);
    }
    return Optional.of(
        new Place(
            name,
            kind,
            row.number(FLOOR, 0.01, 10_000),
            row.choice(SUN, Choice.SUN, defaultSun(kind)),
            row.choice(WIND, Choice.WIND, kind == PlaceKind.BENCH ? Wind.OPEN : Wind.SHELTERED),
            cover,
            coverDepthCm(row, cover),
            row.choice(PLACE_LIGHT, Choice.LIGHT, kind.defaultLight()),
            lowest,
            highest,
            warmerByK(row, kind),
            row.number(LAG, 0, 2000, kind.defaultLagHours()),
            holdsDownTo,
            row.number(CLEAR_HEIGHT, 1, 2000),
            row.choice(VENTS, Choice.YES_NO, kind == PlaceKind.GLASSHOUSE),
            row.text(PLACE_NOTES)));
  }

  private static double warmerByK(Row row, PlaceKind kind) {
    OptionalDouble accepted = Proposal.accepted(row, PROPOSED_WARMTH, ACCEPT_WARMTH, -10, 30);
    return accepted.isPresent()
        ? accepted.getAsDouble()
        : row.number(WARMER_BY, -10, 30, kind.defaultWarmerByK());
  }

  private static Sun defaultSun(PlaceKind kind) {
    return switch (kind) {
      case BENCH, GLASSHOUSE -> Sun.FULL;
      case GROUND -> Sun.PART;
      case COLD_STORE, FROST_FREE_ROOM, WARM_ROOM -> Sun.NONE;
    };
  }

  private static OptionalDouble lowestHeld(Row row, PlaceKind kind) {
    return switch (kind) {
      case FROST_FREE_ROOM -> held(row, LOWEST_HELD, FROST_FREE_LOWEST_C);
      case WARM_ROOM -> held(row, LOWEST_HELD, WARM_LOWEST_C);
      default -> row.number(LOWEST_HELD, -10, 40);
    };
  }

  private static OptionalDouble highestHeld(Row row, PlaceKind kind) {
    return kind == PlaceKind.WARM_ROOM
        ? held(row, HIGHEST_HELD, WARM_HIGHEST_C)
        : row.number(HIGHEST_HELD, -10, 50);
  }

  private static OptionalDouble held(Row row, Column column, double otherwiseC) {
    return OptionalDouble.of(row.number(column, -10, 50, otherwiseC));
  }

  private static double coverDepthCm(Row row, Cover cover) {
    if (cover == Cover.MULCH) {
      return row.number(COVER_DEPTH, 0.1, 100, MULCH_CM);
    }
    double depthCm = row.number(COVER_DEPTH, 0, 100).orElse(0);
    if (cover == Cover.NONE && depthCm > 0) {
      row.warning(Code.COVER_CONTRADICTS, COVER_DEPTH);
      return 0;
    }
    return depthCm;
  }
}
