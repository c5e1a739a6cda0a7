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
 * {@code 2 D k} (Incropera, DeWitt, shape factors, cited from memory), with the temperature half a
 * diameter down. In mulch the wall conducts through a cylinder of mulch, the top through at most
 * {@value #TOP_MULCH_M} m of it.
 *
 * @param airWPerK to the air, W/K
 * @param baseWPerK to the base, W/K
 */
record Exchange(double airWPerK, double baseWPerK) {
  /** Damp mulch, the risky side of 0.15 dry to 0.3 wet, W/mK. */
  static final double MULCH_W_PER_MK = 0.3;

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
   * The coupling of a pot.
   *
   * @param pot its class
   * @param place where it stands
   * @param covered whether the place's cover is on
   */
  static Exchange of(ThermalClass pot, Place place, boolean covered) {
    double outer = 1 / surfaceWPerM2K(place);
    if (covered && place.cover() == Cover.FLEECE) {
      outer += FLEECE_M2K_PER_W;
    }
    double side = pot.sideM2() / (outer + pot.wallM2KPerW());
    double top = pot.footM2() / outer;
    double diameterM = 2 * Math.sqrt(pot.footM2() / Math.PI);
    if (covered && place.cover() == Cover.MULCH && place.coverDepthCm() > 0) {
      double depthM = place.coverDepthCm() / 100;
      double heightM = pot.sideM2() / (Math.PI * diameterM);
      double mulch =
          2 * Math.PI * heightM * MULCH_W_PER_MK / Math.log(1 + depthM / (diameterM / 2));
      side = 1 / (1 / side + 1 / mulch);
      top = pot.footM2() / (outer + Math.min(depthM, TOP_MULCH_M) / MULCH_W_PER_MK);
    }
    if (place.kind() == PlaceKind.BENCH) {
      return new Exchange(side + top + pot.footM2() / (outer + pot.wallM2KPerW()), 0);
    }
    return new Exchange(side + top, 2 * diameterM * GROUND_W_PER_MK);
  }
}
