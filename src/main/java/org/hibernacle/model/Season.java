package org.hibernacle.model;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A winter half-year with the seasons around it: twelve months that begin about half a year before
 * the coldest time. In the north 1 July to 30 June, across New Year; in the south 1 January to 31
 * December, inside one year.
 *
 * @param year in which its autumn falls
 * @param southern whether the site lies south of the equator
 */
public record Season(int year, boolean southern) implements Comparable<Season> {
  /** The season that contains the day. */
  public static Season containing(LocalDate day, boolean southern) {
    boolean beforeJuly = !southern && day.getMonthValue() < 7;
    return new Season(beforeJuly ? day.getYear() - 1 : day.getYear(), southern);
  }

  /** First day. */
  public LocalDate start() {
    return LocalDate.of(year, southern ? 1 : 7, 1);
  }

  /** Day after the last. */
  public LocalDate endExclusive() {
    return start().plusYears(1);
  }

  /** Days in the season: 365 or 366. */
  public int days() {
    return (int) ChronoUnit.DAYS.between(start(), endExclusive());
  }

  /** Days since the start; may be negative or beyond the end. */
  public int index(LocalDate day) {
    return (int) ChronoUnit.DAYS.between(start(), day);
  }

  /** The day that many days after the start. */
  public LocalDate day(int index) {
    return start().plusDays(index);
  }

  /** Whether the day lies in the season. */
  public boolean contains(LocalDate day) {
    return !day.isBefore(start()) && day.isBefore(endExclusive());
  }

  /**
   * The day of this season with the month and day of {@code day}, which may lie in any other
   * season. 29 February becomes the 28th where this season has none.
   */
  public LocalDate sameDay(LocalDate day) {
    return day.plusYears(year - containing(day, southern).year());
  }

  /** Middle of the winter: 15 January in the north, 15 July in the south. */
  public LocalDate midwinter() {
    return start().plusMonths(6).plusDays(14);
  }

  /** First day of the months without which a winter cannot be judged: October, or April. */
  public LocalDate coreStart() {
    return start().plusMonths(3);
  }

  /** Day after the last of those months: 1 May, or 1 November. */
  public LocalDate coreEndExclusive() {
    return start().plusMonths(10);
  }

  /** The season after this one. */
  public Season next() {
    return new Season(year + 1, southern);
  }

  @Override
  public int compareTo(Season other) {
    return Integer.compare(year, other.year);
  }

  /** {@code 2014/15} in the north, {@code 2014} in the south. */
  @Override
  public String toString() {
    return southern
        ? Integer.toString(year)
        : year + "/" + String.format(java.util.Locale.ROOT, "%02d", (year + 1) % 100);
  }
}
