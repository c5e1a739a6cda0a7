package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hibernacle.model.DailyExtremes;

/**
 * The readings of one day, in order of time. A file may hold millions of them, so a day that was
 * read keeps at most {@value #MOST_KEPT}: of more, what {@link HourSums} needs is left.
 */
final class DayReadings {
  /** Hours of a day that must have a reading before its extremes are trusted; 75 %. */
  static final int LEAST_HOURS = 18;

  /** Longest run of hours without a reading, so that the night is never missing. */
  static final int LONGEST_GAP_H = 3;

  /** A reading every quarter of an hour. */
  static final int MOST_KEPT = 96;

  private int[] seconds = new int[24];
  private double[] airC = new double[24];
  private int size;
  private double lowestC = Double.POSITIVE_INFINITY;
  private double highestC = Double.NEGATIVE_INFINITY;
  private HourSums condensed = HourSums.NONE;

  /** The reading at that second, if there is one that was not condensed. */
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
    widen(readingC, readingC);
  }

  /** Takes in extremes between the readings. */
  void widen(double minC, double maxC) {
    lowestC = Math.min(lowestC, minC);
    highestC = Math.max(highestC, maxC);
  }

  /**
   * Lets go of single readings where they are many; to be called when the file goes on to another
   * day.
   *
   * @return how many of them had been condensed before; -1 if the day was read before and had other
   *     readings at these times
   */
  int condense() {
    if (size <= MOST_KEPT && condensed.isEmpty()) {
      return 0;
    }
    int again = condensed.repeated(seconds, airC, size);
    if (again < 0) {
      return again;
    }
    condensed = sums();
    seconds = new int[0];
    airC = new double[0];
    size = 0;
    return again;
  }

  /** Lowest and highest of all readings. */
  DailyExtremes extremes() {
    return new DailyExtremes(lowestC, highestC);
  }

  /** Whether there are enough readings, and no long gap, to trust the extremes. */
  boolean complete() {
    int[] counts = sums().counts();
    int gap = 0;
    for (int count : counts) {
      gap = count > 0 ? 0 : gap + 1;
      if (gap > LONGEST_GAP_H) {
        return false;
      }
    }
    return hoursFilled() >= LEAST_HOURS;
  }

  /** How many hours of the day have a reading. */
  int hoursFilled() {
    return (int) Arrays.stream(sums().counts()).filter(count -> count > 0).count();
  }

  /**
   * Mean of each hour, hour 0 first. Hours without a reading lie on a straight line between their
   * neighbours; at either end of the day they are like the nearest hour. Only for a complete day,
   * where such gaps are short: clocks that go forward leave one.
   */
  List<Double> hours() {
    HourSums sums = sums();
    double[] sum = sums.sumsC();
    int[] count = sums.counts();
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

  private HourSums sums() {
    return condensed.isEmpty()
        ? HourSums.of(seconds, airC, size)
        : condensed.with(seconds, airC, size);
  }
}
