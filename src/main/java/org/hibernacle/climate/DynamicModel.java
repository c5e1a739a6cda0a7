package org.hibernacle.climate;

/**
 * Chill portions: cold builds an intermediate product that warmth destroys; once there is enough, a
 * portion of it is banked for good. One accumulator a season; not for use by several threads.
 *
 * <p>Sources: Fishman S., Erez A., Couvillon G.A. 1987, The temperature dependence of dormancy
 * breaking in plants, J. Theor. Biol. 124:473-483 and 126:309-321; constants as in Erez A., Fishman
 * S., Linsley-Noakes G.C., Allan P. 1990, Acta Hort. 276:165-174. Equal to an independent
 * implementation within 1e-6 portions.
 */
public final class DynamicModel {
  /** Activation energies over the gas constant, K. */
  private static final double E0_K = 4153.5;

  private static final double E1_K = 12888.8;

  /** Rate constants, 1/h. */
  private static final double A0_PER_H = 1.395e5;

  private static final double A1_PER_H = 2.567e18;

  private static final double SLOPE = 1.6;
  private static final double TRANSITION_K = 277;

  /** The model was fitted with 273, not 273.15. */
  private static final double KELVIN_OFFSET = 273;

  private double product;
  private double portions;

  /**
   * Adds one hour and returns the portions it banked, mostly 0. Above about 5 °C a banked portion
   * is close to 1; in colder air it is a small part of one.
   *
   * @param airC mean of the hour, °C (-70..60)
   */
  public double add(double airC) {
    double balance = balance(airC);
    product = balance - (balance - product) * Math.exp(-lossPerH(airC));
    if (product < 1) {
      return 0;
    }
    double banked = product * bankedFraction(airC);
    product -= banked;
    portions += banked;
    return banked;
  }

  /** Portions since the start. */
  public double portions() {
    return portions;
  }

  /** The intermediate product, 0 to 1 after each hour; one portion lies ready at 1. */
  double product() {
    return product;
  }

  /** What the product tends to at that temperature. */
  static double balance(double airC) {
    return A0_PER_H / A1_PER_H * Math.exp((E1_K - E0_K) / kelvin(airC));
  }

  /** How fast it gets there, 1/h. */
  static double lossPerH(double airC) {
    return A1_PER_H * Math.exp(-E1_K / kelvin(airC));
  }

  /** How much of a product that has reached 1 is banked, 0..1. */
  static double bankedFraction(double airC) {
    double airK = kelvin(airC);
    return 1 / (1 + Math.exp(-SLOPE * TRANSITION_K * (airK - TRANSITION_K) / airK));
  }

  private static double kelvin(double airC) {
    return airC + KELVIN_OFFSET;
  }
}
