package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;

/**
 * Nights in spring on which a small pot that is home again is carried back, since it has to be home
 * before its buds break and frost comes after that.
 *
 * @param refuge where it spends such nights
 * @param from first day at home
 * @param to last day on which such a night began in any winter on file, as a day of the season
 * @param waking earliest day on which its buds break in any winter on file, likewise
 * @param nights all such nights on file; never empty
 * @param triggerC air at home below which it is carried back: the coldest night from the return on
 *     that it came through at home, leaving out what is colder than the warmest that harmed, °C
 */
public record Shuttle(
    Place refuge,
    LocalDate from,
    LocalDate to,
    LocalDate waking,
    List<Night> nights,
    double triggerC) {

  /**
   * One night.
   *
   * @param winter on file
   * @param day on whose evening it begins
   */
  public record Night(Season winter, LocalDate day) {}

  public Shuttle {
    nights = List.copyOf(nights);
    if (nights.isEmpty()) {
      throw new IllegalArgumentException("a shuttle needs nights");
    }
  }

  /** Whether it is a night to carry the plant back, by the forecast. */
  boolean isNightBack(LocalDate planDay, double homeAirC) {
    return !planDay.isBefore(from) && !planDay.isAfter(to) && homeAirC < triggerC;
  }

  /** Winters on file with such nights. */
  public int winters() {
    return perWinter().size();
  }

  /** Nights in the winter with most of them. */
  public int mostInAWinter() {
    return Collections.max(perWinter().values());
  }

  private Map<Season, Integer> perWinter() {
    Map<Season, Integer> count = new TreeMap<>();
    nights.forEach(n -> count.merge(n.winter(), 1, Integer::sum));
    return count;
  }
}
