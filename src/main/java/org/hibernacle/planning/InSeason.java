package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.model.Season;

/**
 * What a plan made within the season says about tonight and the days that come.
 *
 * @param asOf day on whose evening the plan begins
 * @param knownTo last day of the forecast; {@code asOf} without one
 * @param tonightC lowest air of tonight at the station by the forecast, °C; empty without one
 * @param threatened plants for which that is too cold where they stand tonight
 * @param late plants that come to harm within a week, whatever is done on moving days
 */
public record InSeason(
    LocalDate asOf,
    LocalDate knownTo,
    OptionalDouble tonightC,
    List<Threat> threatened,
    List<Late> late) {
  /** How far ahead such a plan looks in detail, days. */
  public static final int WEEK_DAYS = 7;

  /**
   * A plant for which tonight is too cold.
   *
   * @param plantId of it
   * @param place where it stands tonight
   * @param triggerC forecast below which it must not be left there, °C
   */
  public record Threat(String plantId, String place, double triggerC) {}

  /**
   * A plant that the next moving day comes too late for.
   *
   * @param plantId of it
   * @param danger first rule broken
   * @param extra move on another day that breaks less; empty if none does
   */
  public record Late(String plantId, Violation danger, Optional<Move> extra) {}

  public InSeason {
    threatened = List.copyOf(threatened);
    late = List.copyOf(late);
  }

  /** Last day of a season that a plan can be made as of: nights after it are not judged. */
  public static LocalDate lastDay(Season season) {
    return season.endExclusive().minusDays(15);
  }

  /** Whether a day lies in the week that begins with {@link #asOf}. */
  public boolean thisWeek(LocalDate day) {
    return !day.isBefore(asOf) && day.isBefore(asOf.plusDays(WEEK_DAYS));
  }
}
