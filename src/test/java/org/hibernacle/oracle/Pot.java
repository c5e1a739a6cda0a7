package org.hibernacle.oracle;

import org.hibernacle.model.Container;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;

/** One root ball in two parts, stepped forward in seconds; docs/models/root-ball.md. */
final class Pot {
  private static final double EDGE_SHARE = 0.35;
  private static final double WATER_SHARE = 0.27;
  private static final double UNFROZEN_J_PER_M3K = 0.90e6 + WATER_SHARE * 4.18e6;
  private static final double FROZEN_J_PER_M3K = 0.90e6 + WATER_SHARE * 1.9e6;
  private static final double LATENT_J_PER_M3 = WATER_SHARE * 334e6;
  private static final double BASE_W_PER_MK = 1.2;

  /** Shares of the ball inside the wall, the middle of the edge, and the edge. */
  private static final double TO_MIDDLE_OF_EDGE = resistance(1, 0.825);

  /** From here on the front is as far away as it can be. */
  private static final double MOSTLY = 1 - Math.exp(-1);

  private static final double TO_CORE = resistance(0.825, 0.65);

  /** What freezing does to conductivity: ice for water, in the power of the water's share. */
  private static final double FROZEN_GAIN = Math.pow(2.2 / 0.57, WATER_SHARE);

  private final Container container;
  private final double edgeM3;
  private final double coreM3;

  /** Conductance between two cylinders of which one is e squared times the other, W/K. */
  private final double unfrozenWPerK;

  /** Heat counted from unfrozen at 0 °C, J. */
  private double edgeJ;

  private double coreJ;

  Pot(Container container, double startC) {
    this.container = container;
    double volumeM3 = container.volumeL() / 1000;
    edgeM3 = EDGE_SHARE * volumeM3;
    coreM3 = volumeM3 - edgeM3;
    edgeJ = startC * UNFROZEN_J_PER_M3K * edgeM3;
    coreJ = startC * UNFROZEN_J_PER_M3K * coreM3;
    double surfaceM2 = container.sideM2() + 2 * container.footprintM2();
    unfrozenWPerK = 0.8 * surfaceM2 * surfaceM2 / (2 * volumeM3);
  }

  double edgeC() {
    return temperatureC(edgeJ, edgeM3);
  }

  double meanC() {
    return EDGE_SHARE * edgeC() + (1 - EDGE_SHARE) * temperatureC(coreJ, coreM3);
  }

  /** Share of the edge's water that is ice. */
  double iceShare() {
    return Math.min(1, Math.max(0, -edgeJ / (LATENT_J_PER_M3 * edgeM3)));
  }

  /** Share of the core's water that is ice. */
  double coreIceShare() {
    return Math.min(1, Math.max(0, -coreJ / (LATENT_J_PER_M3 * coreM3)));
  }

  /**
   * What the pot exchanges with its surroundings in a place.
   *
   * @param wallWPerK through side and top, with the air or with what mulch lets through
   * @param floorWPerK through the floor, with the air below a bench or with soil or slab
   * @param airBelow whether air passes below
   * @param skyWPerK through all that faces the night sky, a side counting half
   */
  record Contact(double wallWPerK, double floorWPerK, boolean airBelow, double skyWPerK) {}

  /** The same where so much snow lies on the ground, m. */
  Contact contact(Place place, boolean covered, double snowM) {
    boolean ground = place.kind() == PlaceKind.GROUND;
    boolean mulched = covered && place.cover() == Place.Cover.MULCH;
    Contact bare = contact(place, covered);
    if (!ground || snowM == 0) {
      return bare;
    }
    double foot = container.footprintM2();
    double toAir = 1 / surfaceWPerM2K(place);
    if (covered && place.cover() == Place.Cover.FLEECE) {
      toAir += Covers.FLEECE_M2K_PER_W;
    }
    if (mulched) {
      double lidM2KPerW =
          toAir + Math.min(place.coverDepthCm() / 100, 0.10) / Covers.MULCH_W_PER_MK;
      double topWPerK = foot / lidM2KPerW;
      double snowedTopWPerK = foot / (lidM2KPerW + Blanket.m2KPerW(snowM));
      return new Contact(
          bare.wallWPerK() - topWPerK + snowedTopWPerK, bare.floorWPerK(), bare.airBelow(), 0);
    }
    double heightM = container.depthCm() / 100;
    double inSnowM = Math.min(heightM, snowM);
    double wall = toAir + wallM2KPerW(container.material());
    double overMiddleM = snowM - inSnowM / 2;
    double openWPerK = container.sideM2() * (1 - inSnowM / heightM) / wall;
    double snowedWPerK =
        container.sideM2() * inSnowM / heightM / (wall + Blanket.m2KPerW(overMiddleM));
    double topWPerK = foot / (toAir + Blanket.m2KPerW(Math.max(0, snowM - heightM)));
    return new Contact(
        openWPerK + snowedWPerK + topWPerK,
        bare.floorWPerK(),
        bare.airBelow(),
        topWPerK + openWPerK / 2);
  }

