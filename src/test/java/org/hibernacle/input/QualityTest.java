package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is hard to believe, on both sides of each limit. The limits of spikes, ranges and streaks
 * are published (see {@link QualityRule}); that of lost signs is common practice, without a source.
 */
class QualityTest {
  private static final Path RESOURCES = Path.of("src", "test", "resources");

  /**
   * Days measured by others, which their archive has checked, and the invented ones of the demo:
   * any doubt would be a false alarm.
   */
  @ParameterizedTest
  @CsvSource({
    "noaa/weather.csv, Seattle, C, 1461",
    "noaa/weather.csv, New York, C, 1461",
    "phenology/air.csv, , C, 3682",
    "../../../demo-data/temperatures.csv, , C, 3834",
  })
  void measuredDaysRaiseNoDoubt(String file, String station, TemperatureUnit unit, int days) {
    TemperatureCsv.Options options =
        new TemperatureCsv.Options(
            Optional.ofNullable(station), Optional.of(unit), Optional.empty(), Optional.empty());
    Problems problems = new Problems();
    Optional<TemperatureSeries> series =
        TemperatureCsv.read(List.of(RESOURCES.resolve(file)), options, problems);
    assertTrue(series.isPresent(), () -> problems.sorted().toString());
    assertEquals(List.of(), Quality.doubts(series.get()));
    assertEquals(days, series.get().days().size());
  }

  @ParameterizedTest
  @CsvSource({"-30.1, 1", "-30, 0", "20.1, 1", "20, 0"})
  void aSpikeIsMoreThan25KFromBothNeighbours(double minC, int doubts) {
    double[][] days = {{-5, 21}, {minC, 21}, {-5, 21}};
    assertEquals(doubts, of(days).stream().filter(s -> s.rule() == QualityRule.SPIKE).count());
  }

  @Test
  void aColdWaveThatStaysIsNoSpike() {
    assertEquals(List.of(), of(new double[][] {{-5, 1}, {-31, -20}, {-32, -22}, {-31, -20}}));
  }

  @ParameterizedTest
  @CsvSource({"38, 1", "37.9, 0"})
  void aRangeIs40KAboveEveryLowestOfThreeDays(double maxC, int doubts) {
    double[][] days = {{-4, 20}, {-3, maxC}, {-2, 20}};
    assertEquals(doubts, of(days).stream().filter(s -> s.rule() == QualityRule.WIDE).count());
  }

  @ParameterizedTest
  @CsvSource({"20, 1", "19, 0"})
  void aFigureIsStuckFor20Days(int days, int doubts) {
    double[][] air = new double[days + 1][];
    for (int i = 0; i <= days; i++) {
      air[i] = new double[] {i == days ? -1 : -3, i / 10.0};
    }
    assertEquals(doubts, of(air).size());
  }

  @Test
  void aGapEndsAStreak() {
    NavigableMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (int i = 0; i < 30; i++) {
      if (i != 15) {
        days.put(LocalDate.of(2030, 1, 1).plusDays(i), new DailyExtremes(-3, i / 10.0));
      }
    }
    assertEquals(List.of(), QualityCheck.of(days));
  }

  @Test
  void daysThatFitOnlyBelowZeroHaveLostTheirSign() {
    List<Suspicion> found = of(new double[][] {{-14, -6}, {7, 13}, {8, 14}, {-13, -7}, {-12, -5}});
    assertEquals(1, found.size());
    assertEquals(QualityRule.LOST_SIGN, found.get(0).rule());
    assertEquals("2030-01-02 to 2030-01-03", found.get(0).when().toString());
  }

  /** A thaw is warm without being the mirror of the cold beside it. */
  @ParameterizedTest
  @CsvSource({"2, 6", "0, 9", "4, 12"})
  void aThawHasNotLostItsSign(double minC, double maxC) {
    assertEquals(List.of(), of(new double[][] {{-14, -6}, {minC, maxC}, {minC, maxC}, {-13, -7}}));
  }

  private static List<Suspicion> of(double[][] air) {
    NavigableMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (int i = 0; i < air.length; i++) {
      days.put(LocalDate.of(2030, 1, 1).plusDays(i), new DailyExtremes(air[i][0], air[i][1]));
    }
    return QualityCheck.of(days);
  }
}
