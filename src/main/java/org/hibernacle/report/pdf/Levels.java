package org.hibernacle.report.pdf;

import java.util.Arrays;

/** Shares a length among neighbours that want different lengths. */
final class Levels {
  private Levels() {}

  /**
   * Lengths that add up to {@code total}. Where there is more than all want, the short ones grow to
   * a common floor; where there is less, the long ones shrink to a common ceiling.
   *
   * @param wanted 0 or more each
   * @param total 0 or more
   */
  static float[] share(float[] wanted, float total) {
    float[] sorted = wanted.clone();
    Arrays.sort(sorted);
    float sum = 0;
    for (float each : sorted) {
      sum += each;
    }
    boolean surplus = sum <= total;
    float rest = total;
    int from = 0;
    int to = sorted.length;
    // The ones that keep what they want: the longest in a surplus, else the shortest.
    while (to - from > 1) {
      float even = rest / (to - from);
      if (surplus && sorted[to - 1] > even) {
        rest -= sorted[--to];
      } else if (!surplus && sorted[from] < even) {
        rest -= sorted[from++];
      } else {
        break;
      }
    }
    float level = rest / (to - from);
    float[] shares = new float[wanted.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = surplus ? Math.max(wanted[i], level) : Math.min(wanted[i], level);
    }
    return shares;
  }
}
