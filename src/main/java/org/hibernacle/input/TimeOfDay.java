package org.hibernacle.input;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a time of day, with 24 or with 12 hours; a zone behind it is accepted and not used. */
final class TimeOfDay {
  private static final Pattern SHAPE =
      Pattern.compile(
          "(\\d{1,2})(?::(\\d{2})(?::(\\d{2})(?:[.,]\\d+)?)?)?"
              + "\\s*(?:([ap])\\.?m\\.?)?\\s*(?:z|utc|[+-]\\d{2}:?\\d{2})?");

  private static final Pattern ZONE =
      Pattern.compile(".*:\\d{2}(?:[.,]\\d+)?\\s*(?:z|utc|[+-]\\d{2}:?\\d{2})");

  private TimeOfDay() {}

  /** Whether a time, with or without a date before it, names its zone. */
  static boolean namesZone(String text) {
    return ZONE.matcher(text.toLowerCase(Locale.ROOT)).matches();
  }

  /** Seconds since midnight, 0..86400; empty if the text is not a time. */
  static OptionalInt second(String text) {
    Matcher time = SHAPE.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!time.matches()) {
      return OptionalInt.empty();
    }
    int hour = Integer.parseInt(time.group(1));
    int minute = part(time, 2);
    int second = part(time, 3);
    String half = time.group(4);
    if (half != null) {
      if (hour < 1 || hour > 12) {
        return OptionalInt.empty();
      }
      hour = hour % 12 + (half.equals("p") ? 12 : 0);
    }
    int sum = hour * 3600 + minute * 60 + second;
    return minute < 60 && second < 60 && sum <= Stamp.DAY_S
        ? OptionalInt.of(sum)
        : OptionalInt.empty();
  }

  private static int part(Matcher time, int group) {
    String text = time.group(group);
    return text == null ? 0 : Integer.parseInt(text);
  }
}
