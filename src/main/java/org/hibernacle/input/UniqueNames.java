package org.hibernacle.input;

import java.util.Map;

/** Sees to it that a name stands in one row only. */
final class UniqueNames {
  private UniqueNames() {}

  /**
   * Reports the row if its key was there before.
   *
   * @param seen keys met so far, with the cell of each; the row's is added
   * @param key of this row's name
   */
  static void check(Map<String, String> seen, String key, Row row, Column column) {
    String before = seen.putIfAbsent(key, row.where(column));
    if (before != null) {
      row.error(
          Code.DUPLICATE_NAME,
          column,
          "a name of its own; the same stands in "
              + before.substring(before.lastIndexOf(", ") + 2));
    }
  }
}
