package org.hibernacle.climate;

import java.time.LocalDate;
import java.time.MonthDay;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;

/**
 * A part of every season, by month and day.
 *
 * @param first first day
 * @param last last day, itself included
 */
public record DayWindow(MonthDay first, MonthDay last) {

  /** The whole season. */
  public static DayWindow wholeSeason(boolean southern) {
    return southern
        ? new DayWindow(MonthDay.of(1, 1), MonthDay.of(12, 31))
        : new DayWindow(MonthDay.of(7, 1), MonthDay.of(6, 30));
  }

  /**
   * Whether the window lies in one piece in a season: from 1 July in the north, from 1 January in
   * the south.
   */
  public boolean fits(boolean southern) {
    Season leap = new Season(southern ? 2000 : 1999, southern);
    return !dayOf(leap, last).isBefore(dayOf(leap, first));
  }

  /** The days of the window in that season; 29 February is the 28th in other years. */
  public DateSpan in(Season season) {
    if (!fits(season.southern())) {
      throw new IllegalArgumentException(this + " is not in one piece in a season");
    }
    return new DateSpan(dayOf(season, first), dayOf(season, last).plusDays(1));
  }

  private static LocalDate dayOf(Season season, MonthDay day) {
    return season.sameDay(day.atYear(2000));
  }
}
