package org.hibernacle.planning;

import java.util.Arrays;
import java.util.OptionalLong;
import org.hibernacle.model.Plant;

/**
 * What plants pay together, most important first: plants that break a rule, from the dearest
 * priority down; their value; by how much; then comfort as in {@link Cost}. Ordered field by field,
 * and a sum of smaller tolls is never larger.
 */
record Toll(long[] fields) implements Comparable<Toll> {
  private static final int PRIORITIES = 5;

  static final Toll NOTHING = new Toll(new long[PRIORITIES + 3]);

  static Toll of(Plant plant, PathCost cost) {
    return of(plant.priority(), plant.value().orElse(0), plant.count(), cost);
  }

  static Toll of(int priority, double value, int pots, PathCost cost) {
    long[] fields = new long[PRIORITIES + 3];
    if (cost.brokenTicks() > 0) {
      fields[PRIORITIES - priority] = pots;
      fields[PRIORITIES] = Math.round(100 * value);
    }
    fields[PRIORITIES + 1] = cost.brokenTicks();
    fields[PRIORITIES + 2] = cost.comfort();
    return new Toll(fields);
  }

  Toll plus(Toll other) {
    long[] sum = fields.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other.fields[i];
    }
    return new Toll(sum);
  }

  /**
   * By how much it costs more than another, in units of {@link Cost}; empty where plants are lost
   * that the other saves, which no such number can tell.
   */
  OptionalLong costsMoreThan(Toll other) {
    int ticks = PRIORITIES + 1;
    long moreTicks = fields[ticks] - other.fields[ticks];
    boolean told = Arrays.equals(fields, 0, ticks, other.fields, 0, ticks) && moreTicks < 1 << 20;
    return told
        ? OptionalLong.of(
            moreTicks * Cost.BROKEN_TICK + fields[ticks + 1] - other.fields[ticks + 1])
        : OptionalLong.empty();
  }

  /** Whether plants are lost that the other saves. */
  boolean losesMoreThan(Toll other) {
    return Arrays.compare(fields, 0, PRIORITIES, other.fields, 0, PRIORITIES) > 0;
  }

  @Override
  public int compareTo(Toll other) {
    return Arrays.compare(fields, other.fields);
  }
}
