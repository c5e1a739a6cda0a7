package org.hibernacle.planning;

/**
 * What a path costs one plant, broken rules first.
 *
 * @param brokenTicks rules broken that count, over all winters, in ticks of {@link Cost}
 * @param comfort moves and nights, as {@link Cost} packs them
 */
record PathCost(long brokenTicks, long comfort) implements Comparable<PathCost> {
  @Override
  public int compareTo(PathCost other) {
    return brokenTicks != other.brokenTicks
        ? Long.compare(brokenTicks, other.brokenTicks)
        : Long.compare(comfort, other.comfort);
  }
}
