package org.hibernacle.input;

/**
 * What is done about days that are missing or hard to believe.
 *
 * @param suspect days that are hard to believe
 * @param gaps missing days
 * @param joinDays longest gap that is joined, days; counts only for {@link Gaps#JOIN}
 */
public record QualityPolicy(Suspect suspect, Gaps gaps, int joinDays) {
  /** Longest gap that may be joined: a straight line over more than a week is no weather. */
  public static final int MOST_JOIN_DAYS = 7;

  /** Most days that are joined within a year, as many as are bridged in the core of a winter. */
  public static final int MOST_JOINED_DAYS = 10;

  /** Refuses what is hard to believe and leaves gaps as they are. */
  public static final QualityPolicy STRICT = new QualityPolicy(Suspect.REFUSE, Gaps.LEAVE, 0);

  /** Uses everything as it stands, for loggers under a roof, where air may stand still. */
  public static final QualityPolicy LENIENT = new QualityPolicy(Suspect.KEEP, Gaps.LEAVE, 0);

  /** What is done about a day that is hard to believe. */
  public enum Suspect {
    /** It is an error. */
    REFUSE,
    /** It is used as it stands, and told. */
    KEEP,
    /** It counts as missing, and is told. */
    DROP
  }

  /** What is done about missing days between the first and the last. */
  public enum Gaps {
    /** They are an error. */
    REFUSE,
    /** They are left to the choice of winters, which bridges the shortest. */
    LEAVE,
    /** A straight line takes their place, and is told. */
    JOIN
  }

  public QualityPolicy {
    if (joinDays < 0 || joinDays > MOST_JOIN_DAYS) {
      throw new IllegalArgumentException("joinDays must be 0 to " + MOST_JOIN_DAYS);
    }
  }

  boolean drops() {
    return suspect == Suspect.DROP;
  }
}
