package org.hibernacle.thermal;

/**
 * A root ball as two heat stores, the edge shell along the wall and the core inside it, each with a
 * latent-heat plateau at 0 °C.
 *
 * <p>Each store holds heat {@code H} in joule, counted from unfrozen at 0 °C: {@code H > 0} is
 * {@code T = H / Cu}; {@code -L <= H <= 0} is the plateau with frozen share {@code -H / L}; below
 * it {@code T = (H + L) / Cf}. Over a step the surroundings are constant, and each branch is
 * stepped in closed form ({@link Store#advance}), so a small pot needs no small step. The edge is
 * stepped against surroundings and core together; what it drew from the core over the step is taken
 * from the core exactly, so that the heat balance closes.
 *
 * <p>Source of the lumped law and plateau: Incropera, DeWitt, Fundamentals of Heat and Mass
 * Transfer, ch. 5 (cited from memory); the two-store split is our own choice, because a pot's Biot
 * number is near 0.4 and wall roots freeze before the core.
 */
public final class RootBall {
  /**
   * Water share planned with, m3/m3: free-draining grit, the low end, since water is what slows
   * freezing. Common practice, no source.
   */
  public static final double WATER_FRACTION = 0.27;

  /** Latent heat of water per volume, J/m3. */
  static final double WATER_LATENT_J_PER_M3 = 334e6;

  /** Share of the ball's volume in the edge shell; own choice, 1 to 2 cm of a 5 L ball. */
  static final double EDGE_SHARE = 0.35;

  /** Step, s. */
  static final double STEP_S = 900;

  static final int STEPS_PER_HOUR = (int) (3600 / STEP_S);

  private static final double SOLID_J_PER_M3K = 0.90e6;
  private static final double WATER_J_PER_M3K = 4.18e6;
  private static final double ICE_J_PER_M3K = 1.9e6;
  private static final double CONDUCTIVITY_W_PER_MK = 0.8;

  private final Store edge;
  private final Store core;
  private final double innerWPerK;
  private double keptAroundWPerK = -1;
  private double bothWPerK;
  private double aroundShare;
  private double kelvinPerStepJ;
  private double innerJPerKStep;
  private LinearHour unfrozenHour = LinearHour.NOTHING;
  private LinearHour frozenHour = LinearHour.NOTHING;

  /**
   * A ball at one temperature.
   *
   * @param pot its class
   * @param waterFraction 0..0.9
   * @param startC temperature at the start, °C (above 0, or frozen through below)
   */
  public RootBall(ThermalClass pot, double waterFraction, double startC) {
    double volumeM3 = pot.volumeL() / 1000;
    edge = new Store(volumeM3 * EDGE_SHARE, waterFraction, startC);
    core = new Store(volumeM3 * (1 - EDGE_SHARE), waterFraction, startC);
    double shellM2 = (pot.sideM2() + 2 * pot.footM2()) * Math.pow(1 - EDGE_SHARE / 2, 2.0 / 3);
    double pathM = 0.5 * volumeM3 / (pot.sideM2() + 2 * pot.footM2());
    double conducting = CONDUCTIVITY_W_PER_MK * shellM2 / pathM;
    // Tiny balls even out within minutes; slower than a step is all the same to a root.
    innerWPerK = Math.min(conducting, 0.5 * core.frozenJPerK / STEP_S);
  }

  /**
   * Lets one hour pass, in one go where the ball stays clear of its plateau, in steps where not.
   *
   * @param aroundC temperature of the surroundings, °C, weighted by conductance
   * @param aroundWPerK conductance to them, W/K (> 0)
   */
  public void hour(double aroundC, double aroundWPerK) {
    if (aroundWPerK != keptAroundWPerK) {
      keepShares(aroundWPerK);
    }
    boolean unfrozen = edge.heatJ > 0 && core.heatJ > 0;
    boolean frozen = edge.heatJ < -edge.latentJ && core.heatJ < -core.latentJ;
    if (unfrozen || frozen) {
      LinearHour hour = unfrozen ? unfrozenHour : frozenHour;
      double edgeC = edge.temperatureC();
      double coreC = core.temperatureC();
      double nextEdgeC = hour.edgeC(edgeC, coreC, aroundC);
      double nextCoreC = hour.coreC(edgeC, coreC, aroundC);
      if (unfrozen ? nextEdgeC > 0 && nextCoreC > 0 : nextEdgeC < 0 && nextCoreC < 0) {
        edge.setSensible(nextEdgeC);
        core.setSensible(nextCoreC);
        return;
      }
    }
    for (int step = 0; step < STEPS_PER_HOUR; step++) {
      step(aroundC, aroundWPerK);
    }
  }

  /**
   * Lets one step of {@link #STEP_S} pass.
   *
   * @param aroundC temperature of the surroundings, °C, weighted by conductance
   * @param aroundWPerK conductance to them, W/K (> 0)
   */
  public void step(double aroundC, double aroundWPerK) {
    if (aroundWPerK != keptAroundWPerK) {
      keepShares(aroundWPerK);
    }
    double coreC = core.temperatureC();
    double pullC = aroundShare * aroundC + (1 - aroundShare) * coreC;
    double before = edge.heatJ;
    edge.heatJ = edge.advance(pullC, bothWPerK, STEP_S);
    double edgeMeanC = pullC - (edge.heatJ - before) * kelvinPerStepJ;
    core.heatJ -= innerJPerKStep * (coreC - edgeMeanC);
  }

