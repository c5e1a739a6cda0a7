package org.hibernacle.oracle;

import java.util.Arrays;

/** A night is 24 hours, from noon to noon. */
final class Nights {
  private Nights() {}

  /** The hours of night number {@code index}, counted from the first noon of the season. */
  static double[] hours(double[] season, int index) {
    int noon = index * 24 + 12;
    return Arrays.copyOfRange(season, noon, Math.min(noon + 24, season.length));
  }

  static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  static double lowest(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }
}
