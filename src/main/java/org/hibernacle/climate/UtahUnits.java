package org.hibernacle.climate;

/**
 * Utah chill units: cool hours weighted by how much they help, warm ones counted against them.
 *
 * <p>Source: Richardson E.A., Seeley S.D., Walker D.R. 1974, A model for estimating the completion
 * of rest for 'Redhaven' and 'Elberta' peach trees, HortScience 9:331-332. The gaps of the printed
 * table (1.4 to 1.5 °C and so on) are closed by intervals open below and closed above.
 */
public final class UtahUnits {
  private UtahUnits() {}

  /**
   * Units of one hour, -1 to 1.
   *
   * @param airC mean of the hour, °C
   */
  public static double ofHour(double airC) {
    if (airC <= 1.4) {
      return 0;
    } else if (airC <= 2.4) {
      return 0.5;
    } else if (airC <= 9.1) {
      return 1;
    } else if (airC <= 12.4) {
      return 0.5;
    } else if (airC <= 15.9) {
      return 0;
    }
    return airC <= 18.0 ? -0.5 : -1;
  }
}
