package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.Phrase;

/**
 * Where a column of a text without delimiters stands.
 *
 * @param role what it holds
 * @param first its first character, from 1
 * @param last its last character
 */
record Cut(Role role, int first, int last) {
  /** Far beyond any row that is written by position, characters. */
  private static final int LAST = 10_000;

  private static final Pattern SHAPE =
      Pattern.compile(
          "(?<role>[a-z -]*[a-z])\\s+(?<first>\\d{1,5})(?:-(?<last>\\d{1,5}))?"
              + "(?:\\s+every\\s+(?<step>\\d{1,3}),?\\s+(?<times>\\d{1,2})\\s+times)?");

  /**
   * Reads {@code lowest 12-17}, or {@code days or months 22-26 every 8, 31 times}; empty if the
   * text is neither.
   */
  static List<Cut> of(String text) {
    Matcher cut = SHAPE.matcher(text.strip());
    if (!cut.matches()) {
      return List.of();
    }
    Optional<Role> role = CsvLayouts.role(cut.group("role").replace("day-of-year", "day of year"));
    int first = Integer.parseInt(cut.group("first"));
    int last = cut.group("last") == null ? first : Integer.parseInt(cut.group("last"));
    if (role.isEmpty() || first < 1 || last < first || last > LAST) {
      return List.of();
    }
    int step = cut.group("step") == null ? 0 : Integer.parseInt(cut.group("step"));
    int times = cut.group("times") == null ? 1 : Integer.parseInt(cut.group("times"));
    List<Cut> cuts = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      cuts.add(new Cut(role.get(), first + i * step, last + i * step));
    }
    return cuts;
  }

  /** What stands there; empty behind the end of the line. */
  String from(String line) {
    return line.length() < first
        ? ""
        : line.substring(first - 1, Math.min(last, line.length())).strip();
  }

  /** What messages call the column. */
  Phrase heading() {
    return first == last ? Phrase.of("at-position", first) : Phrase.of("at-positions", first, last);
  }
}
