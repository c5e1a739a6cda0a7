package org.hibernacle.report.pdf;

import java.util.Locale;

/**
 * A character that no font of the file has.
 *
 * @param codePoint of Unicode
 * @param text in which it stood first
 */
public record Missing(int codePoint, String text) {
  /** {@code ✓ (U+2713)}. */
  public String character() {
    return String.format(Locale.ROOT, "%s (U+%04X)", Character.toString(codePoint), codePoint);
  }
}
