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

  /** One width a column; their sum is {@code total}. Short wishes are met before long ones. */
  float[] share(float total) {
    if (total >= bestTotal()) {
      return scaled(best, total / bestTotal());
    } else if (total <= leastTotal()) {
      return scaled(least, total / leastTotal());
    }
    float[] wishes = new float[least.size()];
    for (int i = 0; i < wishes.length; i++) {
      wishes[i] = best.get(i) - least.get(i);
    }
    float[] widths = Levels.share(wishes, total - leastTotal());
    for (int i = 0; i < widths.length; i++) {
      widths[i] += least.get(i);
    }
    return widths;
  }

  private static float[] scaled(List<Float> widths, float factor) {
    float[] scaled = new float[widths.size()];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = widths.get(i) * factor;
    }
    return scaled;
  }

  private static float sum(List<Float> widths) {
    float sum = 0;
    for (float width : widths) {
      sum += width;
    }
    return sum;
  }
}
