package org.hibernacle.oracle;

/** Settled snow; docs/models/snow.md. */
final class Blanket {
  private static final double RHO = 0.3;
  private static final double W_PER_MK = 0.138 - 1.01 * RHO + 3.233 * RHO * RHO;

  private Blanket() {}

  /** What so much snow, in m, holds back, m2K/W. */
  static double m2KPerW(double depthM) {
    return depthM / W_PER_MK;
  }
}
