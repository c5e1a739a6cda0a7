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

/**
 * The heading of one column.
 *
 * @param written as in the file
 * @param key what is compared with synonyms: lower case, without accents, unit and separators, so
 *     that {@code Min temp (°F)}, {@code min_temp_f} and {@code MinTemp} are one
 * @param unit named in the heading; empty if none, or if two contradict each other
 */
record CsvHeading(String written, String key, Optional<TemperatureUnit> unit) {
  private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]");
  private static final Pattern SEPARATORS = Pattern.compile("[\\s_./:-]+");
  private static final Pattern UNIT =
      Pattern.compile("(?:deg|degree|degrees|°)? ?([cf]|celsius|fahrenheit)");

  static CsvHeading of(String written) {
    String plain =
        Normalizer.normalize(written.replace('º', '°'), Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "");
    Set<TemperatureUnit> units = EnumSet.noneOf(TemperatureUnit.class);
    Matcher brackets = BRACKETS.matcher(plain);
    String outside =
        brackets.replaceAll(
            part -> {
              Optional<TemperatureUnit> unit = unit(part.group(1));
              unit.ifPresent(units::add);
              return unit.isPresent() ? " " : Matcher.quoteReplacement(" " + part.group(1) + " ");
            });
    List<String> words = new ArrayList<>(List.of(SEPARATORS.split(outside.strip())));
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
    return new CsvHeading(
        written,
        String.join("", words),
        units.size() == 1 ? Optional.of(units.iterator().next()) : Optional.empty());
  }

  private static Optional<TemperatureUnit> unit(String text) {
    Matcher unit = UNIT.matcher(SEPARATORS.matcher(text.strip()).replaceAll(" "));
    return unit.matches()
        ? Optional.of(unit.group(1).startsWith("c") ? TemperatureUnit.C : TemperatureUnit.F)
        : Optional.empty();
  }
}
