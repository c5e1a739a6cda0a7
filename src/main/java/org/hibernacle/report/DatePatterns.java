package org.hibernacle.report;

import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How days are written in a language that the report's words are not translated to: the order and
 * the marks of the platform's own full date in that language (Unicode CLDR), less what is not
 * wanted.
 */
final class DatePatterns {
  private static final String FIELDS = "yuEMLd";

  private final List<String> tokens;

  private DatePatterns(List<String> tokens) {
    this.tokens = tokens;
  }

  /** The pattern of a key of the bundle, such as {@code date.short}, in that language. */
  static String of(String key, Locale language) {
    DatePatterns full =
        new DatePatterns(
            tokens(
                DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                    FormatStyle.FULL, null, IsoChronology.INSTANCE, language)));
    DatePatterns wanted =
        switch (key) {
          case "date.short" -> full.without(Set.of('y', 'u')).shortNames();
          case "date.past" -> full.without(Set.of('E')).shortNames();
          case "date.axis" -> full.without(Set.of('E')).without(Set.of('y', 'u')).shortNames();
          case "date.month" -> full.without(Set.of('E')).without(Set.of('d'));
          case "date.long" -> full;
          default -> throw new IllegalArgumentException(key + " is no pattern of a date");
        };
    String pattern = String.join("", wanted.tokens);
    return key.equals("date.month") ? pattern.replace("MMMM", "LLLL") : pattern;
  }

  /** Fields and what stands between them, in turn. */
  private static List<String> tokens(String pattern) {
    List<String> tokens = new ArrayList<>();
    boolean quoted = false;
    char before = 0;
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      quoted ^= c == '\'';
      char kind = !quoted && FIELDS.indexOf(c) >= 0 ? c : '\'';
      if (kind == before) {
        tokens.set(tokens.size() - 1, tokens.get(tokens.size() - 1) + c);
      } else {
        tokens.add(String.valueOf(c));
      }
      before = kind;
    }
    return tokens;
  }

  private static boolean isField(String token) {
    return FIELDS.indexOf(token.charAt(0)) >= 0;
  }

  /** Leaves the field out, and what parts it from the next one, or from the one before if last. */
  private DatePatterns without(Set<Character> letters) {
    List<String> left = new ArrayList<>(tokens);
    for (int i = 0; i < left.size(); i++) {
      if (!letters.contains(left.get(i).charAt(0))) {
        continue;
      }
      boolean last = left.subList(i + 1, left.size()).stream().noneMatch(DatePatterns::isField);
      int from = last && i > 0 && parts(left.get(i - 1)) ? i - 1 : i;
      int to = i + 1 < left.size() && !isField(left.get(i + 1)) ? i + 2 : i + 1;
      left.subList(from, to).clear();
      break;
    }
    return new DatePatterns(left);
  }

  /** Whether it stands between two fields, other than a letter that belongs to the first. */
  private static boolean parts(String token) {
    return !isField(token) && !Character.isLetter(token.charAt(0));
  }

  private DatePatterns shortNames() {
    return new DatePatterns(
        tokens.stream().map(t -> t.equals("EEEE") ? "EEE" : t.equals("MMMM") ? "MMM" : t).toList());
  }
}
