package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.hibernacle.thermal.ModelError;

/**
 * What a place will hold, and what it did in the winters on file.
 *
 * @param place which
 * @param weeks how full it gets, one entry a week of the season
 * @param coldestC lowest air in the place over all winters, °C
 * @param coldestWinter when that was
 * @param coldestDay when that was
 * @param medianDaysAbove5C days with a mean above 5 °C between November and March (May and
 *     September in the south), median of the winters
 * @param modelError how far the model was from the place's logger, where it has one
 * @param warmestC highest air in the place in these five months of any winter, °C
 * @param warmestDay when that was
 */
public record PlaceForecast(
    Place place,
    List<Week> weeks,
    double coldestC,
    Season coldestWinter,
    LocalDate coldestDay,
    int medianDaysAbove5C,
    Optional<ModelError> modelError,
    double warmestC,
    LocalDate warmestDay) {

  /**
   * One week.
   *
   * @param start first day
   * @param pots standing there on its fullest day
   * @param usedM2 floor they take, m2
   * @param plantIds in order of Id
   */
  public record Week(LocalDate start, int pots, double usedM2, List<String> plantIds) {
    public Week {
      plantIds = List.copyOf(plantIds);
    }
  }

  public PlaceForecast {
    weeks = List.copyOf(weeks);
  }

  /** Whether more floor is asked for than there is, in any week. */
  public boolean overfull() {
    return place.floorM2().isPresent() && peakM2() > place.floorM2().getAsDouble() + 1e-9;
  }

  /** Most floor taken in any week, m2. */
  public double peakM2() {
    return weeks.stream().mapToDouble(Week::usedM2).max().orElse(0);
  }
}
