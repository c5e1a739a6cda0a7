package org.hibernacle.thermal;

/**
 * One heat store with a freezing plateau at 0 °C.
 *
 * <p>Its heat {@code H}, in joule, counts from unfrozen at 0 °C: {@code H > 0} is {@code T = H /
 * Cu}; {@code -L <= H <= 0} is the plateau with frozen share {@code -H / L}; below it {@code T = (H
 * + L) / Cf}. Source: Incropera, DeWitt, Fundamentals of Heat and Mass Transfer, ch. 5 (lumped
 * capacitance, from memory).
 */
final class HeatStore {
  /** Latent heat of water per volume, J/m3. */
  static final double WATER_LATENT_J_PER_M3 = 334e6;

  private static final double SOLID_J_PER_M3K = 0.90e6;
  private static final double WATER_J_PER_M3K = 4.18e6;
  private static final double ICE_J_PER_M3K = 1.9e6;

  final double unfrozenJPerK;
  final double frozenJPerK;
  final double latentJ;
  double heatJ;
  private final double unfrozenKPerJ;
  private final double frozenKPerJ;

  /** A volume of substrate at one temperature, with water in it, 0..0.9. */
  HeatStore(double volumeM3, double waterFraction, double startC) {
    this(
        volumeM3 * (SOLID_J_PER_M3K + waterFraction * WATER_J_PER_M3K),
        volumeM3 * (SOLID_J_PER_M3K + waterFraction * ICE_J_PER_M3K),
        volumeM3 * waterFraction * WATER_LATENT_J_PER_M3,
        startC);
  }

  /** A store of given capacities, J/K, and latent heat, J. */
  HeatStore(double unfrozenJPerK, double frozenJPerK, double latentJ, double startC) {
    this.unfrozenJPerK = unfrozenJPerK;
    this.frozenJPerK = frozenJPerK;
    this.latentJ = latentJ;
    this.unfrozenKPerJ = 1 / unfrozenJPerK;
    this.frozenKPerJ = 1 / frozenJPerK;
    setSensible(startC);
  }

  /** °C. */
  double temperatureC() {
    if (heatJ > 0) {
      return heatJ * unfrozenKPerJ;
    }
    return heatJ < -latentJ ? (heatJ + latentJ) * frozenKPerJ : 0;
  }

  /** Heat capacity clear of the plateau, J/K. */
  double joulePerK() {
    return heatJ > 0 ? unfrozenJPerK : frozenJPerK;
  }

  /** Sets a temperature clear of the plateau, °C: above 0 unfrozen, below 0 frozen through. */
  void setSensible(double temperatureC) {
    heatJ = temperatureC > 0 ? unfrozenJPerK * temperatureC : frozenJPerK * temperatureC - latentJ;
  }

  /** Share of the water that is ice, 0..1. */
  double ice() {
    if (heatJ >= 0) {
      return 0;
    }
    return heatJ <= -latentJ ? 1 : -heatJ / latentJ;
  }

  /** 1 unfrozen, 0 on its plateau, -1 frozen through. */
  int state() {
    if (heatJ > 0) {
      return 1;
    }
    return heatJ < -latentJ ? -1 : 0;
  }

  /** Mean temperature over a time in which it answers to 0 °C, °C; 0 on the plateau. */
  double meanTowardsZeroC(double wattPerK, double seconds) {
    double temperatureC = temperatureC();
    if (temperatureC == 0) {
      return 0;
    }
    double spans = seconds * wattPerK / joulePerK();
    return temperatureC * (1 - Math.exp(-spans)) / spans;
  }

  /**
   * Heat after {@code seconds} against constant surroundings, in closed form: exponential above and
   * below the plateau, linear on it, branch by branch.
   */
  double advance(double aroundC, double wattPerK, double seconds) {
    double heat = heatJ;
    double left = seconds;
    if (heat > 0 || (heat == 0 && aroundC > 0)) {
      double fromC = heat * unfrozenKPerJ;
      double endC = aroundC + (fromC - aroundC) * Math.exp(-seconds * wattPerK / unfrozenJPerK);
      if (endC >= 0) {
        return unfrozenJPerK * endC;
      }
      left -= timeToZero(fromC, aroundC, unfrozenJPerK / wattPerK);
      heat = 0;
    } else if (heat < -latentJ || (heat == -latentJ && aroundC < 0)) {
      double fromC = (heat + latentJ) * frozenKPerJ;
      double endC = aroundC + (fromC - aroundC) * Math.exp(-seconds * wattPerK / frozenJPerK);
      if (endC <= 0) {
        return frozenJPerK * endC - latentJ;
      }
      left -= timeToZero(fromC, aroundC, frozenJPerK / wattPerK);
      heat = -latentJ;
    }
    return fromPlateau(heat, aroundC, wattPerK, left);
  }

  /** The rest of a step that is on the plateau at its start. */
  private double fromPlateau(double heat, double aroundC, double wattPerK, double left) {
    double watt = wattPerK * aroundC;
    double end = heat + watt * left;
    if (end > 0) {
      double beyond = left + heat / watt;
      return unfrozenJPerK * aroundC * (1 - Math.exp(-beyond * wattPerK / unfrozenJPerK));
    }
    if (end < -latentJ) {
      double beyond = left + (heat + latentJ) / watt;
      return frozenJPerK * aroundC * (1 - Math.exp(-beyond * wattPerK / frozenJPerK)) - latentJ;
    }
    return end;
  }

  private static double timeToZero(double fromC, double aroundC, double tauS) {
    return tauS * Math.log((fromC - aroundC) / -aroundC);
  }
}
