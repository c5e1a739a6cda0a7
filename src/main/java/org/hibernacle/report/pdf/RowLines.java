package org.hibernacle.report.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many lines the rows of a table take under widths of its columns. It only weighs one share of
 * the width against another: the lines themselves are broken by the writer.
 */
final class RowLines {
  /** What a line is worth that makes its row no higher, so that words stay together. */
  private static final double HIDDEN_LINE = 0.05;

  /** Widths of the words of each cell, column by column, in points. */
  private final List<List<float[]>> columns = new ArrayList<>();

  private final List<Map<Float, int[]>> known = new ArrayList<>();

  /**
   * Adds a column.
   *
   * @param words widths of the words of its cells, each with the blank that follows, in points
   */
  void add(List<float[]> words) {
    columns.add(List.copyOf(words));
    known.add(new HashMap<>());
  }

  /** Lines of all rows together, and a little for those that do not count. */
  double total(float[] widths) {
    double total = 0;
    int rows = columns.get(0).size();
    for (int row = 0; row < rows; row++) {
      int most = 0;
      for (int i = 0; i < widths.length; i++) {
        int lines = lines(i, widths[i])[row];
        most = Math.max(most, lines);
        total += HIDDEN_LINE * lines;
      }
      total += most;
    }
    return total;
  }

  private int[] lines(int column, float width) {
    return known
        .get(column)
        .computeIfAbsent(
            width, w -> columns.get(column).stream().mapToInt(cell -> lines(cell, w)).toArray());
  }

  private static int lines(float[] words, float width) {
    int lines = 1;
    float used = 0;
    for (float word : words) {
      if (used > 0 && used + word > width - 2 * CellBoxes.ACROSS) {
        lines++;
        used = 0;
      }
      used += word;
    }
    return lines;
  }
}
