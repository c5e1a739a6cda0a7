package org.hibernacle.review;

import java.time.LocalDate;

/**
 * Frost after bud break.
 *
 * @param woke day on which buds broke
 * @param underRoof whether they broke under a roof
 * @param day of the coldest air afterwards
 * @param place where the plant stood
 * @param foundC that air, °C
 * @param limitC what new growth stands, °C
 * @param nightsBelow nights below it
 */
public record NewGrowth(
    LocalDate woke,
    boolean underRoof,
    LocalDate day,
    String place,
    double foundC,
    double limitC,
    int nightsBelow) {
  /** Kelvins above the limit. */
  public double marginK() {
    return foundC - limitC;
  }
}
