package org.hibernacle.review;

import java.util.OptionalDouble;

/**
 * How plants of one kind came through. Rows are counted, since the pots of a row share one outcome;
 * plants that are gone are not.
 *
 * @param by what they have in common
 * @param key species, group, place, pot size or root work: the name of an enum constant where there
 *     is one, else the word itself
 * @param survived rows not dead, of all
 * @param undamaged rows without any harm, of all
 * @param pots of all rows
 * @param potsDead of these
 * @param assumed rows whose outcome the log does not tell
 * @param valueDead worth of the dead; empty if none has a value
 */
public record Survival(
    By by,
    String key,
    Proportion survived,
    Proportion undamaged,
    int pots,
    int potsDead,
    int assumed,
    OptionalDouble valueDead) {

  /** What plants have in common. */
  public enum By {
    ALL,
    SPECIES,
    GROUP,
    /** Where they spent midwinter. */
    PLACE,
    POT_SIZE,
    ROOT_WORK
  }

  /** Sizes of pots. */
  public enum PotSize {
    /** Below 2 L. */
    SMALL,
    /** 2 to 10 L. */
    MIDDLE,
    /** Above 10 L. */
    LARGE
  }

  /** Age of roots. */
  public enum RootWork {
    /** Roots were disturbed in the half year before the season, or in it. */
    DISTURBED,
    UNDISTURBED
  }
}
