package org.hibernacle.physiology;

import java.time.LocalDate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hibernacle.climate.DayLength;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;

/** An invented year of one temperature for roots and tops at 50° N; no chill, no warmth counted. */
final class SomeYear {
  static final Season SEASON = new Season(2020, false);
  static final int NIGHTS = SEASON.days() - 1;
  private static final double[] DAY_LENGTH_H =
      IntStream.range(0, NIGHTS)
          .mapToDouble(n -> DayLength.at(50, SEASON.day(n)).lengthH())
          .toArray();

  private SomeYear() {}

  /** Night that begins on that day of the season. */
  static int night(int month, int day) {
    return SEASON.index(LocalDate.of(month < 7 ? 2021 : 2020, month, day));
  }

  /** A cold continental year: 20 °C in July, -3 °C in January. */
  static double wave(int night) {
    return 8.5 - 11.5 * Math.cos(2 * Math.PI * (night - night(1, 15)) / 365);
  }

  static PlantState live(Plant plant, IntToDoubleFunction meanC) {
    return live(plant, meanC, n -> DAY_LENGTH_H[n]);
  }

  /** A year at one temperature for roots and tops; rest ends at its cap, buds never break. */
  static PlantState live(Plant plant, IntToDoubleFunction meanC, IntToDoubleFunction dayLengthH) {
    double[] means = IntStream.range(0, NIGHTS).mapToDouble(meanC::applyAsDouble).toArray();
    double[] lowest = IntStream.range(0, NIGHTS).mapToDouble(n -> means[n] - 3).toArray();
    double[] days = IntStream.range(0, NIGHTS).mapToDouble(dayLengthH::applyAsDouble).toArray();
    double[] none = new double[NIGHTS];
    return PlantState.live(
        plant,
        SEASON,
        new Surroundings(
            means, means, lowest, days, none, none, none, night(10, 1), night(1, 15), night(2, 1)));
  }
}
