package org.hibernacle.input;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Unit of a column that holds the depth of snow on the ground. */
enum SnowUnit {
  MM(0.1),
  CM(1),
  M(100),
  IN(2.54);

  /** The element name of the climate archives of the United States. */
  private static final String ELEMENT = "snwd";

  private static final List<String> NAMES =
      List.of(ELEMENT, "snowdepth", "depthofsnow", "snowonground", "snowongrnd", "snowheight");

  private static final Map<String, SnowUnit> ENDINGS =
      Map.of("mm", MM, "cm", CM, "m", M, "in", IN, "inch", IN, "inches", IN);

  private final double cm;

  SnowUnit(double cm) {
    this.cm = cm;
  }

  /** The depth in cm. */
  double toCm(double value) {
    return value * cm;
  }

  /** Every {@link CsvHeading#key} of such a column, with and without a unit. */
  static List<String> headings() {
    return NAMES.stream()
        .flatMap(name -> Stream.concat(Stream.of(""), ENDINGS.keySet().stream()).map(name::concat))
        .sorted()
        .toList();
  }

  /**
   * The unit that the heading tells. A bare {@code SNWD} goes with the temperatures beside it:
   * millimetres with °C, inches with °F (from memory of those archives).
   *
   * @param key of a heading in {@link #headings}
   * @param temperatures unit of the temperatures in the same file
   */
  static Optional<SnowUnit> of(String key, TemperatureUnit temperatures) {
    if (key.equals(ELEMENT)) {
      return Optional.of(temperatures == TemperatureUnit.F ? IN : MM);
    }
    return NAMES.stream()
        .filter(key::startsWith)
        .map(name -> ENDINGS.get(key.substring(name.length())))
        .flatMap(Stream::ofNullable)
        .findFirst();
  }

  /** {@code mm}, {@code cm}, {@code m} or {@code in}. */
  @Override
  public String toString() {
    return switch (this) {
      case MM -> "mm";
      case CM -> "cm";
      case M -> "m";
      case IN -> "in";
    };
  }
}
