package org.hibernacle.oracle;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.planning.Stay;

/** One plant carried through one winter, along the stays of its plan. */
final class Life {
  private final Plant plant;
  private final Season planned;
  private final List<Stay> stays;
  private final Outside outside;
  private final Map<Place, PlaceHours> places;

  Life(
      Plant plant,
      Season planned,
      List<Stay> stays,
      Outside outside,
      Map<Place, PlaceHours> places) {
    this.plant = plant;
    this.planned = planned;
    this.stays = stays;
    this.outside = outside;
    this.places = places;
  }

  List<Night> nights() {
    Season winter = outside.season();
    Pot pot = new Pot(plant.container(), outside.airC(12));
    Limit roots = Limit.ofRoots(plant, planned);
    Limit shoots = Limit.ofShoots(plant.species());
    Buds buds = new Buds(plant.species(), outside);
    List<Night> nights = new ArrayList<>();
    for (int index = 0; index < winter.days() - 1; index++) {
      LocalDate day = winter.day(index);
      PlaceHours place = hours(placeOn(day));
      double[] air = Nights.hours(place.airC(), index);
      BallNight ball = freeze(pot, place, index);
      boolean open = buds.broken();
      boolean resting = buds.atRest();
      boolean dormant = buds.dormant();
      boolean inLeaf = buds.inLeaf();
      double rootLimitC = roots.nowC();
      double shootLimitC = shoots.nowC();
      roots.night(ball.meanC(), resting, 1);
      shoots.night(Nights.mean(air), resting, readiness(day));
      buds.night(day, air);
      nights.add(
          new Night(
              day,
              place.place(),
              Nights.lowest(air),
              Nights.mean(air),
              weekMeanC(place, index),
              ball.lowestEdgeC(),
              ball.iceShare(),
              ball.coreIceShare(),
              rootLimitC,
              shootLimitC,
              dormant,
              resting,
              inLeaf,
              open,
              buds.broken() && !open));
    }
    return nights;
  }

  private Place placeOn(LocalDate day) {
    for (Stay stay : stays) {
      LocalDate from = outside.season().sameDay(stay.fromInclusive());
      boolean last = stay.toExclusive().equals(planned.endExclusive());
      if (!day.isBefore(from)
          && (last || day.isBefore(outside.season().sameDay(stay.toExclusive())))) {
        return stay.place();
      }
    }
    throw new IllegalStateException(plant.id() + " stands nowhere on " + day);
  }

  private PlaceHours hours(Place place) {
    PlaceHours hours = places.get(place);
    if (hours == null) {
      throw new IllegalStateException(plant.id() + " stands in an unknown place: " + place.name());
    }
    return hours;
  }

  private double weekMeanC(PlaceHours place, int index) {
    double sum = 0;
    int count = 0;
    for (int night = Math.max(0, index - 6); night <= index; night++) {
      sum += Nights.mean(Nights.hours(place.airC(), night));
      count++;
    }
    return sum / count;
  }

  /** Shoots harden only as days shorten: 0 at more than 13.5 h, 1 at less than 11.5 h. */
  private double readiness(LocalDate day) {
    return Math.max(0, Math.min(1, (13.5 - outside.dayLengthHours(day)) / 2));
  }

  /**
   * A night of the ball.
   *
   * @param lowestEdgeC lowest edge temperature, °C
   * @param meanC mean of edge and core, °C
   * @param iceShare most ice in the edge's water
   * @param coreIceShare least ice in the core's water
   */
  private record BallNight(
      double lowestEdgeC, double meanC, double iceShare, double coreIceShare) {}

  /** Air, soil and slab are drawn as straight lines from each full hour to the next. */
  private BallNight freeze(Pot pot, PlaceHours place, int index) {
    boolean covered = Covers.lie(place.place(), outside.season(), outside.season().day(index));
    Pot.Contact contact = pot.contact(place.place(), covered, outside.snowM(index));
    double[] wallAir = covered ? place.inMulchC() : place.airC();
    int steps = 20;
    double lowest = Double.POSITIVE_INFINITY;
    double mean = 0;
    double ice = 0;
    double coreIce = 1;
    int noon = index * 24 + 12;
    for (int hour = noon; hour < noon + 24; hour++) {
      for (int step = 0; step < steps; step++) {
        double share = (step + 0.5) / steps;
        pot.step(
            contact,
            at(wallAir, hour, share),
            place.skyK()[hour],
            at(place.belowC(), hour, share),
            3600.0 / steps);
        lowest = Math.min(lowest, pot.edgeC());
        ice = Math.max(ice, pot.iceShare());
        coreIce = Math.min(coreIce, pot.coreIceShare());
        mean += pot.meanC() / (24.0 * steps);
      }
    }
    return new BallNight(lowest, mean, ice, coreIce);
  }

  private static double at(double[] hourly, int hour, double share) {
    return hourly[hour] * (1 - share) + hourly[hour + 1] * share;
  }
}
