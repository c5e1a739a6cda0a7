package org.hibernacle.thermal;

/**
 * What four quarter-hour steps do to a ball whose edge and core both stay above, or both stay
 * below, their plateau: one linear map of edge, core and surroundings, worked out once for each
 * coupling. Equal to the steps to rounding, and ten times as fast; a ball spends most of its winter
 * in one of these two states.
 *
 * @param edgeByEdge edge after the hour per kelvin of edge before
 * @param edgeByCore per kelvin of core before
 * @param edgeByAround per kelvin of surroundings
 * @param coreByEdge core after the hour per kelvin of edge before
 * @param coreByCore per kelvin of core before
 * @param coreByAround per kelvin of surroundings
 */
record LinearHour(
    double edgeByEdge,
    double edgeByCore,
    double edgeByAround,
    double coreByEdge,
    double coreByCore,
    double coreByAround) {
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
        next.edgeByEdge * edgeByEdge + next.edgeByCore * coreByEdge,
        next.edgeByEdge * edgeByCore + next.edgeByCore * coreByCore,
        next.edgeByEdge * edgeByAround + next.edgeByCore * coreByAround + next.edgeByAround,
        next.coreByEdge * edgeByEdge + next.coreByCore * coreByEdge,
        next.coreByEdge * edgeByCore + next.coreByCore * coreByCore,
        next.coreByEdge * edgeByAround + next.coreByCore * coreByAround + next.coreByAround);
  }

  /** Edge after the hour, °C. */
  double edgeC(double edgeC, double coreC, double aroundC) {
    return edgeByEdge * edgeC + edgeByCore * coreC + edgeByAround * aroundC;
  }

  /** Core after the hour, °C. */
  double coreC(double edgeC, double coreC, double aroundC) {
    return coreByEdge * edgeC + coreByCore * coreC + coreByAround * aroundC;
  }
}
