package org.hibernacle.report.pdf;

import java.util.List;

/**
 * Shares a width among the columns of a table.
 *
 * @param least width of the widest word of each column, so that none is broken
 * @param best width of the widest cell of each column on one line
 */
record ColumnWidths(List<Float> least, List<Float> best) {
  ColumnWidths {
    least = List.copyOf(least);
    best = List.copyOf(best);
  }

  /** Sum of the least widths. */
  float leastTotal() {
    return sum(least);
  }

  /** Sum of the best widths. */
  float bestTotal() {
    return sum(best);
  }

  /** One width a column; their sum is {@code total}. */
  float[] share(float total) {
    float[] widths = new float[least.size()];
    float spare = total - leastTotal();
    float wish = bestTotal() - leastTotal();
    for (int i = 0; i < widths.length; i++) {
      if (spare < 0) {
        widths[i] = least.get(i) * total / leastTotal();
      } else if (spare < wish) {
        widths[i] = least.get(i) + spare * (best.get(i) - least.get(i)) / wish;
      } else {
        widths[i] = best.get(i) * total / bestTotal();
      }
    }
    return widths;
  }

  private static float sum(List<Float> widths) {
    float sum = 0;
    for (float width : widths) {
      sum += width;
    }
    return sum;
  }
}
