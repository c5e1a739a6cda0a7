package org.hibernacle.input;

import java.util.Arrays;

/**
 * What is left of the readings of a day once there are too many to keep: enough for the mean of
 * each hour, and to tell whether a second file says the same.
 *
 * @param firstSecond of the day with a reading
 * @param lastSecond of the day with a reading
 * @param counts readings by hour
 * @param sumsC their sum, °C, by hour
 * @param prints of the readings of an hour, whatever their order: equal readings have equal ones
 */
record HourSums(int firstSecond, int lastSecond, int[] counts, double[] sumsC, long[] prints) {
  static final HourSums NONE =
      new HourSums(Integer.MAX_VALUE, -1, new int[24], new double[24], new long[24]);

  /** Sums of readings in order of time. */
  static HourSums of(int[] seconds, double[] airC, int size) {
    // In a file of hours 1 to 24, each is the hour before it.
    boolean ends = size > 0 && seconds[size - 1] == Stamp.DAY_S && seconds[0] >= 3600;
    return NONE.plus(seconds, airC, size, ends ? 1 : 0);
  }

  boolean isEmpty() {
    return lastSecond < 0;
  }

  /** How many of these readings are in here already; -1 if others stand at their times. */
  int repeated(int[] seconds, double[] airC, int size) {
    int[] count = new int[24];
    long[] print = new long[24];
    int inside = 0;
    for (int i = 0; i < size; i++) {
      if (seconds[i] >= firstSecond && seconds[i] <= lastSecond) {
        int hour = hour(seconds[i], 0);
        count[hour]++;
        print[hour] += print(seconds[i], airC[i]);
        inside++;
      }
    }
    for (int h = 0; h < 24; h++) {
      if (count[h] > 0 && (count[h] != counts[h] || print[h] != prints[h])) {
        return -1;
      }
    }
    return inside;
  }

  /** These sums with the readings that lie before or after them. */
  HourSums with(int[] seconds, double[] airC, int size) {
    int[] outside = new int[size];
    double[] outsideC = new double[size];
    int kept = 0;
    for (int i = 0; i < size; i++) {
      if (seconds[i] < firstSecond || seconds[i] > lastSecond) {
        outside[kept] = seconds[i];
        outsideC[kept++] = airC[i];
      }
    }
    return plus(outside, outsideC, kept, 0);
  }

  private HourSums plus(int[] seconds, double[] airC, int size, int earlierS) {
    int[] count = counts.clone();
    double[] sum = sumsC.clone();
    long[] print = prints.clone();
    int first = firstSecond;
    int last = lastSecond;
    for (int i = 0; i < size; i++) {
      int hour = hour(seconds[i], earlierS);
      count[hour]++;
      sum[hour] += airC[i];
      print[hour] += print(seconds[i], airC[i]);
      first = Math.min(first, seconds[i]);
      last = Math.max(last, seconds[i]);
    }
    return new HourSums(first, last, count, sum, print);
  }

  private static int hour(int second, int earlierS) {
    return Math.min(23, (second - earlierS) / 3600);
  }

  /** Spreads the bits, so that sums of them hardly ever agree by chance. */
  private static long print(int second, double airC) {
    long bits = Double.doubleToLongBits(airC) * 31 + second;
    bits = (bits ^ (bits >>> 32)) * 0x9E3779B97F4A7C15L;
    return bits ^ (bits >>> 29);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HourSums sums
        && firstSecond == sums.firstSecond
        && lastSecond == sums.lastSecond
        && Arrays.equals(counts, sums.counts)
        && Arrays.equals(sumsC, sums.sumsC)
        && Arrays.equals(prints, sums.prints);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(prints);
  }

  @Override
  public String toString() {
    return "HourSums[" + Arrays.toString(counts) + "]";
  }
}
