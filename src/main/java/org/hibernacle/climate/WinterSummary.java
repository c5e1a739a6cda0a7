package org.hibernacle.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;

/**
 * What one winter on file was like.
 *
 * @param season which
 * @param daysOnFile days of the season with both extremes
 * @param missingDays days of the season without
 * @param coldestNightC lowest minimum, °C
 * @param coldestNight its date
 * @param frosts one entry a threshold, in the order of {@link #THRESHOLDS_C}
 * @param longestFrostRunDays longest run of days with a minimum below 0 °C
 * @param window the days over which chill and warmth are summed
 * @param windowMissingDays days of the window without both extremes; they add nothing to the sums
 * @param chillingHours hours of 0 to 7.2 °C in the window
 * @param utahUnits Utah chill units in the window
 * @param chillPortions Dynamic Model portions in the window
 * @param growingDegreeHours {@link GrowingDegreeHours} in the window, K·h
 */
public record WinterSummary(
    Season season,
    int daysOnFile,
    int missingDays,
    double coldestNightC,
    LocalDate coldestNight,
    List<Frosts> frosts,
    int longestFrostRunDays,
    DateSpan window,
    int windowMissingDays,
    double chillingHours,
    double utahUnits,
    double chillPortions,
    double growingDegreeHours) {

  /** Minima at or below which frosts are counted, °C. */
  public static final List<Double> THRESHOLDS_C = List.of(0.0, -2.2, -5.0, -10.0);

  /**
   * Frosts at one threshold.
   *
   * @param thresholdC counted at or below, °C
   * @param first first date, empty if none
   * @param last last date, empty if none
   * @param days how many days
   */
  public record Frosts(
      double thresholdC, Optional<LocalDate> first, Optional<LocalDate> last, int days) {}

  public WinterSummary {
    frosts = List.copyOf(frosts);
  }
}
