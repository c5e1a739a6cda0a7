package org.hibernacle.review;

import java.util.List;

/**
 * Which cold plants of one species stood and which not. Cold is told as for fully hardened roots:
 * the root ball's lowest temperature, less what the limit of that day stood above the midwinter
 * one.
 *
 * @param taxon whose roots
 * @param points one a row, coldest first
 * @param found what they say
 */
public record DoseResponse(String taxon, List<Point> points, Found found) {
  /**
   * One row of the inventory.
   *
   * @param id of the plant
   * @param coldC how cold its roots got, as for fully hardened ones, °C
   * @param harmed whether it was harmed
   */
  public record Point(String id, double coldC, boolean harmed) {}

  /** What the points say. */
  public sealed interface Found permits Lt50, Bounds {}

  /**
   * The cold that harms half, by a logistic fit.
   *
   * @param coldC that cold, °C
   * @param standardErrorK of it, K
   * @param lowC lower end of its 95 % interval (Fieller), °C
   * @param highC upper end, °C
   */
  public record Lt50(double coldC, double standardErrorK, double lowC, double highC)
      implements Found {}

  /**
   * No more than what was seen.
   *
   * @param why there is no figure
   * @param survivors rows that were not harmed
   * @param coldestSurvivedC coldest of these, °C; not a number if there is none
   * @param harmed rows that were
   * @param warmestHarmedC warmest of these, °C; not a number if there is none
   */
  public record Bounds(
      Why why, int survivors, double coldestSurvivedC, int harmed, double warmestHarmedC)
      implements Found {}

  /** Why there is no figure. */
  public enum Why {
    NONE_HARMED,
    ALL_HARMED,
    /** Fewer than six rows. */
    TOO_FEW,
    /** Every harmed row met more cold than every other: any steepness fits. */
    SEPARATED,
    /** Harm does not clearly grow with cold. */
    FLAT
  }

  public DoseResponse {
    points = List.copyOf(points);
  }
}
