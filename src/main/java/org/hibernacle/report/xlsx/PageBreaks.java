package org.hibernacle.report.xlsx;

import java.util.List;

/**
 * How columns or rows fall on pages, which end only between them.
 *
 * @param pages how many, one at least
 * @param lastShare how full the last of them is, 0..1
 */
record PageBreaks(int pages, double lastShare) {
  /**
   * Fills one page after the other.
   *
   * @param sizes of the columns or rows, inches
   * @param repeated how many of them, from the first on, stand on each page; they leave room for
   *     others
   * @param room of a page, inches
   */
  static PageBreaks of(List<Double> sizes, int repeated, double room) {
    double again = sizes.stream().limit(repeated).mapToDouble(d -> d).sum();
    int pages = 1;
    double used = 0;
    for (double size : sizes) {
      if (used > again && used + size > room) {
        pages++;
        used = again;
      }
      used += size;
      while (used > room) {
        // It is broken itself, being larger than a page.
        pages++;
        used -= room - again;
      }
    }
    return new PageBreaks(pages, used / room);
  }
}
