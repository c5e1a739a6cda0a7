package org.hibernacle.oracle;

/** Chill and warmth that a bud meets, hour by hour; docs/models/rest.md. */
final class Chill {
  /** Constants of Erez et al. 1990, Acta Horticulturae 276:165-174. */
  private static final double E0_K = 4153.5;

  private static final double E1_K = 12888.8;
  private static final double A0_PER_H = 1.395e5;
  private static final double A1_PER_H = 2.567e18;
  private static final double SLOPE = 1.6;
  private static final double MELTING_K = 277;

  private double intermediate;
  private double portions;
  private double coldHours;

  void hour(double airC) {
    double kelvin = airC + 273;
    double goal = A0_PER_H / A1_PER_H * Math.exp((E1_K - E0_K) / kelvin);
    double rate = A1_PER_H * Math.exp(-E1_K / kelvin);
    intermediate = goal - (goal - intermediate) * Math.exp(-rate);
    if (intermediate >= 1) {
      double fixed = 1 / (1 + Math.exp(-SLOPE * MELTING_K * (kelvin - MELTING_K) / kelvin));
      portions += intermediate * fixed;
      intermediate *= 1 - fixed;
    }
    coldHours += airC <= 7.2 ? 1 : 0;
  }

  double portions() {
    return portions;
  }

  /** Hours at or below 7.2 °C. */
  double coldHours() {
    return coldHours;
  }

  /** Growing degree hours of one hour, K h: Anderson et al. 1986, Acta Horticulturae 184:71-78. */
  static double warmth(double airC) {
    if (airC < 4 || airC > 36) {
      return 0;
    }
    return airC <= 25
        ? 21 / 2.0 * (1 + Math.cos(Math.PI + Math.PI * (airC - 4) / 21))
        : 21 * (1 + Math.cos(Math.PI / 2 + Math.PI / 2 * (airC - 25) / 11));
  }
}