  /** Shares change only with the place, and division is most of a step's work. */
  private void keepShares(double aroundWPerK) {
    keptAroundWPerK = aroundWPerK;
    bothWPerK = aroundWPerK + innerWPerK;
    aroundShare = aroundWPerK / bothWPerK;
    kelvinPerStepJ = 1 / (bothWPerK * STEP_S);
    innerJPerKStep = innerWPerK * STEP_S;
    unfrozenHour = hourOf(edge.unfrozenJPerK, core.unfrozenJPerK, aroundWPerK);
    frozenHour = hourOf(edge.frozenJPerK, core.frozenJPerK, aroundWPerK);
  }

  private LinearHour hourOf(double edgeJPerK, double coreJPerK, double aroundWPerK) {
    LinearHour step = LinearHour.step(edgeJPerK, coreJPerK, aroundWPerK, innerWPerK);
    LinearHour hour = LinearHour.NOTHING;
    for (int i = 0; i < STEPS_PER_HOUR; i++) {
      hour = hour.then(step);
    }
    return hour;
  }

  /** Temperature of the edge shell, °C: what roots at the wall feel, and what limits judge. */
  public double edgeC() {
    return edge.temperatureC();
  }

  /** Temperature of the core, °C. */
  public double coreC() {
    return core.temperatureC();
  }

  /** Share of the edge shell's water that is ice, 0..1. */
  public double edgeIce() {
    return edge.ice();
  }

  /** Share of the core's water that is ice, 0..1. */
  public double coreIce() {
    return core.ice();
  }

  /** Heat of the whole ball, J, counted from unfrozen at 0 °C. */
  public double heatJ() {
    return edge.heatJ + core.heatJ;
  }

  /** One heat store. */
  static final class Store {
    final double unfrozenJPerK;
    final double frozenJPerK;
    final double latentJ;
    double heatJ;
    private final double unfrozenKPerJ;
    private final double frozenKPerJ;
    private double keptWattPerK;
    private double keptSeconds;
    private double unfrozenDecay;
    private double frozenDecay;

    Store(double volumeM3, double waterFraction, double startC) {
      this(
          volumeM3 * (SOLID_J_PER_M3K + waterFraction * WATER_J_PER_M3K),
          volumeM3 * (SOLID_J_PER_M3K + waterFraction * ICE_J_PER_M3K),
          volumeM3 * waterFraction * WATER_LATENT_J_PER_M3,
          startC);
    }

    Store(double unfrozenJPerK, double frozenJPerK, double latentJ, double startC) {
      this.unfrozenJPerK = unfrozenJPerK;
      this.frozenJPerK = frozenJPerK;
      this.latentJ = latentJ;
      this.unfrozenKPerJ = 1 / unfrozenJPerK;
      this.frozenKPerJ = 1 / frozenJPerK;
      setSensible(startC);
    }

    double temperatureC() {
      if (heatJ > 0) {
        return heatJ * unfrozenKPerJ;
      }
      return heatJ < -latentJ ? (heatJ + latentJ) * frozenKPerJ : 0;
    }

    /** Sets a temperature clear of the plateau, °C: above 0 unfrozen, below 0 frozen through. */
    void setSensible(double temperatureC) {
      heatJ =
          temperatureC > 0 ? unfrozenJPerK * temperatureC : frozenJPerK * temperatureC - latentJ;
    }

    double ice() {
      if (heatJ >= 0) {
        return 0;
      }
      return heatJ <= -latentJ ? 1 : -heatJ / latentJ;
    }

    /**
     * Heat after {@code seconds} against constant surroundings, in closed form: exponential above
     * and below the plateau, linear on it, branch by branch.
     */
    double advance(double aroundC, double wattPerK, double seconds) {
      keepDecays(wattPerK, seconds);
      double heat = heatJ;
      double left = seconds;
      if (heat > 0 || (heat == 0 && aroundC > 0)) {
        double fromC = heat * unfrozenKPerJ;
        double endC = aroundC + (fromC - aroundC) * unfrozenDecay;
        if (endC >= 0) {
          return unfrozenJPerK * endC;
        }
        left -= timeToZero(fromC, aroundC, unfrozenJPerK / wattPerK);
        heat = 0;
      } else if (heat < -latentJ || (heat == -latentJ && aroundC < 0)) {
        double fromC = (heat + latentJ) * frozenKPerJ;
        double endC = aroundC + (fromC - aroundC) * frozenDecay;
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
        return unfrozenJPerK * aroundC * -Math.expm1(-beyond * wattPerK / unfrozenJPerK);
      }
      if (end < -latentJ) {
        double beyond = left + (heat + latentJ) / watt;
        return frozenJPerK * aroundC * -Math.expm1(-beyond * wattPerK / frozenJPerK) - latentJ;
      }
      return end;
    }

    /** A whole step's decays change only with the place, so they are worth keeping. */
    private void keepDecays(double wattPerK, double seconds) {
      if (wattPerK != keptWattPerK || seconds != keptSeconds) {
        keptWattPerK = wattPerK;
        keptSeconds = seconds;
        unfrozenDecay = Math.exp(-seconds * wattPerK / unfrozenJPerK);
        frozenDecay = Math.exp(-seconds * wattPerK / frozenJPerK);
      }
    }

    private static double timeToZero(double fromC, double aroundC, double tauS) {
      return tauS * Math.log((fromC - aroundC) / -aroundC);
    }
  }
}
