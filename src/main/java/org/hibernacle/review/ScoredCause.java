package org.hibernacle.review;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How strongly what a plant lived through speaks for one cause.
 *
 * @param cause which
 * @param strength chance that this was enough to harm such a plant, 0..1, given how uncertain
 *     limits and air are
 * @param share part of the harm laid to this cause when all are weighed together, 0..1; the shares
 *     of one plant sum to 1
 * @param day on which it was worst; empty for {@link Cause#NOT_TEMPERATURE}
 */
public record ScoredCause(Cause cause, double strength, double share, Optional<LocalDate> day) {
  /** Share from which a cause is called likely; below it the next one is to be named too. */
  public static final double CLEAR_SHARE = 0.8;

  /** Whether it may be called likely by itself. */
  public boolean isClear() {
    return share >= CLEAR_SHARE;
  }
}
