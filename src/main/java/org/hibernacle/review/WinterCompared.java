package org.hibernacle.review;

import java.util.List;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.KnownWinter;

/**
 * The winter beside those it was planned for.
 *
 * @param winter as it was
 * @param known those planned for, coldest night first; empty if the plan does not tell
 * @param rank of its coldest night among all of them: 1 is colder than any
 */
public record WinterCompared(WinterSummary winter, List<KnownWinter> known, int rank) {
  public WinterCompared {
    known = List.copyOf(known);
  }

  /** Whether it was colder than all that the plan knew. */
  public boolean colderThanAny() {
    return rank == 1 && !known.isEmpty();
  }
}
