package org.hibernacle.report.xlsx;

/** Turns the date patterns of the report into those of a workbook (ECMA-376, 18.8.31). */
final class DateFormat {
  private DateFormat() {}

  /** {@code ddd d mmm} for {@code EEE d MMM}; what is no field is quoted unless it is a mark. */
  static String of(String javaPattern) {
    StringBuilder format = new StringBuilder();
    StringBuilder words = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < javaPattern.length(); i++) {
      char c = javaPattern.charAt(i);
      if (c == '\'') {
        quoted = !quoted;
      } else if (quoted || (Character.isLetter(c) && "EMLdyu".indexOf(c) < 0)) {
        words.append(c);
      } else {
        end(words, format);
        boolean again = i > 0 && javaPattern.charAt(i - 1) == c;
        format.append(
            switch (c) {
              case 'E' -> "d";
              case 'M', 'L' -> "m";
              case 'y', 'u' -> again ? "" : "yyyy";
              default -> String.valueOf(c);
            });
      }
    }
    end(words, format);
    return format.toString();
  }

  private static void end(StringBuilder words, StringBuilder format) {
    if (!words.isEmpty()) {
      format.append('"').append(words).append('"');
      words.setLength(0);
    }
  }
}
