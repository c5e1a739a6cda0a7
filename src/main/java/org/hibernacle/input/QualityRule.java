package org.hibernacle.input;

/**
 * Why a day is hard to believe. Where a rule comes from an archive's checks, its limit is that of
 * Durre, Menne, Gleason, Houston and Vose (2010), Comprehensive Automated Quality Assurance of
 * Daily Surface Observations, J. Appl. Meteor. Climatol. 49, 1615-1633, as the archive's pages on
 * quality control tell it.
 */
enum QualityRule {
  /** Away from the days before and after, and back, by more than {@link #SPIKE_K}. Durre et al. */
  SPIKE,

  /**
   * Highest above every lowest, or lowest below every highest, of three days by {@link #RANGE_K} or
   * more. Durre et al.
   */
  WIDE,

  /**
   * Runs of {@link #COPIED_DAYS} or more days that stand elsewhere with the same figures. Durre et
   * al. compare whole months and years; a shorter run of both extremes is no chance either.
   */
  COPIED,

  /**
   * {@link #DEVIATIONS} standard deviations or more from what the file has within a week of that
   * date in all years, or {@link #APART_K} or more from every other day of that calendar month.
   * Durre et al.
   */
  OUTLIER,

  /** The same lowest or highest on {@link #STREAK_DAYS} days in a row. Durre et al. */
  STUCK,

  /**
   * Days that fit their neighbours only with the other sign; common practice, no source. At both
   * joints the lowest leaps by more than {@link #SIGN_STEP_K}, the highest by two thirds of that,
   * and the middles are within {@link #SIGN_FIT_K} when turned.
   */
  LOST_SIGN;

  /** K. */
  static final double SPIKE_K = 25;

  /** K. */
  static final double RANGE_K = 40;

  /** Days. */
  static final int STREAK_DAYS = 20;

  /** Days; common practice, no source. */
  static final int COPIED_DAYS = 20;

  /** Standard deviations. */
  static final double DEVIATIONS = 6;

  /** K. */
  static final double APART_K = 10;

  /** Longest run of days taken for one lost sign. */
  static final int SIGN_DAYS = 10;

  /** K. */
  static final double SIGN_STEP_K = 18;

  /** K. */
  static final double SIGN_FIT_K = 6;
}
