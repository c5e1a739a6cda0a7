package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.TemperatureSeries;
import org.hipparchus.distribution.continuous.NormalDistribution;
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

  /** Days that all differ, so that no run of them comes again by chance. */
  private static DailyExtremes someDay(int number) {
    double minC = -10 + number * 37 % 101 / 10.0;
    return new DailyExtremes(minC, minC + 3 + number * 53 % 97 / 10.0);
  }

  @ParameterizedTest
  @CsvSource({"20, 1", "19, 0"})
  void twentyDaysThatComeAgainAreACopy(int days, int doubts) {
    NavigableMap<LocalDate, DailyExtremes> file = new TreeMap<>();
    for (int i = 0; i < 90; i++) {
      int same = i >= 50 && i < 50 + days ? i - 40 : i;
      file.put(LocalDate.of(2030, 1, 1).plusDays(i), someDay(same));
    }
    List<Suspicion> found = QualityCheck.of(file);
    assertEquals(doubts, found.size(), found.toString());
    if (doubts > 0) {
      assertEquals(QualityRule.COPIED, found.get(0).rule());
      assertEquals("2030-02-20 to 2030-03-11", found.get(0).when().toString());
      assertEquals("the figures of 2030-01-11 to 2030-01-30", found.get(0).found().toString());
    }
  }

  /** The days of a year that was filled from the year before are one copy, not many. */
  @Test
  void aYearThatWasFilledFromAnotherIsOneCopy() {
    NavigableMap<LocalDate, DailyExtremes> file = new TreeMap<>();
    for (int i = 0; i < 365; i++) {
      DailyExtremes air =
          new DailyExtremes(i % 101 / 10.0 + i / 101 * 0.03, 20 + i * 53 % 97 / 10.0);
      file.put(LocalDate.of(2030, 1, 1).plusDays(i), air);
      file.put(LocalDate.of(2031, 1, 1).plusDays(i), air);
    }
    List<Suspicion> found = QualityCheck.of(file);
    assertEquals(1, found.size(), found.toString());
    assertEquals("2031-01-01 to 2031-12-31", found.get(0).when().toString());
  }

  @Test
  void airThatSwingsBetweenTwoFiguresIsNoCopy() {
    NavigableMap<LocalDate, DailyExtremes> file = new TreeMap<>();
    for (int i = 0; i < 200; i++) {
      file.put(LocalDate.of(2030, 1, 1).plusDays(i), new DailyExtremes(-3 - i % 2, 4 + i % 2));
    }
    assertEquals(List.of(), QualityCheck.of(file));
  }

  /** Ten Januaries whose lowest is spread like a bell about -5 °C, with one day of its own. */
  private static List<Suspicion> tenJanuaries(double deviationK, double oddC) {
    NavigableMap<LocalDate, DailyExtremes> file = new TreeMap<>();
    NormalDistribution bell = new NormalDistribution(-5, deviationK);
    for (int year = 2030; year < 2040; year++) {
      for (int day = 1; day <= 31; day++) {
        int rank = ((year - 2030) * 31 + day) * 127 % 311;
        double minC = bell.inverseCumulativeProbability((rank + 0.5) / 311);
        file.put(LocalDate.of(year, 1, day), new DailyExtremes(minC, 8 + rank % 7));
      }
    }
    file.put(LocalDate.of(2033, 1, 16), new DailyExtremes(oddC, 8));
    return QualityCheck.of(file);
  }

  /** Standard deviation 1.4 K, so that the limit is 8.4 K; ranks of 15 days in it are no bell. */
  @ParameterizedTest
  @CsvSource({"-14.4, 1", "-12.2, 0", "4.4, 1", "2.2, 0"})
  void sixStandardDeviationsAreFar(double oddC, int doubts) {
    List<Suspicion> found = tenJanuaries(1.4, oddC);
    assertEquals(doubts, found.size(), found.toString());
    assertTrue(found.stream().allMatch(s -> s.rule() == QualityRule.OUTLIER));
  }

  /** With a deviation of 4 K six of them are 24 K; the coldest of the others has -15.4 °C. */
  @ParameterizedTest
  @CsvSource({"-25.6, 1", "-25.1, 0"})
  void tenKelvinFromAllOthersOfTheMonthIsFar(double oddC, int doubts) {
    List<Suspicion> found = tenJanuaries(4, oddC);
    assertEquals(doubts, found.size(), found.toString());
  }

  @Test
  void withFewDaysNobodyKnowsWhatIsUsual() {
    double[][] air = new double[40][];
    for (int i = 0; i < 40; i++) {
      DailyExtremes day = someDay(i);
      air[i] = new double[] {i == 20 ? -24 : day.minC(), day.maxC()};
    }
    assertEquals(List.of(), of(air));
  }

  /**
   * For a bell the biweight is what mean and standard deviation are; far figures move it little.
   */
  @Test
  void theBiweightIsMeanAndDeviationOfABell() {
    NormalDistribution bell = new NormalDistribution(3, 2);
    List<Double> figures = new ArrayList<>();
    for (int i = 0; i < 999; i++) {
      figures.add(bell.inverseCumulativeProbability((i + 0.5) / 999));
    }
    Outliers.Biweight clean = Outliers.Biweight.of(figures);
    assertEquals(3, clean.mean(), 1e-9);
    assertEquals(2, clean.deviation(), 0.05);
    for (int i = 0; i < 40; i++) {
      figures.add(60.0);
    }
    Outliers.Biweight spoilt = Outliers.Biweight.of(figures);
    assertEquals(3, spoilt.mean(), 0.1);
    assertEquals(2, spoilt.deviation(), 0.15);
  }

  private static List<Suspicion> of(double[][] air) {
    NavigableMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (int i = 0; i < air.length; i++) {
      days.put(LocalDate.of(2030, 1, 1).plusDays(i), new DailyExtremes(air[i][0], air[i][1]));
    }
    return QualityCheck.of(days);
  }
}
