package org.hibernacle.climate;

/**
 * Chilling hours: the plain count of cool hours.
 *
 * <p>Sources: Bennett J.P. 1949, Temperature and bud rest period, California Agriculture 3(11):9;
 * Weinberger J.H. 1950, Chilling requirements of peach varieties, Proc. Amer. Soc. Hort. Sci.
 * 56:122-128.
 */
public final class ChillingHours {
  /** Upper end, °C; 45 °F as the trade rounds it. */
  private static final double WARM_END_C = 7.2;

  private ChillingHours() {}

  /**
   * 1 for an hour of 0 to 7.2 °C, both ends included, else 0.
   *
   * @param airC mean of the hour, °C
   */
  public static double ofHour(double airC) {
    return airC >= 0 && airC <= WARM_END_C ? 1 : 0;
  }

  /**
   * The older form without a lower end: 1 for an hour at or below 7.2 °C, else 0.
   *
   * @param airC mean of the hour, °C
   */
  public static double belowOfHour(double airC) {
    return airC <= WARM_END_C ? 1 : 0;
  }
}
