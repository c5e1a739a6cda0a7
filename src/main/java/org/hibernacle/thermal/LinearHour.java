package org.hibernacle.thermal;

/**
 * What four quarter-hour steps do to a ball whose edge and core both stay above, or both stay
 * below, their plateau: one linear map of edge, core and surroundings, worked out once for each
 * coupling. Equal to the steps to rounding, and ten times as fast; a ball spends most of its winter
 * in one of these two states.
 *
 * @param edgeByEdgeShare edge after the hour per kelvin of edge before
 * @param edgeByCoreShare per kelvin of core before
 * @param edgeByAroundShare per kelvin of surroundings
 * @param coreByEdgeShare core after the hour per kelvin of edge before
 * @param coreByCoreShare per kelvin of core before
 * @param coreByAroundShare per kelvin of surroundings
 */
record LinearHour(
    double edgeByEdgeShare,
    double edgeByCoreShare,
    double edgeByAroundShare,
    double coreByEdgeShare,
    double coreByCoreShare,
    double coreByAroundShare) {
  static final LinearHour NOTHING = new LinearHour(1, 0, 0, 0, 1, 0);

  /**
   * One step of the scheme of {@link RootBall#step}.
   *
   * @param edgeJPerK heat capacity of the edge, J/K
   * @param coreJPerK heat capacity of the core, J/K
   * @param aroundWPerK conductance to the surroundings, W/K
   * @param innerWPerK conductance between edge and core, W/K
   */
  static LinearHour step(
      double edgeJPerK, double coreJPerK, double aroundWPerK, double innerWPerK) {
    double bothWPerK = aroundWPerK + innerWPerK;
    double aroundShare = aroundWPerK / bothWPerK;
    double decay = Math.exp(-RootBall.STEP_S * bothWPerK / edgeJPerK);
    double reach = 1 - decay;
    // Mean edge over the step: the pull, less what the edge took up per unit of coupling.
    double lag = edgeJPerK / (bothWPerK * RootBall.STEP_S);
    double exchange = innerWPerK * RootBall.STEP_S / coreJPerK;
    double meanByEdge = lag * reach;
    double meanByPull = 1 - lag * reach;
    return new LinearHour(
        decay,
        reach * (1 - aroundShare),
        reach * aroundShare,
        exchange * meanByEdge,
        1 - exchange + exchange * meanByPull * (1 - aroundShare),
        exchange * meanByPull * aroundShare);
  }

  /** This map, then another, under the same surroundings. */
  LinearHour then(LinearHour next) {
    return new LinearHour(
        next.edgeByEdgeShare * edgeByEdgeShare + next.edgeByCoreShare * coreByEdgeShare,
        next.edgeByEdgeShare * edgeByCoreShare + next.edgeByCoreShare * coreByCoreShare,
        next.edgeByEdgeShare * edgeByAroundShare
            + next.edgeByCoreShare * coreByAroundShare
            + next.edgeByAroundShare,
        next.coreByEdgeShare * edgeByEdgeShare + next.coreByCoreShare * coreByEdgeShare,
        next.coreByEdgeShare * edgeByCoreShare + next.coreByCoreShare * coreByCoreShare,
        next.coreByEdgeShare * edgeByAroundShare
            + next.coreByCoreShare * coreByAroundShare
            + next.coreByAroundShare);
  }

  /** Edge after the hour, °C. */
  double edgeC(double edgeC, double coreC, double aroundC) {
    return edgeByEdgeShare * edgeC + edgeByCoreShare * coreC + edgeByAroundShare * aroundC;
  }

  /** Core after the hour, °C. */
  double coreC(double edgeC, double coreC, double aroundC) {
    return coreByEdgeShare * edgeC + coreByCoreShare * coreC + coreByAroundShare * aroundC;
  }
}
