package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What paper alone shows: every fact of it stands in the tables too.
 *
 * @param dated the day that files carry as the day of writing where there is no calendar
 * @param strips each plant's season at a glance
 * @param places a page for each place in use, to be hung up there
 */
public record Paper(LocalDate dated, Optional<Strips> strips, List<PlacePage> places) {
  /** Nothing, of no season. */
  public static final Paper NONE = dated(LocalDate.of(2000, 1, 1));

  public Paper {
    places = List.copyOf(places);
  }

  /** Nothing but that day. */
  public static Paper dated(LocalDate day) {
    return new Paper(day, Optional.empty(), List.of());
  }
}
