package org.hibernacle.planning.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;

/** Chance with a seed, so that every garden can be drawn again. */
public final class Draw {
  private final SplittableRandom random;

  public Draw(long seed) {
    random = new SplittableRandom(seed);
  }

  /**
   * Seeds to try: as many as a test asks for, from its own first one on. {@code -Dproof.cases} asks
   * for more of every test, {@code -Dproof.seed} begins elsewhere.
   */
  public static LongStream seeds(long first, int cases) {
    long from = Long.getLong("proof.seed", first);
    return LongStream.range(from, from + Integer.getInteger("proof.cases", cases));
  }

  /** True with that chance, 0..1. */
  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Whole number; both ends included. */
  int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  /** As often between 1 and 10 as between 10 and 100. */
  double evenlyByOrder(double low, double high) {
    return Math.exp(between(Math.log(low), Math.log(high)));
  }

  OptionalDouble sometimes(double share, double low, double high) {
    double value = between(low, high);
    return chance(share) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  @SafeVarargs
  final <T> T oneOf(T... all) {
    return all[random.nextInt(all.length)];
  }

  /** Roughly normal, mean 0, standard deviation 1. */
  double bell() {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }

  /** The same things in another order. */
  public <T> List<T> shuffled(List<T> all) {
    List<T> left = new ArrayList<>(all);
    List<T> order = new ArrayList<>();
    while (!left.isEmpty()) {
      order.add(left.remove(random.nextInt(left.size())));
    }
    return order;
  }
}
