package org.hibernacle.thermal;

/**
 * How easily heat passes inside a root ball: from its surface to the middle of the edge shell, and
 * from there to where the core freezes or thaws.
 *
 * <p>The ball is seen as the long cylinder that has its volume {@code V} and surface {@code A}.
 * Between the shells that enclose the shares {@code a > b} of the volume heat meets {@code ln(a/b)
 * / 2g}, with {@code g = k A^2 / 2V} W/K. The front of freezing, or of thawing, walks inwards: with
 * the share {@code x} of the core still to be changed it stands at {@code x} times the core, so the
 * way to it is longer by {@code -ln(x) / 2g}; at most by {@value #LONGEST} {@code / g}, which is
 * also taken where edge and core are in the same state and no front is between them.
 *
 * <p>Source: conduction through cylindrical shells (Incropera, DeWitt, ch. 3, from memory); the
 * longest way was chosen by comparison with balls cut into many shells, see docs/models/root-ball.
 */
final class InnerPath {
  /** Conductivity of an unfrozen ball, W/mK; own round figure between peat and sand. */
  static final double UNFROZEN_W_PER_MK = 0.8;

  /**
   * Ice over water, conductivities 2.2 and 0.57 W/mK: a medium gains this factor to the power of
   * its water share in freezing (geometric mean of its parts: Johansen 1975, from memory).
   */
  static final double ICE_OVER_WATER = 2.2 / 0.57;

  /** Most that the way to the front adds, in units of {@code 1/g}. */
  static final double LONGEST = 0.5;

  /** From this share on the way to the front is the longest. */
  private static final double LONGEST_FROM = 1 - Math.exp(-2 * LONGEST);

  private static final double OUTER_HALF = -Math.log(1 - RootBall.EDGE_SHARE / 2) / 2;
  private static final double INNER_HALF =
      Math.log((1 - RootBall.EDGE_SHARE / 2) / (1 - RootBall.EDGE_SHARE)) / 2;

  private final double unfrozenWPerK;
  private final double frozenWPerK;

  /**
   * The paths of a ball.
   *
   * @param volumeM3 of the ball, m3
   * @param surfaceM2 of the ball, m2
   * @param waterFraction 0..0.9
   */
  InnerPath(double volumeM3, double surfaceM2, double waterFraction) {
    unfrozenWPerK = UNFROZEN_W_PER_MK * surfaceM2 * surfaceM2 / (2 * volumeM3);
    frozenWPerK = unfrozenWPerK * Math.pow(ICE_OVER_WATER, waterFraction);
  }

  /** Conductance from the surroundings to the middle of the edge, W/K. */
  double outerWPerK(double aroundWPerK, double edgeIceShare) {
    return 1 / (1 / aroundWPerK + OUTER_HALF / perShellWPerK(edgeIceShare));
  }

  /** Conductance between the middle of the edge and the core, W/K. */
  double innerWPerK(double edgeIceShare, double coreIceShare) {
    double alike = edgeIceShare * coreIceShare + (1 - edgeIceShare) * (1 - coreIceShare);
    double toFront = alike < LONGEST_FROM ? -Math.log(1 - alike) / 2 : LONGEST;
    return perShellWPerK(edgeIceShare) / (INNER_HALF + toFront);
  }

  private double perShellWPerK(double edgeIceShare) {
    return unfrozenWPerK + (frozenWPerK - unfrozenWPerK) * edgeIceShare;
  }
}
