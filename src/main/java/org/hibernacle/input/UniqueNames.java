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
  static void check(Map<String, Object> seen, String key, Row row, Column column) {
    Object before = seen.putIfAbsent(key, row.spot(column));
    if (before != null) {
      row.error(Code.DUPLICATE_NAME, column, before);
    }
  }
}
