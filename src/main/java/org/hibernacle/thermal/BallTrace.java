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

  /** Copies nights of another trace. */
  void copyNights(BallTrace from, int fromInclusive, int toExclusive) {
    int nights = toExclusive - fromInclusive;
    System.arraycopy(from.ballMinC, fromInclusive, ballMinC, fromInclusive, nights);
    System.arraycopy(from.ballMinHour, fromInclusive, ballMinHour, fromInclusive, nights);
    System.arraycopy(from.ballMeanC, fromInclusive, ballMeanC, fromInclusive, nights);
    System.arraycopy(from.edgeIceMax, fromInclusive, edgeIceMax, fromInclusive, nights);
    System.arraycopy(from.coreIceMin, fromInclusive, coreIceMin, fromInclusive, nights);
    System.arraycopy(from.airMinC, fromInclusive, airMinC, fromInclusive, nights);
    System.arraycopy(from.airMinHour, fromInclusive, airMinHour, fromInclusive, nights);
    System.arraycopy(from.airMeanC, fromInclusive, airMeanC, fromInclusive, nights);
  }
}
