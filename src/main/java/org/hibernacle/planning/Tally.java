package org.hibernacle.planning;

import java.util.concurrent.atomic.AtomicInteger;

/** Counts what is done of one part of planning, for several threads. */
final class Tally {
  private final Pace pace;
  private final Pace.Part part;
  private final int of;
  private final AtomicInteger done = new AtomicInteger();

  /** Begins a part of which so much is to be done. */
  Tally(Pace pace, Pace.Part part, int of) {
    this.pace = pace;
    this.part = part;
    this.of = of;
    pace.reached(part, 0, of);
  }

  /** Nobody listens. */
  static Tally unheard() {
    return new Tally(Pace.UNHEARD, Pace.Part.PLANTS, 0);
  }

  void add(int more) {
    pace.reached(part, done.addAndGet(more), of);
  }
}
