package org.hibernacle.thermal;

import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.Place.Wind;
import org.hibernacle.model.PlaceKind;

/**
 * How strongly a pot is coupled to the air of its place and to what it stands on.
 *
 * <p>Surface coefficient {@code h = 5.7 + 3.8 v}, v in m/s below 5 (McAdams, Heat Transmission, 3rd
 * ed., 1954; read as convection plus radiation), in series with the wall. Wind at the pot is our
 * own round figure by kind of place. On soil or slab the base conducts as a disk on a half space,
 * {@code 2 D k} (Incropera, DeWitt, shape factors, cited from memory). In mulch the wall conducts
 * through a cylinder of mulch, the top through at most {@value #TOP_MULCH_M} m of it. Snow covers
 * the wall of a pot on the ground as high as it lies, and the top only where it lies deeper than
 * the pot is high.
 *
 * @param airWPerK to the air, W/K
 * @param baseWPerK to the base, W/K
 * @param skyWPerK by how much the surroundings take more heat for each kelvin by which the sky
 *     draws a level surface below the air, W/K: the top with all it conducts, an upright wall with
 *     half, a wall in snow or a pot in mulch with nothing
 */
record Exchange(double airWPerK, double baseWPerK, double skyWPerK) {
  /**
   * Wet mulch, W/mK: what a winter makes of it, and the risky side. Apparent conductivities of 0.1
   * to 0.6 were measured for straw and mulches in wind (van Donk, Tollner 2000, Apparent thermal
   * conductivity of mulch materials exposed to forced convection).
   */
  static final double MULCH_W_PER_MK = 0.3;

  /** Dry mulch, W/mK; no plan counts on it. */
  static final double DRY_MULCH_W_PER_MK = 0.15;

  /** Diffusivity of damp mulch, m2/s; own choice from its conductivity and 1 MJ/m3K. */
  static final double MULCH_M2_PER_S = 3e-7;

  static final double TOP_MULCH_M = 0.10;

  /** One layer of garden fleece with the still air under it, m2K/W; own choice. */
  static final double FLEECE_M2K_PER_W = 0.06;

  private static final double GROUND_W_PER_MK = 1.2;

  /** Wind at a pot, m/s; own round figures. */
  static double windMPerS(Place place) {
    boolean open = place.wind() == Wind.OPEN;
    return switch (place.kind()) {
      case BENCH -> open ? 2.0 : 1.0;
      case GROUND -> open ? 1.2 : 0.3;
      default -> 0;
    };
  }

  /** Surface coefficient, W/m2K. */
  static double surfaceWPerM2K(Place place) {
    return 5.7 + 3.8 * windMPerS(place);
  }

  /**
   * How long mulch delays the air, h: {@code d^2 / (2 kappa)}, 29 h for 25 cm. Zero without mulch.
   */
  static double mulchLagHours(Place place) {
    double depthM = place.coverDepthCm() / 100;
    return place.cover() == Cover.MULCH ? depthM * depthM / (2 * MULCH_M2_PER_S) / 3600 : 0;
  }

  /**
   * The coupling of a pot without snow.
   *
   * @param pot its class
   * @param place where it stands
   * @param covered whether the place's cover is on
   */
  static Exchange of(ThermalClass pot, Place place, boolean covered) {
    return of(pot, place, covered, 0);
  }

  /** The same with settled snow of that depth on the ground, m (>= 0). */
  static Exchange of(ThermalClass pot, Place place, boolean covered, double snowM) {
    return of(pot, place, covered, snowM, MULCH_W_PER_MK);
  }

  /** The same with mulch of that conductivity, W/mK (> 0). */
  static Exchange of(
      ThermalClass pot, Place place, boolean covered, double snowM, double mulchWPerMK) {
    double bare = 1 / surfaceWPerM2K(place);
    double outer = bare;
    if (covered && place.cover() == Cover.FLEECE) {
      outer += FLEECE_M2K_PER_W;
    }
    double throughWall = 1 / (outer + pot.wallM2KPerW());
    double diameterM = 2 * Math.sqrt(pot.footM2() / Math.PI);
    if (place.kind() == PlaceKind.BENCH) {
      double side = pot.sideM2() * throughWall;
      double top = pot.footM2() / outer;
      double floor = pot.footM2() / (bare + pot.wallM2KPerW());
      return new Exchange(side + top + floor, 0, top + side / 2);
    }
    double baseWPerK = 2 * diameterM * GROUND_W_PER_MK;
    double heightM = pot.sideM2() / (Math.PI * diameterM);
    if (covered && place.cover() == Cover.MULCH && place.coverDepthCm() > 0) {
      double depthM = place.coverDepthCm() / 100;
      double mulch = 2 * Math.PI * heightM * mulchWPerMK / Math.log(1 + depthM / (diameterM / 2));
      double side = 1 / (1 / (pot.sideM2() * throughWall) + 1 / mulch);
      double lid = Math.min(depthM, TOP_MULCH_M) / mulchWPerMK + Snow.settledM2KPerW(snowM);
      return new Exchange(side + pot.footM2() / (outer + lid), baseWPerK, 0);
    }
    double buriedM = Math.min(snowM, heightM);
    double meanSnowM = snowM - buriedM / 2;
    double buriedM2 = pot.sideM2() * buriedM / heightM;
    double openSide = (pot.sideM2() - buriedM2) * throughWall;
    double buriedSide = buriedM2 / (1 / throughWall + Snow.settledM2KPerW(meanSnowM));
    double top = pot.footM2() / (outer + Snow.settledM2KPerW(snowM - buriedM));
    return new Exchange(openSide + buriedSide + top, baseWPerK, top + openSide / 2);
  }
}
