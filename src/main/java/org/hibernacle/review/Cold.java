package org.hibernacle.review;

import java.time.LocalDate;

/**
 * The closest that a root ball, or the air around shoots, came to a limit; below zero it was
 * crossed.
 *
 * @param day of the coldest hour
 * @param place name of the place where the plant stood
 * @param foundC root ball's edge or air, °C
 * @param limitC limit of that day, °C
 * @param hardestC limit when fully hardened, °C
 * @param hardness of that day, 0 unhardened to 1 fully hard; 1 for what never hardens
 * @param hoursBelow hours of the season spent below the limit of their day
 * @param fallK how far it fell in the 24 hours to the coldest one, K (>= 0)
 */
public record Cold(
    LocalDate day,
    String place,
    double foundC,
    double limitC,
    double hardestC,
    double hardness,
    int hoursBelow,
    double fallK) {
  /** Kelvins above the limit of the day. */
  public double marginK() {
    return foundC - limitC;
  }

  /** Kelvins above the limit, had the plant been fully hardened. */
  public double marginIfHardK() {
    return foundC - hardestC;
  }
}
