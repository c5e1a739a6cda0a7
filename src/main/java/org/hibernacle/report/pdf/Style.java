package org.hibernacle.report.pdf;

import org.hibernacle.report.Palette;
import org.hibernacle.report.StyleRole;

/**
 * A way to set words.
 *
 * @param bold or regular
 * @param sizePt in points, 8 or more
 * @param ink colour of the letters, 0xRRGGBB
 */
record Style(boolean bold, float sizePt, int ink) {
  static final Style TITLE = new Style(true, 26, ink(StyleRole.TITLE));
  static final Style SUBTITLE = new Style(false, 13, ink(StyleRole.SUBTLE));
  static final Style HEADING = new Style(true, 16, ink(StyleRole.HEADING));
  static final Style MONTH = new Style(true, 24, ink(StyleRole.TITLE));
  static final Style COLUMN_HEADING = new Style(true, 9, ink(StyleRole.HEADING));
  static final Style BODY = new Style(false, 9.5f, ink(StyleRole.PLAIN));
  static final Style STRONG = new Style(true, 10.5f, ink(StyleRole.PLAIN));
  static final Style SUBTLE = new Style(false, 9, ink(StyleRole.SUBTLE));
  static final Style FRAME = new Style(false, 8, ink(StyleRole.SUBTLE));

  private static int ink(StyleRole role) {
    return Palette.look(role).ink();
  }

  Style in(int other) {
    return new Style(bold, sizePt, other);
  }

  Style at(float otherSizePt) {
    return new Style(bold, otherSizePt, ink);
  }

  Style asBold() {
    return new Style(true, sizePt, ink);
  }
}
