package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.model.Season;

/**
 * How cold a reference pot would get in each place, in the winter with the coldest night.
 *
 * @param winter on file
 * @param potL volume of the reference pot, L
 * @param places names, in the order of {@link Day#rootBallC}
 * @param days of that winter that have temperatures
 */
public record TraceTable(Season winter, double potL, List<String> places, List<Day> days) {
  /**
   * One day.
   *
   * @param day in the winter
   * @param airMinC lowest air at the bench, °C
   * @param airMaxC highest air, °C
   * @param rootBallC lowest root-ball temperature by place, °C
   */
  public record Day(LocalDate day, double airMinC, double airMaxC, List<Double> rootBallC) {
    public Day {
      rootBallC = List.copyOf(rootBallC);
    }
  }

  public TraceTable {
    places = List.copyOf(places);
    days = List.copyOf(days);
  }
}
