package org.hibernacle.planning;

/**
 * One two-handed lift, as the revised NIOSH lifting equation sees it: {@code 23 kg * (25/H) * (1 -
 * 0.003 |V - 75|) * (0.82 + 4.5/D) * (1 - 0.0032 A) * FM * CM}.
 *
 * <p>Source: Waters, Putz-Anderson, Garg, Applications Manual for the Revised NIOSH Lifting
 * Equation, DHHS (NIOSH) 94-110, 1994. H and D below 25 cm count as 25; nothing may be lifted
 * beyond H 63, V 175, D 175 cm or A 135° (the bounds from memory). For smooth lifts on good footing
 * only.
 *
 * @param outCm H, hands in front of the ankles, cm
 * @param fromCm V, height of the hands at the start, cm
 * @param byCm D, how far the load travels up or down, cm
 * @param turnDeg A, how far the body turns, degrees
 * @param oftenShare FM, 1 for now and then, less the more often
 * @param gripShare CM, 1 good, 0.95 fair, 0.90 poor
 */
record Lift(
    double outCm, double fromCm, double byCm, double turnDeg, double oftenShare, double gripShare) {
  /** What an ideal lift may weigh, kg. */
  static final double IDEAL_KG = 23;

  /** Recommended weight limit, kg; 0 for what should not be done at all. */
  double limitKg() {
    if (outCm > 63 || fromCm > 175 || byCm > 175 || turnDeg > 135) {
      return 0;
    }
    double out = 25 / Math.max(25, outCm);
    double height = 1 - 0.003 * Math.abs(fromCm - 75);
    double travel = 0.82 + 4.5 / Math.max(25, byCm);
    double turn = 1 - 0.0032 * turnDeg;
    return IDEAL_KG * out * height * travel * turn * oftenShare * gripShare;
  }
}
