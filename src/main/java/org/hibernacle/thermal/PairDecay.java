package org.hibernacle.thermal;

/**
 * What a time does to an edge and a core that are both clear of their plateau: the exact solution
 * of their two coupled equations.
 *
 * <pre>
 * Ce dTe/dt = U (Ta - Te) + G (Tc - Te)
 * Cc dTc/dt = G (Te - Tc)
 * </pre>
 *
 * <p>Both end at the surroundings {@code Ta}, so what is left of the distances to it after the time
 * is the exponential of a matrix of two rows, here by its two (real, negative) eigenvalues.
 *
 * @param edgeFromEdgeShare what the edge keeps of its own distance to the surroundings
 * @param edgeFromCoreShare what it takes over of the core's
 * @param coreFromEdgeShare what the core takes over of the edge's
 * @param coreFromCoreShare what it keeps of its own
 */
record PairDecay(
    double edgeFromEdgeShare,
    double edgeFromCoreShare,
    double coreFromEdgeShare,
    double coreFromCoreShare) {
  /** Nothing has passed. */
  static final PairDecay NOTHING = new PairDecay(1, 0, 0, 1);

  /**
   * A time of constant surroundings.
   *
   * @param edgeJPerK heat capacity of the edge, J/K
   * @param coreJPerK heat capacity of the core, J/K
   * @param outerWPerK conductance from the surroundings to the edge, W/K
   * @param innerWPerK conductance between edge and core, W/K
   * @param seconds that pass
   */
  static PairDecay of(
      double edgeJPerK, double coreJPerK, double outerWPerK, double innerWPerK, double seconds) {
    double edgeRate = (outerWPerK + innerWPerK) / edgeJPerK;
    double coreRate = innerWPerK / coreJPerK;
    double toEdge = innerWPerK / edgeJPerK;
    double mean = -(edgeRate + coreRate) / 2;
    double spread = Math.sqrt(Math.pow((edgeRate - coreRate) / 2, 2) + toEdge * coreRate);
    double slow = Math.exp((mean + spread) * seconds);
    double fast = Math.exp((mean - spread) * seconds);
    double even = (slow + fast) / 2;
    double odd = (slow - fast) / (2 * spread);
    return new PairDecay(
        even + odd * (-edgeRate - mean),
        odd * toEdge,
        odd * coreRate,
        even + odd * (-coreRate - mean));
  }

  /** Edge after the time, °C. */
  double edgeC(double edgeC, double coreC, double aroundC) {
    return aroundC + edgeFromEdgeShare * (edgeC - aroundC) + edgeFromCoreShare * (coreC - aroundC);
  }

  /** Core after the time, °C. */
  double coreC(double edgeC, double coreC, double aroundC) {
    return aroundC + coreFromEdgeShare * (edgeC - aroundC) + coreFromCoreShare * (coreC - aroundC);
  }
}
