package org.hibernacle.planning;

import java.lang.ref.SoftReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something that can be worked out again at any time with the same result, and is kept as long as
 * there is memory for it. Safe for several threads.
 */
final class Kept<T> {
  private final Supplier<T> workOut;
  private SoftReference<@Nullable T> last = new SoftReference<>(null);

  /** Not worked out yet. */
  Kept(Supplier<T> workOut) {
    this.workOut = workOut;
  }

  /** Worked out already. */
  Kept(T now, Supplier<T> again) {
    this(again);
    last = new SoftReference<>(now);
  }

  synchronized T get() {
    T known = last.get();
    if (known == null) {
      known = workOut.get();
      last = new SoftReference<>(known);
    }
    return known;
  }
}
