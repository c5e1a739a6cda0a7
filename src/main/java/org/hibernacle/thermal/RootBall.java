package org.hibernacle.thermal;

/**
 * A root ball as two heat stores, the edge shell along the wall and the core inside it, each with a
 * latent-heat plateau at 0 °C.
 *
 * <p>Heat goes from the surroundings to the middle of the edge shell, and from there into the core
 * ({@link InnerPath}). Every step is a closed form, so a small pot needs no small step: both stores
 * clear of their plateaus decay as a pair ({@link PairDecay}); a store on its plateau stands at 0
 * °C while the other one answers to it ({@link HeatStore#advance}). What one store draws from the
 * other is taken from that one exactly, so that the heat balance closes.
 *
 * <p>The split into two is our own choice, because a pot's Biot number is near 0.4 and wall roots
 * freeze before the core. How far it is from a ball cut into many shells: docs/models/root-ball.
 */
public final class RootBall {
  /**
   * Water share planned with, m3/m3: free-draining grit, the low end, since water is what slows
   * freezing. Common practice, no source.
   */
  public static final double WATER_FRACTION = 0.27;

  /** Share of the ball's volume in the edge shell; own choice, 1 to 2 cm of a 5 L ball. */
  static final double EDGE_SHARE = 0.35;

  /** Step, s. */
  static final double STEP_S = 900;

  /** Pieces of a step in which a plateau begins or ends. */
  private static final int PIECES = 15;

  static final int STEPS_PER_HOUR = (int) (3600 / STEP_S);

  private final HeatStore edge;
  private final HeatStore core;
  private final InnerPath path;
  private double keptAroundWPerK = -1;
  private PairDecay unfrozenHour = PairDecay.NOTHING;
  private PairDecay frozenHour = PairDecay.NOTHING;

  /**
   * A ball at one temperature.
   *
   * @param pot its class
   * @param waterFraction 0..0.9
   * @param startC temperature at the start, °C (above 0, or frozen through below)
   */
  public RootBall(ThermalClass pot, double waterFraction, double startC) {
    double volumeM3 = pot.volumeL() / 1000;
    edge = new HeatStore(volumeM3 * EDGE_SHARE, waterFraction, startC);
    core = new HeatStore(volumeM3 * (1 - EDGE_SHARE), waterFraction, startC);
    path = new InnerPath(volumeM3, pot.sideM2() + 2 * pot.footM2(), waterFraction);
  }

  /**
   * Lets one hour pass, in one go where the ball stays clear of its plateau, in steps where not.
   *
   * @param aroundC temperature of the surroundings, °C, weighted by conductance
   * @param aroundWPerK conductance from them to the surface of the ball, W/K (> 0)
   */
  public void hour(double aroundC, double aroundWPerK) {
    int state = edge.state();
    if (state != 0 && state == core.state()) {
      keepHours(aroundWPerK);
      PairDecay hour = state > 0 ? unfrozenHour : frozenHour;
      double edgeC = hour.edgeC(edge.temperatureC(), core.temperatureC(), aroundC);
      double coreC = hour.coreC(edge.temperatureC(), core.temperatureC(), aroundC);
      if (state * edgeC > 0 && state * coreC > 0) {
        decay(hour, aroundC);
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
   * @param aroundWPerK conductance from them to the surface of the ball, W/K (> 0)
   */
  public void step(double aroundC, double aroundWPerK) {
    double edgeJ = edge.heatJ;
    double coreJ = core.heatJ;
    int edgeState = edge.state();
    int coreState = core.state();
    pass(aroundC, aroundWPerK, STEP_S);
    if (edge.state() != edgeState || core.state() != coreState) {
      // A plateau began or ended on the way: again in small pieces, so that it does so on time.
      edge.heatJ = edgeJ;
      core.heatJ = coreJ;
      for (int piece = 0; piece < PIECES; piece++) {
        pass(aroundC, aroundWPerK, STEP_S / PIECES);
      }
    }
  }

  /** Lets a short time pass, at most a step, as if no plateau began or ended in it. */
  void pass(double aroundC, double aroundWPerK, double seconds) {
    double outerWPerK = path.outerWPerK(aroundWPerK, edge.ice());
    double innerWPerK = path.innerWPerK(edge.ice(), core.ice());
    if (edge.state() != 0 && core.state() != 0) {
      decay(
          PairDecay.of(edge.joulePerK(), core.joulePerK(), outerWPerK, innerWPerK, seconds),
          aroundC);
      return;
    }
    // One stands at 0 °C, the other answers to it.
    double bothWPerK = outerWPerK + innerWPerK;
    double coreMeanC = core.meanTowardsZeroC(innerWPerK, seconds);
    double pullC = (outerWPerK * aroundC + innerWPerK * coreMeanC) / bothWPerK;
    double edgeJ = edge.advance(pullC, bothWPerK, seconds);
    double edgeMeanC = pullC - (edgeJ - edge.heatJ) / (bothWPerK * seconds);
    edge.heatJ = edgeJ;
    core.heatJ += innerWPerK * seconds * (edgeMeanC - coreMeanC);
  }

  /** Heat that goes on flowing past 0 °C is freezing or thawing: the heat content tells. */
  private void decay(PairDecay decay, double aroundC) {
    double edgeC = edge.temperatureC();
    double coreC = core.temperatureC();
    edge.heatJ += edge.joulePerK() * (decay.edgeC(edgeC, coreC, aroundC) - edgeC);
    core.heatJ += core.joulePerK() * (decay.coreC(edgeC, coreC, aroundC) - coreC);
  }

  /** Hours change only with the place, so they are worth keeping. */
  private void keepHours(double aroundWPerK) {
    if (aroundWPerK != keptAroundWPerK) {
      keptAroundWPerK = aroundWPerK;
      unfrozenHour = hourOf(edge.unfrozenJPerK, core.unfrozenJPerK, aroundWPerK, 0);
      frozenHour = hourOf(edge.frozenJPerK, core.frozenJPerK, aroundWPerK, 1);
    }
  }

  private PairDecay hourOf(
      double edgeJPerK, double coreJPerK, double aroundWPerK, double iceShare) {
    return PairDecay.of(
        edgeJPerK,
        coreJPerK,
        path.outerWPerK(aroundWPerK, iceShare),
        path.innerWPerK(iceShare, iceShare),
        3600);
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

  /** Heat of the edge shell, J, counted from unfrozen at 0 °C. */
  double edgeJ() {
    return edge.heatJ;
  }

  /** Heat of the core, J, counted from unfrozen at 0 °C. */
  double coreJ() {
    return core.heatJ;
  }

  /** Whether its edge shell and its core hold exactly that heat, J. */
  boolean holds(double edgeJ, double coreJ) {
    return edge.heatJ == edgeJ && core.heatJ == coreJ;
  }

  /** Makes it hold that heat, J. */
  void hold(double edgeJ, double coreJ) {
    edge.heatJ = edgeJ;
    core.heatJ = coreJ;
  }

  /** Heat of the whole ball, J, counted from unfrozen at 0 °C. */
  public double heatJ() {
    return edge.heatJ + core.heatJ;
  }
}
