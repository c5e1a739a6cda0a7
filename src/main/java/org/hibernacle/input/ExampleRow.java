package org.hibernacle.input;

import java.util.Locale;

/** Tells when a worked example of the blank form was left in. */
final class ExampleRow {
  private ExampleRow() {}

  /** Warns where the cell begins with the word Example. */
  static void warn(Row row, Column column) {
    if (row.text(column).toLowerCase(Locale.ROOT).startsWith("example")) {
      row.warning(Code.EXAMPLE_LEFT, column);
    }
  }
}
