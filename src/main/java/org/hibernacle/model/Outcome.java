package org.hibernacle.model;

/** How a plant came through its winter, mildest first. */
public enum Outcome {
  NO_DAMAGE,
  /** Tips died back. */
  TIPS,
  /** Branches were lost. */
  BRANCHES,
  DEAD,
  /** Sold, given away or stolen: it says nothing of the winter. */
  GONE;

  /** Whether the winter, or something else in it, harmed the plant. */
  public boolean harmed() {
    return this == TIPS || this == BRANCHES || this == DEAD;
  }
}
