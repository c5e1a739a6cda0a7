package org.hibernacle.climate;

import java.util.OptionalDouble;

/**
 * The chance of an event that does not come in every season, such as a frost of -10 °C: {@code P =
 * seasons with it / seasons * F}, where F is the chance among the seasons with it.
 *
 * <p>Source: Thom H.C.S., Shaw R.H. 1958, Climatological analysis of freeze data for Iowa, Monthly
 * Weather Review 86:251-257, cited from memory.
 *
 * @param seasons looked at
 * @param withEvent how many of them had it
 */
record EventChance(int seasons, int withEvent) {
  EventChance {
    if (withEvent < 0 || withEvent > seasons) {
      throw new IllegalArgumentException(withEvent + " of " + seasons + " seasons");
    }
  }

  /**
   * The F at which the event has come with that chance.
   *
   * @param chance 0..1
   * @return 0..1; empty if too many seasons pass without it
   */
  OptionalDouble shareWhenCome(double chance) {
    return chance * seasons >= withEvent
        ? OptionalDouble.empty()
        : OptionalDouble.of(chance * seasons / withEvent);
  }

  /** The F at which another one is still to come with that chance; for the last of a season. */
  OptionalDouble shareWhenStillToCome(double chance) {
    OptionalDouble left = shareWhenCome(chance);
    return left.isEmpty() ? left : OptionalDouble.of(1 - left.getAsDouble());
  }
}
