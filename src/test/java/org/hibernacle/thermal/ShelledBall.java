package org.hibernacle.thermal;

/**
 * A ball cut into many shells from its middle to its wall, each with its own heat content: the
 * finite-volume enthalpy method in small explicit steps. Shares nothing with the program. It knows
 * no top and no floor: a plate, a long cylinder or a sphere that has the volume and the surface of
 * the ball.
 */
final class ShelledBall {
  /** How the area grows with the distance from the middle: its power. */
  enum Shape {
    PLATE,
    CYLINDER,
    SPHERE
  }

  /**
   * What fills it.
   *
   * @param unfrozenJPerM3K heat capacity
   * @param frozenJPerM3K heat capacity
   * @param latentJPerM3 latent heat
   * @param unfrozenWPerMK conductivity
   * @param frozenWPerMK conductivity
   */
  record Medium(
      double unfrozenJPerM3K,
      double frozenJPerM3K,
      double latentJPerM3,
      double unfrozenWPerMK,
      double frozenWPerMK) {
    double temperatureC(double joulePerM3) {
      if (joulePerM3 > 0) {
        return joulePerM3 / unfrozenJPerM3K;
      }
      return Math.min(0, (joulePerM3 + latentJPerM3) / frozenJPerM3K);
    }

    double ice(double joulePerM3) {
      return Math.min(1, Math.max(0, -joulePerM3 / latentJPerM3));
    }

    double wattPerMK(double joulePerM3) {
      return unfrozenWPerMK + (frozenWPerMK - unfrozenWPerMK) * ice(joulePerM3);
    }
  }

  private static final double EDGE_SHARE = 0.35;

  private final Medium medium;
  private final double wallWPerM2K;
  private final double shellM;
  private final double longestS;
  private final double[] volumeM3;
  private final double[] joulePerM3;

  /** Outer surface of each shell; the last one is the wall. */
  private final double[] outsideM2;

  /**
   * A ball at one temperature above freezing.
   *
   * @param wallWPerM2K from its surface to the surroundings, per area
   */
  ShelledBall(
      Shape shape,
      int shells,
      double ballM3,
      double surfaceM2,
      Medium medium,
      double wallWPerM2K,
      double startC) {
    this.medium = medium;
    this.wallWPerM2K = wallWPerM2K;
    int power = shape.ordinal();
    shellM = (power + 1) * ballM3 / surfaceM2 / shells;
    volumeM3 = new double[shells];
    joulePerM3 = new double[shells];
    outsideM2 = new double[shells];
    for (int i = 0; i < shells; i++) {
      double inner = (double) i / shells;
      double outer = (i + 1.0) / shells;
      volumeM3[i] = ballM3 * (Math.pow(outer, power + 1) - Math.pow(inner, power + 1));
      joulePerM3[i] = medium.unfrozenJPerM3K * startC;
      outsideM2[i] = surfaceM2 * Math.pow(outer, power);
    }
    double fastestM2PerS =
        Math.max(medium.unfrozenWPerMK, medium.frozenWPerMK)
            / Math.min(medium.unfrozenJPerM3K, medium.frozenJPerM3K);
    longestS = 0.3 * shellM * shellM / fastestM2PerS;
  }

  void pass(double aroundC, double seconds) {
    int steps = (int) Math.ceil(seconds / longestS);
    for (int step = 0; step < steps; step++) {
      pass(aroundC, seconds / steps, joulePerM3.length - 1);
    }
  }

  private void pass(double aroundC, double seconds, int last) {
    double inwardJ = 0;
    for (int i = 0; i <= last; i++) {
      double hereC = medium.temperatureC(joulePerM3[i]);
      double half = shellM / 2 / medium.wattPerMK(joulePerM3[i]);
      double outwardC = aroundC;
      double m2KPerW = half + 1 / wallWPerM2K;
      if (i < last) {
        outwardC = medium.temperatureC(joulePerM3[i + 1]);
        m2KPerW = half + shellM / 2 / medium.wattPerMK(joulePerM3[i + 1]);
      }
      double fromOutsideJ = outsideM2[i] * (outwardC - hereC) / m2KPerW * seconds;
      joulePerM3[i] += (fromOutsideJ - inwardJ) / volumeM3[i];
      inwardJ = fromOutsideJ;
    }
  }

  /** Mean over the outer 35 % of the volume, °C. */
  double edgeC() {
    double sum = 0;
    for (int i = 0; i < volumeM3.length; i++) {
      sum += edgeM3(i) * medium.temperatureC(joulePerM3[i]);
    }
    return sum / (EDGE_SHARE * ballM3());
  }

  /** Mean over the rest, °C. */
  double coreC() {
    double sum = 0;
    for (int i = 0; i < volumeM3.length; i++) {
      sum += (volumeM3[i] - edgeM3(i)) * medium.temperatureC(joulePerM3[i]);
    }
    return sum / ((1 - EDGE_SHARE) * ballM3());
  }

  /** Share of ice within the core. */
  double coreIce() {
    double sum = 0;
    for (int i = 0; i < volumeM3.length; i++) {
      sum += (volumeM3[i] - edgeM3(i)) * medium.ice(joulePerM3[i]);
    }
    return sum / ((1 - EDGE_SHARE) * ballM3());
  }

  /** How deep the ice reaches from the wall, m. */
  double frozenDepthM() {
    double depthM = 0;
    for (double joule : joulePerM3) {
      depthM += shellM * medium.ice(joule);
    }
    return depthM;
  }

  private double ballM3() {
    double sum = 0;
    for (double m3 : volumeM3) {
      sum += m3;
    }
    return sum;
  }

  /** Part of a shell that belongs to the edge. */
  private double edgeM3(int shell) {
    double inside = 0;
    for (int i = 0; i < shell; i++) {
      inside += volumeM3[i];
    }
    double coreM3 = (1 - EDGE_SHARE) * ballM3();
    return volumeM3[shell] - Math.min(volumeM3[shell], Math.max(0, coreM3 - inside));
  }
}