  Contact contact(Place place, boolean covered) {
    Place.Cover cover = covered ? place.cover() : Place.Cover.NONE;
    double side = container.sideM2();
    double foot = container.footprintM2();
    double toAir = 1 / surfaceWPerM2K(place);
    double wall = wallM2KPerW(container.material());
    double diskM = 2 * Math.sqrt(foot / Math.PI);
    double sideKPerW = (toAir + wall) / side;
    double topKPerW = toAir / foot;
    if (cover == Place.Cover.FLEECE) {
      sideKPerW += Covers.FLEECE_M2K_PER_W / side;
      topKPerW += Covers.FLEECE_M2K_PER_W / foot;
    }
    if (cover == Place.Cover.MULCH) {
      double depthM = place.coverDepthCm() / 100;
      double heightM = container.depthCm() / 100;
      sideKPerW +=
          Math.log(1 + depthM / (diskM / 2)) / (2 * Math.PI * heightM * Covers.MULCH_W_PER_MK);
      topKPerW += Math.min(depthM, 0.10) / Covers.MULCH_W_PER_MK / foot;
    }
    boolean airBelow = place.kind() == PlaceKind.BENCH;
    double floorWPerK = airBelow ? foot / (toAir + wall) : 2 * diskM * BASE_W_PER_MK;
    double skyWPerK = cover == Place.Cover.MULCH ? 0 : 1 / topKPerW + 0.5 / sideKPerW;
    return new Contact(1 / sideKPerW + 1 / topKPerW, floorWPerK, airBelow, skyWPerK);
  }

  /** Lets a time pass, in steps that are short against the time in which the edge answers. */
  void step(Contact contact, double wallAirC, double skyK, double belowC, double seconds) {
    double surfaceWPerK = contact.wallWPerK() + contact.floorWPerK();
    double aroundC =
        (contact.wallWPerK() * wallAirC - contact.skyWPerK() * skyK + contact.floorWPerK() * belowC)
            / surfaceWPerK;
    double left = seconds;
    while (left > 0) {
      double shellWPerK = unfrozenWPerK * (1 + iceShare() * (FROZEN_GAIN - 1));
      double outsideWPerK = 1 / (1 / surfaceWPerK + TO_MIDDLE_OF_EDGE / shellWPerK);
      double coreWPerK = shellWPerK / (TO_CORE + toTheFront());
      double stepS = Math.min(left, 0.3 * FROZEN_J_PER_M3K * edgeM3 / (outsideWPerK + coreWPerK));
      double edgeC = edgeC();
      double fromCoreW = coreWPerK * (temperatureC(coreJ, coreM3) - edgeC);
      edgeJ += (outsideWPerK * (aroundC - edgeC) + fromCoreW) * stepS;
      coreJ -= fromCoreW * stepS;
      left -= stepS;
    }
  }

  /** Between the cylinders that hold these shares of the ball. */
  private static double resistance(double outerShare, double innerShare) {
    return Math.log(outerShare / innerShare) / 2;
  }

  private double toTheFront() {
    double coreIce = coreIceShare();
    double alike = iceShare() * coreIce + (1 - iceShare()) * (1 - coreIce);
    return alike > MOSTLY ? 0.5 : resistance(1, 1 - alike);
  }

  private static double temperatureC(double joules, double volumeM3) {
    if (joules >= 0) {
      return joules / (UNFROZEN_J_PER_M3K * volumeM3);
    }
    double latent = LATENT_J_PER_M3 * volumeM3;
    return joules > -latent ? 0 : (joules + latent) / (FROZEN_J_PER_M3K * volumeM3);
  }

  /** From a surface to the air, W/m2K. */
  static double surfaceWPerM2K(Place place) {
    boolean open = place.wind() == Place.Wind.OPEN;
    double windMPerS =
        switch (place.kind()) {
          case BENCH -> open ? 2 : 1;
          case GROUND -> open ? 1.2 : 0.3;
          case COLD_STORE, GLASSHOUSE, FROST_FREE_ROOM, WARM_ROOM -> 0;
        };
    return 5.7 + 3.8 * windMPerS;
  }

  private static double wallM2KPerW(Container.Material material) {
    return switch (material) {
      case CERAMIC -> 0.010;
      case TERRACOTTA -> 0.012;
      case PLASTIC -> 0.015;
      case WOOD -> 0.14;
      case CONCRETE -> 0.023;
      case FABRIC -> 0.010;
    };
  }
}
