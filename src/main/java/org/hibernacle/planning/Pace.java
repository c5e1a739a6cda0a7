package org.hibernacle.planning;

/** Is told how far planning has come, by several threads at once: an answer takes no time. */
@FunctionalInterface
public interface Pace {
  /** What planning does one after the other. */
  enum Part {
    /** Simulates winters in all places. */
    WINTERS,
    /** Plans each plant as if it were alone. */
    PLANTS,
    /** Shares out room and hands; not counted. */
    SHARING,
    /** Looks for what would help, for as many plants planned again as it may take at most. */
    REMEDIES,
    /** Gives reasons, tasks and forecasts of each plant. */
    REASONS,
    /** Judges winters by plans from all the others. */
    JUDGED
  }

  /** Nobody listens. */
  Pace UNHEARD = (part, done, of) -> {};

  /**
   * Is told.
   *
   * @param done how much of the part is done; of what several threads tell, the most counts
   * @param of how much there is to do; 0 where it is not counted
   */
  void reached(Part part, int done, int of);
}
