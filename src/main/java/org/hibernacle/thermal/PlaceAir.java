package org.hibernacle.thermal;

import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.PlaceKind;

/**
 * Turns the site's air into the air of a place.
 *
 * <ul>
 *   <li>Bench and ground: the site's air, shifted by {@code warmer by} (negative for a frost
 *       pocket).
 *   <li>Roofed places follow {@code outside + warmer by} with the place's lag, so that they
 *       converge to the many-day mean of the air plus what warms them: a week of -12 °C takes an
 *       unheated shed to about -11.
 *   <li>Glass adds what the sun is worth in the steady balance of {@link Glasshouse#SMALL}; vents
 *       open at {@value #VENT_OPENS_C} °C.
 *   <li>A heater holds its lowest temperature down to the outside temperature it copes with; below,
 *       the room follows kelvin by kelvin.
 *   <li>A place is vented at its highest held temperature, but never below the outside air. A
 *       vented store is opened when it is above 5 °C and it is colder outside.
 * </ul>
 */
final class PlaceAir {
  static final double GLASS_K_PER_W = Glasshouse.SMALL.riseKPerWPerM2();
  static final double VENT_OPENS_C = 10;

  /** A vented house is still this much warmer than outside in full sun, at most, K. */
  private static final double VENTED_OVER_OUTSIDE_K = 3;

  private static final double STORE_VENTED_ABOVE_C = 5;
  private static final double STORE_VENTED_LAG_H = 2;

  private PlaceAir() {}

  /** The air of a place without a logger. */
  static double[] hours(Place place, Winter winter, double latitudeDeg) {
    return hours(place, winter, latitudeDeg, LoggedAir.none(winter));
  }

  /**
   * Air of the place, °C, one value an hour of the winter. Where a logger tells it, that is the air
   * of the place; a roofed place then goes on from the last reading with its own lag.
   *
   * @param place any kind
   * @param winter outside
   * @param latitudeDeg for the sun under glass
   * @param logged what a logger in the place read
   */
  static double[] hours(Place place, Winter winter, double latitudeDeg, LoggedAir logged) {
    double[] outsideC = winter.airC();
    double[] insideC = new double[outsideC.length];
    if (!place.roofed()) {
      for (int i = 0; i < insideC.length; i++) {
        insideC[i] = logged.has(i) ? logged.airC(i) : outsideC[i] + place.warmerByK();
      }
      return insideC;
    }
    double[] sunK =
        place.kind() == PlaceKind.GLASSHOUSE
            ? sunUnderGlass(place, winter, latitudeDeg)
            : new double[outsideC.length];
    double state = firstDayMean(outsideC) + place.warmerByK();
    for (int i = 0; i < insideC.length; i++) {
      state = logged.has(i) ? logged.airC(i) : next(place, state, outsideC[i], sunK[i]);
      insideC[i] = state;
    }
    return insideC;
  }

  /** Air of a roofed place hour by hour once its heat has failed, °C. */
  static double[] withoutHeat(Place place, Winter winter, int fromHour, int hours, double heldC) {
    Place cold = place.withoutHeat();
    double[] insideC = new double[hours];
    double state = heldC;
    for (int i = 0; i < hours; i++) {
      state = next(cold, state, winter.airC()[fromHour + i], 0);
      insideC[i] = state;
    }
    return insideC;
  }

  /** Air under a roof an hour later, °C. */
  private static double next(Place place, double insideC, double outsideC, double sunK) {
    boolean opened =
        place.vents()
            && place.kind() == PlaceKind.COLD_STORE
            && insideC > STORE_VENTED_ABOVE_C
            && outsideC < insideC;
    double lagH = opened ? Math.min(place.lagHours(), STORE_VENTED_LAG_H) : place.lagHours();
    double goal = outsideC + place.warmerByK() + sunK;
    double followed = lagH == 0 ? goal : goal + (insideC - goal) * Math.exp(-1 / lagH);
    return held(place, followed, outsideC);
  }

  private static double held(Place place, double insideC, double outsideC) {
    double held = insideC;
    if (place.kind() == PlaceKind.GLASSHOUSE && place.vents() && held > VENT_OPENS_C) {
      held = Math.min(held, Math.max(VENT_OPENS_C, outsideC + VENTED_OVER_OUTSIDE_K));
    }
    if (place.highestHeldC().isPresent()) {
      held = Math.min(held, Math.max(place.highestHeldC().getAsDouble(), outsideC));
    }
    if (place.lowestHeldC().isPresent()) {
      double shortfall =
          place.holdsDownToC().isPresent()
              ? Math.max(0, place.holdsDownToC().getAsDouble() - outsideC)
              : 0;
      held = Math.max(held, place.lowestHeldC().getAsDouble() - shortfall);
    }
    return held;
  }

  private static double[] sunUnderGlass(Place place, Winter winter, double latitudeDeg) {
    double share = place.sun() == Sun.FULL ? 1 : place.sun() == Sun.PART ? 0.5 : 0;
    double[] rise = new double[winter.airC().length];
    for (int day = 0; day < winter.days(); day++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int h = 24 * day; h < 24 * day + 24; h++) {
        low = Math.min(low, winter.airC()[h]);
        high = Math.max(high, winter.airC()[h]);
      }
      for (int h = 0; h < 24; h++) {
        rise[24 * day + h] =
            share
                * GLASS_K_PER_W
                * Sunshine.wattPerM2(
                    latitudeDeg,
                    winter.first().plusDays(day),
                    high - low,
                    winter.dayLengthH()[day],
                    h);
      }
    }
    return rise;
  }

  private static double firstDayMean(double[] hours) {
    double sum = 0;
    for (int h = 0; h < 24; h++) {
      sum += hours[h];
    }
    return sum / 24;
  }
}
