package org.hibernacle.report.pdf;

import java.awt.Color;
import org.hibernacle.report.StyleRole;

/**
 * A way to set words.
 *
 * @param bold or regular
 * @param sizePt in points, 8 or more
 * @param color of the letters
 */
record Style(boolean bold, float sizePt, Color color) {
  static final Style TITLE = new Style(true, 26, Looks.of(StyleRole.TITLE).text());
  static final Style SUBTITLE = new Style(false, 13, Looks.of(StyleRole.SUBTLE).text());
  static final Style HEADING = new Style(true, 16, Looks.of(StyleRole.HEADING).text());
  static final Style MONTH = new Style(true, 24, Looks.of(StyleRole.TITLE).text());
  static final Style COLUMN_HEADING = new Style(true, 9, Looks.of(StyleRole.HEADING).text());
  static final Style BODY = new Style(false, 10, Looks.INK);
  static final Style STRONG = new Style(true, 11, Looks.INK);
  static final Style SUBTLE = new Style(false, 9, Looks.of(StyleRole.SUBTLE).text());
  static final Style FRAME = new Style(false, 8, Looks.of(StyleRole.SUBTLE).text());

  Style in(Color other) {
    return new Style(bold, sizePt, other);
  }

  Style at(float otherSizePt) {
    return new Style(bold, otherSizePt, color);
  }

  Style asBold() {
    return new Style(true, sizePt, color);
  }
}
