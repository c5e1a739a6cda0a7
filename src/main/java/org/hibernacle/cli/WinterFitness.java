package org.hibernacle.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hibernacle.climate.UsableWinter;
import org.hibernacle.climate.WinterSelection;
import org.hibernacle.climate.WinterSelection.LeftOut;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;

/**
 * Whether a winter can be planned with, in words.
 *
 * @param usable whether it can
 * @param words why not, or which gaps were bridged
 */
record WinterFitness(boolean usable, String words) {

  static WinterFitness of(Season season, WinterSelection selection) {
    Stream<WinterFitness> usable =
        selection.winters().stream()
            .filter(winter -> winter.season().equals(season))
            .map(winter -> new WinterFitness(true, words(winter)));
    Stream<WinterFitness> leftOut =
        selection.leftOut().stream()
            .filter(fault -> fault.season().equals(season))
            .map(fault -> new WinterFitness(false, words(fault)));
    return Stream.concat(usable, leftOut).findFirst().orElseThrow();
  }

  private static String words(UsableWinter winter) {
    List<String> spans = winter.bridged().stream().map(WinterFitness::words).toList();
    return spans.isEmpty() ? "" : "bridged " + String.join(", ", spans);
  }

  private static String words(LeftOut fault) {
    String missing =
        switch (fault.reason()) {
          case FILE_STARTS_TOO_LATE -> "nothing on file from " + words(fault.missing());
          case FILE_ENDS_TOO_EARLY -> "nothing on file from " + words(fault.missing());
          case GAP_TOO_LONG ->
              "a gap of more than "
                  + WinterSelection.LONGEST_BRIDGE_DAYS
                  + " days from "
                  + words(fault.missing());
          case TOO_MANY_GAPS ->
              "more than "
                  + WinterSelection.MOST_BRIDGED_DAYS
                  + " days missing, the first from "
                  + words(fault.missing());
        };
    return missing
        + "; of the days from "
        + fault.season().coreStart()
        + " to "
        + fault.season().coreEndExclusive().minusDays(1)
        + " it lacks "
        + fault.missingCoreDays();
  }

  private static String words(DateSpan span) {
    LocalDate last = span.toExclusive().minusDays(1);
    return span.fromInclusive().equals(last)
        ? last.toString()
        : span.fromInclusive() + " to " + last;
  }
}
