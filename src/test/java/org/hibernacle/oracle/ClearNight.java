package org.hibernacle.oracle;

import org.hibernacle.model.Place;

/**
 * How far the night sky draws a level surface below the air, beyond what the offset of the site has
 * taken already; docs/models/night-sky.md.
 */
final class ClearNight {
  private static final double RADIATES = 0.95 * 5.670374e-8;

  private final Place place;
  private final Outside outside;
  private final double[] airC;

  ClearNight(Place place, Outside outside, double[] airC) {
    this.place = place;
    this.outside = outside;
    this.airC = airC;
  }

  /** By hour, K; nothing by day and nothing under a roof. */
  double[] drawnK() {
    double[] drawn = new double[airC.length];
    if (view() > 0) {
      for (int hour = 0; hour < drawn.length; hour++) {
        if (dark(hour)) {
          drawn[hour] = Math.max(0, airC[hour] - surfaceC(hour) - outside.offsetK(hour));
        }
      }
    }
    return drawn;
  }

  private double view() {
    boolean open = place.wind() == Place.Wind.OPEN;
    return switch (place.kind()) {
      case BENCH -> open ? 0.25 : 0.15;
      case GROUND -> open ? 0.25 : 0.10;
      case COLD_STORE, GLASSHOUSE, FROST_FREE_ROOM, WARM_ROOM -> 0;
    };
  }

  private boolean dark(int hour) {
    double halfDay = outside.dayLengthHours(outside.season().day(hour / 24)) / 2;
    double middle = hour % 24 + 0.5;
    return middle < 12 - halfDay || middle > 12 + halfDay;
  }

  /** The balance is solved by halving: the colder the surface, the more it gains on the whole. */
  private double surfaceC(int hour) {
    double air = airC[hour] + 273.15;
    double above = 1 - view() * cloudShare(hour) * (1 - clearSky(hour));
    double convection = Pot.surfaceWPerM2K(place) - 4 * RADIATES * Math.pow(air, 3);
    double low = air - 30;
    double high = air;
    while (high - low > 1e-6) {
      double surface = (low + high) / 2;
      double gain =
          convection * (air - surface)
              - RADIATES * (Math.pow(surface, 4) - above * Math.pow(air, 4));
      if (gain > 0) {
        low = surface;
      } else {
        high = surface;
      }
    }
    return low - 273.15;
  }

  private double clearSky(int hour) {
    double dewC = lowestOfTheDay(hour);
    double vapourHPa = 6.108 * Math.exp(17.27 * dewC / (dewC + 237.3));
    return Math.min(1, 1.24 * Math.pow(vapourHPa / (airC[hour] + 273.15), 1 / 7.0));
  }

  private double cloudShare(int hour) {
    int day = hour / 24 * 24;
    double highest = airC[day];
    for (int h = day; h < day + 24; h++) {
      highest = Math.max(highest, airC[h]);
    }
    double rangeK = highest - lowestOfTheDay(hour);
    return Math.max(0.05, 1.35 * Math.min(1, 0.16 * Math.sqrt(rangeK) / 0.75) - 0.35);
  }

  private double lowestOfTheDay(int hour) {
    int day = hour / 24 * 24;
    double lowest = airC[day];
    for (int h = day; h < day + 24; h++) {
      lowest = Math.min(lowest, airC[h]);
    }
    return lowest;
  }
}
