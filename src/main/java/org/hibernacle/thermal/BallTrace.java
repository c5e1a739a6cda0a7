package org.hibernacle.thermal;

/**
 * A root ball and the air around it through a winter, by night: night {@code k} runs from noon of
 * day {@code k} to noon of the next, so that a pot carried on a day spends that day's night in its
 * new place.
 *
 * @param ballMinC lowest edge temperature, °C
 * @param ballMinHour hour of the winter at which that was
 * @param ballMeanC mean of edge and core, °C
 * @param edgeIceMax most ice in the edge shell, 0..1
 * @param coreIceMin least ice in the core, 0..1; 1 means frozen through all the time
 * @param airMinC lowest air around the plant, °C
 * @param airMinHour hour of the winter at which that was
 * @param airMeanC mean air, °C
 */
public record BallTrace(
    double[] ballMinC,
    int[] ballMinHour,
    double[] ballMeanC,
    double[] edgeIceMax,
    double[] coreIceMin,
    double[] airMinC,
    int[] airMinHour,
    double[] airMeanC) {

  /** An empty trace of that many nights. */
  static BallTrace ofNights(int nights) {
    return new BallTrace(
        new double[nights],
        new int[nights],
        new double[nights],
        new double[nights],
        new double[nights],
        new double[nights],
        new int[nights],
        new double[nights]);
  }

  /** Nights. */
  public int nights() {
    return ballMinC.length;
  }

  /** Copies one night of another trace, for a first guess at a path through several places. */
  public void copyNight(BallTrace from, int night) {
    ballMinC[night] = from.ballMinC[night];
    ballMinHour[night] = from.ballMinHour[night];
    ballMeanC[night] = from.ballMeanC[night];
    edgeIceMax[night] = from.edgeIceMax[night];
    coreIceMin[night] = from.coreIceMin[night];
    airMinC[night] = from.airMinC[night];
    airMinHour[night] = from.airMinHour[night];
    airMeanC[night] = from.airMeanC[night];
  }
}
