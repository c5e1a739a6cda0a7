package org.hibernacle.input;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A time of day, written with 24 or with 12 hours, with or without a colon.
 *
 * @param second since midnight, 0..86400
 * @param offsetS by how much its clock is ahead of Greenwich, s; empty if it names no zone
 */
record TimeOfDay(int second, OptionalInt offsetS) {
  private static final Pattern SHAPE =
      Pattern.compile(
          "(\\d{1,2})(?::?(\\d{2})(?::?(\\d{2})(?:[.,]\\d+)?)?)?"
              + "\\s*(?:([ap])\\.?m\\.?)?\\s*(z|utc|gmt|[+-]\\d{2}(?::?\\d{2})?)?");

  /** Reads a time; empty if the text is none. */
  static Optional<TimeOfDay> of(String text) {
    if (text.length() == 5 && text.charAt(2) == ':') {
      Optional<TimeOfDay> plain = plain(text);
      if (plain.isPresent()) {
        return plain;
      }
    }
    Matcher time = SHAPE.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!time.matches()) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(time.group(1));
    int minute = part(time, 2);
    int second = part(time, 3);
    String half = time.group(4);
    if (half != null) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      hour = hour % 12 + (half.equals("p") ? 12 : 0);
    }
    int sum = hour * 3600 + minute * 60 + second;
    return minute < 60 && second < 60 && sum <= Stamp.DAY_S
        ? Optional.of(new TimeOfDay(sum, offsetS(time.group(5))))
        : Optional.empty();
  }

  /** The commonest of all, {@code 06:30}, without taking it apart by a pattern. */
  private static Optional<TimeOfDay> plain(String text) {
    int hour = two(text, 0);
    int minute = two(text, 3);
    int sum = hour * 3600 + minute * 60;
    return hour >= 0 && minute >= 0 && minute < 60 && sum <= Stamp.DAY_S
        ? Optional.of(new TimeOfDay(sum, OptionalInt.empty()))
        : Optional.empty();
  }

  /** The two figures from that place on; -1 if they are none. */
  private static int two(String text, int from) {
    int tens = text.charAt(from) - '0';
    int ones = text.charAt(from + 1) - '0';
    return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? 10 * tens + ones : -1;
  }

  private static OptionalInt offsetS(@Nullable String zone) {
    if (zone == null) {
      return OptionalInt.empty();
    }
    if (Character.isLetter(zone.charAt(0))) {
      return OptionalInt.of(0);
    }
    String digits = zone.substring(1).replace(":", "") + "00";
    int minutes =
        Integer.parseInt(digits.substring(0, 2)) * 60 + Integer.parseInt(digits.substring(2, 4));
    // No clock is further from Greenwich; what is, is no offset.
    return minutes > 18 * 60
        ? OptionalInt.empty()
        : OptionalInt.of((zone.charAt(0) == '-' ? -60 : 60) * minutes);
  }

  private static int part(Matcher time, int group) {
    String text = time.group(group);
    return text == null ? 0 : Integer.parseInt(text);
  }
}
