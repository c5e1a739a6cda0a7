package org.hibernacle.model;

import java.time.LocalDate;

/**
 * A run of whole days.
 *
 * @param fromInclusive first day
 * @param toExclusive day after the last; later than {@code fromInclusive}
 */
public record DateSpan(LocalDate fromInclusive, LocalDate toExclusive) {
  public DateSpan {
    if (!fromInclusive.isBefore(toExclusive)) {
      throw new IllegalArgumentException("empty span " + fromInclusive + " to " + toExclusive);
    }
  }

  /** Whether the day lies in the span. */
  public boolean contains(LocalDate day) {
    return !day.isBefore(fromInclusive) && day.isBefore(toExclusive);
  }
}
