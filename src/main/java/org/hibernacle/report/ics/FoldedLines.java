package org.hibernacle.report.ics;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Folds long lines as RFC 5545, section 3.1 wants it: no line has more than 75 octets of UTF-8, the
 * rest goes on after a line break and a blank. No character is cut in two, which a library that
 * counts characters would do to any above U+FFFF.
 */
final class FoldedLines {
  private static final int MOST_OCTETS = 75;
  private static final byte[] BREAK = {'\r', '\n'};

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private FoldedLines() {}

  /** The bytes of lines that end in CR and LF. */
  static byte[] of(String lines) {
    FoldedLines folded = new FoldedLines();
    lines.lines().forEach(folded::add);
    return folded.out.toByteArray();
  }

  private void add(String line) {
    int octets = 0;
    for (int i = 0; i < line.length(); i = line.offsetByCodePoints(i, 1)) {
      byte[] letter = Character.toString(line.codePointAt(i)).getBytes(StandardCharsets.UTF_8);
      if (octets + letter.length > MOST_OCTETS) {
        out.writeBytes(BREAK);
        out.write(' ');
        octets = 1;
      }
      out.writeBytes(letter);
      octets += letter.length;
    }
    out.writeBytes(BREAK);
  }
}
