package org.hibernacle.report.pdf;

import org.hibernacle.report.StyleRole;

/**
 * A way to set words.
 *
 * @param bold or regular
 * @param sizePt in points, 9 or more
 * @param role whose ink the letters have
 */
record Style(boolean bold, float sizePt, StyleRole role) {
  static final Style TITLE = new Style(true, 26, StyleRole.TITLE);
  static final Style SUBTITLE = new Style(false, 13, StyleRole.SUBTLE);
  static final Style HEADING = new Style(true, 16, StyleRole.HEADING);
  static final Style MONTH = new Style(true, 24, StyleRole.TITLE);
  static final Style COLUMN_HEADING = new Style(true, 9, StyleRole.HEADING);
  static final Style BODY = new Style(false, 9.5f, StyleRole.PLAIN);
  static final Style STRONG = new Style(true, 10.5f, StyleRole.PLAIN);
  static final Style SUBTLE = new Style(false, 9, StyleRole.SUBTLE);
  static final Style FRAME = new Style(false, 9, StyleRole.SUBTLE);

  Style in(StyleRole other) {
    return new Style(bold, sizePt, other);
  }

  Style at(float otherSizePt) {
    return new Style(bold, otherSizePt, role);
  }

  Style asBold() {
    return new Style(true, sizePt, role);
  }
}
