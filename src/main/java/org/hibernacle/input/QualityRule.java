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

  /** Longest run of days taken for one lost sign. */
  static final int SIGN_DAYS = 10;

  /** K. */
  static final double SIGN_STEP_K = 18;

  /** K. */
  static final double SIGN_FIT_K = 6;
}
