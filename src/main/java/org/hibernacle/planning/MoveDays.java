package org.hibernacle.planning;

import java.time.LocalDate;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.Settings;

/**
 * On which nights' days one plant may be carried: moving days, the keeper's wishes for it, and no
 * return before winter is over.
 */
final class MoveDays {
  private final int home;
  private final boolean[] any;
  private final boolean[] away;
  private final boolean[] back;

  /**
   * Looks at every day of the season.
   *
   * @param home index of the plant's home
   * @param firstFree first night that can still be changed
   */
  MoveDays(Plant plant, Settings settings, Season season, int home, int firstFree) {
    this.home = home;
    int nights = season.days();
    any = new boolean[nights];
    away = new boolean[nights];
    back = new boolean[nights];
    LocalDate earliestReturn = Move.earliestReturn(season);
    for (int night = firstFree; night < nights; night++) {
      LocalDate day = season.day(night);
      any[night] = settings.isMovingDay(day) && plant.notBefore().filter(day::isBefore).isEmpty();
      away[night] = plant.notAfter().filter(day::isAfter).isEmpty();
      back[night] = !day.isBefore(earliestReturn);
    }
  }

  /** Whether the plant may be carried on that night's day from one place to another. */
  boolean allow(int night, int from, int to) {
    return any[night] && (from != home || away[night]) && (to != home || back[night]);
  }
}
