package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hibernacle.climate.SeasonSoFar;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;

/**
 * How a plan looks at its own season: from before it, or from a day in it. From a day in it, the
 * nights before are lived through and not judged, and forecast nights keep more in hand, the more
 * the further off they are.
 *
 * @param soFar what is known of the season; empty for a plan made before it
 * @param made moves made in it, by the log
 */
record Outlook(Optional<SeasonSoFar> soFar, List<MoveMade> made) {
  /**
   * Kept in hand for each day that a forecast looks ahead, K: forecasts of a night's lowest grow
   * less sure by some tenths of a kelvin a day. The figure is our own.
   */
  static final double LEAD_DAY_K = 0.5;

  /**
   * Most that is kept in hand for that, K: reached on the fourth day. Later days are nearer to what
   * the season is like anyway, and they are planned again before they come. The figure is our own.
   */
  static final double MOST_LEAD_K = 2;

  static final Outlook NONE = new Outlook(Optional.empty(), List.of());

  boolean inSeason() {
    return soFar.isPresent();
  }

  /** First night of the plan that can still be changed: 0 for a plan made before the season. */
  int tonight() {
    return soFar.map(s -> s.season().index(s.asOf())).orElse(0);
  }

  /** Night after the last one that ends on a day with a forecast. */
  int forecastEnd() {
    return tonight() + soFar.map(SeasonSoFar::leadDays).orElse(0);
  }

  /** What a night of the plan keeps in hand beside the safety margin, K; tonight is lead day 1. */
  double leadMarginK(int planNight) {
    return planNight < tonight() || planNight >= forecastEnd()
        ? 0
        : Math.min(MOST_LEAD_K, LEAD_DAY_K * (planNight - tonight() + 1));
  }

  /** Moves that a plant has made, oldest first. */
  List<MoveMade> madeBy(Plant plant) {
    return made.stream()
        .filter(move -> move.plantId().equals(plant.id()))
        .sorted(Comparator.comparing(MoveMade::date))
        .toList();
  }

  LocalDate measuredOn(Season winter, LocalDate day) {
    return soFar.map(s -> s.measuredOn(winter, day)).orElse(day);
  }
}
