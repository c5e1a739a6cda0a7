package org.hibernacle.thermal;

import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Wind;

/**
 * How far the night sky draws a surface below the air of its place.
 *
 * <p>{@code 5.7 + 3.8 v} holds the warmth exchanged with things at the temperature of the air. Here
 * only what the sky gives back less than those is charged, so nothing counts twice: the radiation
 * in it is taken out of the coefficient, and the surface balance of {@link NightSky} puts back the
 * real one. A site's offset on clear nights has the same cause, and the thermometer it is found
 * with is drawn down as well, so the larger of offset and loss counts, not both. Only dark hours
 * count: by day the sun, which is not counted on pots, makes up for the loss.
 */
final class SkyView {
  private SkyView() {}

  /**
   * How much of the sky the top of a pot sees past its own crown, its neighbours and what stands
   * around, 0..1. Own round figures, chosen so that the pots of growers' experience come out as
   * cold as they find them.
   */
  static double share(Place place) {
    boolean open = place.wind() == Wind.OPEN;
    return switch (place.kind()) {
      case BENCH -> open ? 0.25 : 0.15;
      case GROUND -> open ? 0.25 : 0.10;
      default -> 0;
    };
  }

  /**
   * How far a level surface lies below the air, K (>= 0), one value an hour of the winter.
   *
   * @param airC air of the place
   */
  static double[] belowAirK(Place place, Winter winter, double[] airC) {
    double[] belowK = new double[airC.length];
    double share = share(place);
    if (share == 0) {
      return belowK;
    }
    double outer = Exchange.surfaceWPerM2K(place);
    for (int day = 0; day < winter.days(); day++) {
      double lowC = Double.POSITIVE_INFINITY;
      double highC = Double.NEGATIVE_INFINITY;
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        lowC = Math.min(lowC, airC[hour]);
        highC = Math.max(highC, airC[hour]);
      }
      double seen = share * NightSky.clearShare(highC - lowC);
      double vapourHPa = NightSky.vapourHPa(lowC);
      double halfDayH = winter.dayLengthH()[day] / 2;
      for (int h = 0; h < 24; h++) {
        if (Math.abs(h + 0.5 - 12) >= halfDayH) {
          int hour = 24 * day + h;
          double drawnK = belowAirK(airC[hour], vapourHPa, seen, outer);
          belowK[hour] = Math.max(0, drawnK - winter.colderK()[hour]);
        }
      }
    }
    return belowK;
  }

  /**
   * How far a level surface lies below the air under a night sky, K.
   *
   * @param airC °C
   * @param vapourHPa in it, hPa
   * @param seen how much of a clear sky the surface sees, 0..1; the rest is as warm as the air
   * @param outerWPerM2K surface coefficient, radiation included
   */
  static double belowAirK(double airC, double vapourHPa, double seen, double outerWPerM2K) {
    double aboveEmissivity = 1 - seen * (1 - NightSky.emissivity(airC, vapourHPa));
    double convection = outerWPerM2K - NightSky.radiationWPerM2K(airC);
    return airC - NightSky.surfaceC(airC, aboveEmissivity, convection);
  }
}
