package org.hibernacle.climate;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.junit.jupiter.api.Test;

/** Dates by chance against runs of R; see checks/SOURCES.md, freeze_date_quantiles.csv. */
class PlottingPositionTest {
  /** Days of the year of ten first frosts, as in the checks. */
  private static final double[] DAYS = {288, 293, 297, 299, 302, 304, 305, 309, 311, 318};

  private static final Map<String, PlottingPosition> POSITIONS =
      Map.of("weibull", PlottingPosition.WEIBULL, "hazen", PlottingPosition.HAZEN);

  /** Two further positions of the same family prove the formula, not only two of its points. */
  private static final Map<String, Double> SHIFTS =
      Map.of("weibull", 0.0, "hazen", 0.5, "gringorten", 0.44, "blom", 0.375);

  @Test
  void quantilesEqualThoseOfR() {
    List<CSVRecord> rows =
        CheckTable.rows("freeze_date_quantiles").stream()
            .filter(row -> SHIFTS.containsKey(row.get("method")))
            .toList();
    assertEquals(20, rows.size());
    for (CSVRecord row : rows) {
      double chance = number(row, "probability");
      double expected = number(row, "expected_day_of_year");
      double shift = SHIFTS.get(row.get("method"));
      assertEquals(expected, PlottingPosition.quantile(DAYS, chance, shift), 1e-6, row.toString());
      PlottingPosition position = POSITIONS.get(row.get("method"));
      if (position != null) {
        assertEquals(expected, position.quantile(DAYS, chance), 1e-6, row.toString());
      }
    }
  }

  /**
   * The mixed form, laid over the normal distribution of the checks: the program lays it over its
   * own positions, so only the share is its work here.
   */
  @Test
  void theMixedFormEqualsThatOfR() {
    List<CSVRecord> rows =
        CheckTable.rows("freeze_date_quantiles").stream()
            .filter(row -> row.get("method").startsWith("normal"))
            .toList();
    assertEquals(9, rows.size());
    for (CSVRecord row : rows) {
      EventChance chance =
          new EventChance((int) number(row, "years_total"), (int) number(row, "years_with_event"));
      OptionalDouble share = chance.shareWhenCome(number(row, "probability"));
      if (row.get("expected_day_of_year").equals("NONE")) {
        assertTrue(share.isEmpty(), row.toString());
      } else {
        assertEquals(
            number(row, "expected_day_of_year"),
            normalDay(share.orElseThrow()),
            1e-4,
            row.toString());
      }
    }
  }

  /** What is still to come after a date is what has not come by it. */
  @Test
  void stillToComeIsTheOtherSideOfCome() {
    EventChance most = new EventChance(12, 10);
    assertEquals(1 - 0.1 * 1.2, most.shareWhenStillToCome(0.1).orElseThrow(), 1e-12);
    assertEquals(1 - 0.5 * 1.2, most.shareWhenStillToCome(0.5).orElseThrow(), 1e-12);
    assertTrue(most.shareWhenStillToCome(0.9).isEmpty());
    assertTrue(new EventChance(10, 5).shareWhenCome(0.5).isEmpty(), "half never, half by the end");
    assertTrue(new EventChance(0, 0).shareWhenCome(0.1).isEmpty());
  }

  @Test
  void aTenthNeedsTenWintersByWeibullAndSixByHazen() {
    assertFalse(PlottingPosition.WEIBULL.reaches(9, 0.1));
    assertFalse(PlottingPosition.WEIBULL.reaches(9, 0.9));
    assertTrue(PlottingPosition.WEIBULL.reaches(10, 0.1));
    assertTrue(PlottingPosition.WEIBULL.reaches(10, 0.9));
    assertFalse(PlottingPosition.HAZEN.reaches(5, 0.1));
    assertTrue(PlottingPosition.HAZEN.reaches(6, 0.1));
    assertFalse(PlottingPosition.WEIBULL.reaches(1, 0.5));
    assertTrue(PlottingPosition.WEIBULL.reaches(2, 0.5));
    assertFalse(PlottingPosition.HAZEN.reaches(0, 0.5));
  }

  @Test
  void chancesBeyondTheDatesOnFileAreClipped() {
    for (PlottingPosition position : PlottingPosition.values()) {
      assertEquals(288, position.quantile(DAYS, 0.01));
      assertEquals(318, position.quantile(DAYS, 0.99));
      assertEquals(7, position.quantile(new double[] {7}, 0.5));
    }
  }

  /** Day reached with that chance under a normal distribution with mean and spread of the days. */
  private static double normalDay(double chance) {
    double mean = DoubleStream.of(DAYS).average().orElseThrow();
    double squares = Arrays.stream(DAYS).map(day -> (day - mean) * (day - mean)).sum();
    return mean + Math.sqrt(squares / (DAYS.length - 1)) * normalDeviate(chance);
  }

  /** By halving: the integral of the bell curve from -8 up to the deviate is the chance. */
  private static double normalDeviate(double chance) {
    double low = -8;
    double high = 8;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (bellUpTo(middle) < chance) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Simpson's rule. */
  private static double bellUpTo(double end) {
    int steps = 2000;
    double width = (end + 8) / steps;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double x = -8 + i * width;
      int weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
      sum += weight * Math.exp(-x * x / 2);
    }
    return sum * width / 3 / Math.sqrt(2 * Math.PI);
  }
}
