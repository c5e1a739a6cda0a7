package org.hibernacle.report;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * The plan as a calendar program shows it: whole days, each with something to do.
 *
 * @param name of the calendar
 * @param text about it
 * @param language of the words
 * @param dated the day that the file carries as the day of writing
 * @param revision grows from plan to plan of one season that tells something else, 0 for the first
 *     one made before it
 * @param digest of what is planned
 * @param entries by day
 */
public record Agenda(
    String name,
    String text,
    Locale language,
    LocalDate dated,
    int revision,
    String digest,
    List<Entry> entries) {
  public Agenda {
    entries = List.copyOf(entries);
  }

  /**
   * One day with something to do.
   *
   * @param id the same in every plan of the season, whatever the date
   * @param day on which it begins
   * @param title in a few words
   * @param text in full, on several lines
   * @param alarm when to remind, counted from the midnight with which the day begins; negative for
   *     the days before
   * @param kind name of the constant of the work; empty for a moving day
   * @param place of the work; empty where it has none
   * @param dropped an earlier plan had it, this one does not: to be taken out of the calendar
   */
  public record Entry(
      UUID id,
      LocalDate day,
      String title,
      String text,
      Optional<Duration> alarm,
      String kind,
      String place,
      boolean dropped) {}
}
