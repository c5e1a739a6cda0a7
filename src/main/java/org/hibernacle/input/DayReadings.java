package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hibernacle.model.DailyExtremes;

/** The readings of one day, in order of time, kept small: a file may hold millions. */
final class DayReadings {
  /** Hours of a day that must have a reading before its extremes are trusted; 75 %. */
  static final int LEAST_HOURS = 18;

  /** Longest run of hours without a reading, so that the night is never missing. */
  static final int LONGEST_GAP_H = 3;

  private int[] seconds = new int[24];
  private double[] airC = new double[24];
  private int size;

  /** The reading at that second, if there is one. */
  OptionalDouble at(int second) {
    int i = Arrays.binarySearch(seconds, 0, size, second);
    return i < 0 ? OptionalDouble.empty() : OptionalDouble.of(airC[i]);
  }

  /** Adds a reading, behind one of the same second. */
  void add(int second, double readingC) {
    int i = size;
    while (i > 0 && seconds[i - 1] > second) {
      i--;
    }
    if (size == seconds.length) {
      seconds = Arrays.copyOf(seconds, 2 * size);
      airC = Arrays.copyOf(airC, 2 * size);
    }
    System.arraycopy(seconds, i, seconds, i + 1, size - i);
    System.arraycopy(airC, i, airC, i + 1, size - i);
    seconds[i] = second;
    airC[i] = readingC;
    size++;
  }

  /** Lowest and highest of all readings. */
  DailyExtremes extremes() {
    double[] all = Arrays.copyOf(airC, size);
    Arrays.sort(all);
    return new DailyExtremes(all[0], all[size - 1]);
  }

  /** Whether there are enough readings, and no long gap, to trust the extremes. */
  boolean complete() {
    boolean[] filled = new boolean[24];
    for (int i = 0; i < size; i++) {
      filled[hour(i)] = true;
    }
    int gap = 0;
    for (boolean hour : filled) {
      gap = hour ? 0 : gap + 1;
      if (gap > LONGEST_GAP_H) {
        return false;
      }
    }
    return hoursFilled() >= LEAST_HOURS;
  }

  /** How many hours of the day have a reading. */
  int hoursFilled() {
    return (int) IntStream.range(0, size).map(this::hour).distinct().count();
  }

  /**
   * Mean of each hour, hour 0 first. Hours without a reading lie on a straight line between their
   * neighbours; at either end of the day they are like the nearest hour. Only for a complete day,
   * where such gaps are short: clocks that go forward leave one.
   */
  List<Double> hours() {
    double[] sum = new double[24];
    int[] count = new int[24];
    for (int i = 0; i < size; i++) {
      sum[hour(i)] += airC[i];
      count[hour(i)]++;
    }
    int[] filled = IntStream.range(0, 24).filter(h -> count[h] > 0).toArray();
    List<Double> means = new ArrayList<>(24);
    for (int h = 0, next = 0; h < 24; h++) {
      while (next < filled.length - 1 && filled[next] < h) {
        next++;
      }
      int to = filled[next];
      int from = to <= h || next == 0 ? to : filled[next - 1];
      double share = to == from ? 0 : (double) (h - from) / (to - from);
      double fromC = sum[from] / count[from];
      means.add(fromC + share * (sum[to] / count[to] - fromC));
    }
    return means;
  }

  /** Hour 0 to 23 to which a reading belongs; in a file of hours 1 to 24, the hour before it. */
  private int hour(int i) {
    boolean endsAtMidnight = seconds[size - 1] == Stamp.DAY_S && seconds[0] >= 3600;
    int second = endsAtMidnight ? seconds[i] - 1 : seconds[i];
    return Math.min(23, second / 3600);
  }
}
