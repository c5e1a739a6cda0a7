package org.hibernacle.thermal;

import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;

/**
 * A heated place whose heat fails for some hours of the coldest night on file.
 *
 * <p>The air falls from what the heater holds towards the outside by the place's own lag, as {@link
 * PlaceAir} has it; root balls begin at the held temperature and follow.
 */
public final class PowerFailure {
  /** Evening hour at which it fails. */
  private static final int FROM_HOUR = 18;

  private final Place place;
  private final double heldC;
  private final double[] airC;
  private final double baseC;
  private final boolean covered;

  /**
   * Lets the heat of a place fail.
   *
   * @param site one winter at all places
   * @param place index of a place with a lowest held temperature
   * @param night of that winter
   * @param hours without heat
   */
  public PowerFailure(Simulator site, int place, int night, int hours) {
    this.place = site.places().get(place);
    Winter winter = site.winter();
    int from = 24 * night + FROM_HOUR;
    heldC = site.climate(place).airC()[from];
    baseC = site.climate(place).baseC()[from];
    covered = PlaceBase.coverIsOn(this.place, winter.season(), winter.first().plusDays(night));
    airC = PlaceAir.withoutHeat(this.place, winter, from, hours, heldC);
  }

  /** Lowest air, °C. */
  public double lowestAirC() {
    double lowest = heldC;
    for (double air : airC) {
      lowest = Math.min(lowest, air);
    }
    return lowest;
  }

  /** Lowest edge temperature of a pot that stands there, °C. */
  public double lowestEdgeC(ThermalClass pot) {
    Exchange exchange = Exchange.of(pot, place, covered);
    double wattPerK = exchange.airWPerK() + exchange.baseWPerK();
    RootBall ball = new RootBall(pot, RootBall.WATER_FRACTION, Math.max(0.1, heldC));
    double lowest = ball.edgeC();
    for (double air : airC) {
      double around = (exchange.airWPerK() * air + exchange.baseWPerK() * baseC) / wattPerK;
      ball.hour(around, wattPerK);
      lowest = Math.min(lowest, ball.edgeC());
    }
    return lowest;
  }
}
