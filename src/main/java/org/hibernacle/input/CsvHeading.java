package org.hibernacle.input;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.model.Phrase;

/**
 * The heading of one column.
 *
 * @param written as in the file
 * @param key what is compared with synonyms: lower case, without accents, unit and separators, so
 *     that {@code Min temp (°F)}, {@code min_temp_f} and {@code MinTemp} are one
 * @param first the key of what stands before a comma with a unit or a zone behind it, as loggers
 *     write; else the same as {@code key}
 * @param unit named in the heading; empty if none, or if two contradict each other
 * @param name what messages call the column where the file has no heading; else empty
 */
record CsvHeading(
    String written,
    String key,
    String first,
    Optional<TemperatureUnit> unit,
    Optional<Phrase> name) {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]");
  private static final Pattern SEPARATORS = Pattern.compile("[\\s_./:,-]+");
  private static final Pattern ZONE = Pattern.compile("(?:gmt|utc).*");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?:in )?(0 1 |1 10 |tenths? (?:of )?)?(?:deg|degree|degrees|°)? ?"
              + "([cfk]|celsius|fahrenheit|kelvin)");

  /** A heading that stands in the file. */
  CsvHeading(String written, String key, String first, Optional<TemperatureUnit> unit) {
    this(written, key, first, unit, Optional.empty());
  }

  /** A column that has no heading in the file. */
  static CsvHeading named(Phrase name) {
    CsvHeading plain = of(name.toString());
    return new CsvHeading(plain.written, plain.key, plain.first, plain.unit, Optional.of(name));
  }

  /** What messages call the column. */
  Object shown() {
    return name.<Object>map(phrase -> phrase).orElse(written);
  }

  static CsvHeading of(String written) {
    String plain = plain(written);
    Set<TemperatureUnit> units = EnumSet.noneOf(TemperatureUnit.class);
    String key = key(plain, units);
    String first = key;
    int comma = plain.indexOf(',');
    if (comma > 0) {
      String behind = plain.substring(comma + 1).split("[,(]", -1)[0].strip();
      Optional<TemperatureUnit> unit = unit(behind);
      unit.ifPresent(units::add);
      if (unit.isPresent() || ZONE.matcher(behind).matches()) {
        first = key(plain.substring(0, comma), units);
      }
    }
    return new CsvHeading(
        written,
        key,
        first,
        units.size() == 1 ? Optional.of(units.iterator().next()) : Optional.empty());
  }

  /** Whether this heading says the same as one of a layout. */
  boolean means(CsvHeading known) {
    return key.equals(known.key) || first.equals(known.key);
  }

  /** Lower case, without accents. */
  static String plain(String written) {
    String text = written.strip();
    if (text.startsWith("#")) {
      text = text.substring(1);
    }
    return Normalizer.normalize(text.replace('º', '°'), Normalizer.Form.NFKD)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\p{M}", "");
  }

  private static String key(String plain, Set<TemperatureUnit> units) {
    Matcher brackets = BRACKETS.matcher(plain);
    String outside =
        brackets.replaceAll(
            part -> {
              Optional<TemperatureUnit> unit = unit(part.group(1));
              unit.ifPresent(units::add);
              return unit.isPresent() ? " " : Matcher.quoteReplacement(" " + part.group(1) + " ");
            });
    List<String> words = new ArrayList<>(List.of(SEPARATORS.split(outside.strip(), -1)));
    words.removeIf(String::isEmpty);
    for (int tail = 2; tail >= 1; tail--) {
      if (words.size() > tail) {
        List<String> last = words.subList(words.size() - tail, words.size());
        Optional<TemperatureUnit> unit = unit(String.join(" ", last));
        unit.ifPresent(units::add);
        if (unit.isPresent()) {
          last.clear();
        }
      }
    }
    return String.join("", words);
  }

  /** The text without a unit in brackets at its end. */
  static String withoutUnit(String written) {
    String text = written.strip();
    Matcher brackets = BRACKETS.matcher(text);
    int end = text.length();
    while (brackets.find()) {
      end =
          brackets.end() == text.length() && unit(plain(brackets.group(1))).isPresent()
              ? brackets.start()
              : end;
    }
    return text.substring(0, end).strip();
  }

  private static Optional<TemperatureUnit> unit(String text) {
    Matcher unit = UNIT.matcher(SEPARATORS.matcher(text.strip()).replaceAll(" ").strip());
    if (!unit.matches()) {
      return Optional.empty();
    }
    if (unit.group(1) != null) {
      return unit.group(2).startsWith("c") ? Optional.of(TemperatureUnit.TENTHS) : Optional.empty();
    }
    return Optional.of(
        switch (unit.group(2).charAt(0)) {
          case 'c' -> TemperatureUnit.C;
          case 'f' -> TemperatureUnit.F;
          default -> TemperatureUnit.K;
        });
  }
}
