package org.hibernacle.input;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a column measures, and in which units its heading may say so. The first is our own. */
enum Quantity {
  /** Words, dates, counts. */
  NONE,
  LENGTH(
      unit("cm", 1, "centimetre", "centimetres", "centimeter", "centimeters"),
      unit("mm", 0.1, "millimetre", "millimetres", "millimeter", "millimeters"),
      unit("m", 100, "metre", "metres", "meter", "meters"),
      unit("in", 2.54, "inch", "inches"),
      unit("ft", 30.48, "foot", "feet")),
  AREA(
      unit("m2", 1, "sqm", "squaremetres", "squaremeters"),
      unit("ft2", 0.09290304, "sqft", "squarefeet")),
  /** The gallon is the US liquid gallon of 231 cubic inches. */
  VOLUME(
      unit("L", 1, "litre", "litres", "liter", "liters"),
      unit("ml", 0.001, "millilitre", "millilitres", "milliliter", "milliliters"),
      unit("gal", 3.785411784, "gallon", "gallons", "usgal"),
      unit("qt", 0.946352946, "quart", "quarts")),
  TEMPERATURE(
      unit("°C", 1, "c", "degc", "celsius", "degreescelsius"),
      new Unit("°F", 5 / 9.0, 32, List.of("f", "degf", "fahrenheit", "degreesfahrenheit"))),
  /** A difference of temperatures: 9 °F are 5 K. */
  DIFFERENCE(
      unit("K", 1, "kelvin", "c", "degc", "celsius"),
      unit("°F", 5 / 9.0, "f", "degf", "fahrenheit")),
  TIME(unit("h", 1, "hour", "hours", "hrs"));

  /**
   * One unit.
   *
   * @param symbol shown in messages
   * @param factor from this unit to ours, after {@code zero} is taken off
   * @param zero of this unit's scale: 32 for °F
   * @param spellings accepted in headings, as keys of {@link Words}
   */
  record Unit(String symbol, double factor, double zero, List<String> spellings) {
    /** From this unit to ours. */
    double toOurs(double value) {
      return (value - zero) * factor;
    }

    /** From our unit to this. */
    double fromOurs(double value) {
      return value / factor + zero;
    }
  }

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of records
  private final List<Unit> units;

  Quantity(Unit... units) {
    this.units = List.of(units);
  }

  private static Unit unit(String symbol, double factor, String... spellings) {
    List<String> all =
        Stream.concat(Stream.of(Words.key(symbol)), Arrays.stream(spellings)).toList();
    return new Unit(symbol, factor, 0, all);
  }

  /** The unit our numbers are in; one without a symbol where nothing is measured. */
  Unit ours() {
    return units.isEmpty() ? new Unit("", 1, 0, List.of()) : units.get(0);
  }

  /** Whether a heading without a unit leaves doubt. */
  boolean needsUnit() {
    return units.size() > 1;
  }

  /** The unit with that spelling, given as a key of {@link Words}. */
  Optional<Unit> spelled(String key) {
    return units.stream().filter(u -> u.spellings().contains(key)).findFirst();
  }
}
