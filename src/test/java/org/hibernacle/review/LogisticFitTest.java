package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.review.LogisticFit.Dose;
import org.hibernacle.review.LogisticFit.Group;
import org.junit.jupiter.api.Test;

/** Held against published examples; their coefficients are from R's glm and MASS's dose.p. */
class LogisticFitTest {
  /**
   * Budworm moths and a pyrethroid, two sexes and one slope on the doubling of the dose: Venables
   * and Ripley, Modern Applied Statistics with S, section 7.2.
   */
  @Test
  void agreesWithTheBudworms() {
    int[] males = {1, 4, 9, 13, 18, 20};
    int[] females = {0, 2, 6, 10, 12, 16};
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      groups.add(new Group(new double[] {1, 0, i}, 20, females[i]));
      groups.add(new Group(new double[] {0, 1, i}, 20, males[i]));
    }
    LogisticFit fit = LogisticFit.of(groups).orElseThrow();
    assertEquals(-3.473155, fit.coefficients().getEntry(0), 1e-5);
    assertEquals(-2.372412, fit.coefficients().getEntry(1), 1e-5);
    assertEquals(1.064214, fit.coefficients().getEntry(2), 1e-5);
    assertDose(2.231265, 0.249909, fit.dose(0.25, 0, 2));
    assertDose(3.263587, 0.229754, fit.dose(0.5, 0, 2));
    assertDose(4.295910, 0.274687, fit.dose(0.75, 0, 2));
    assertDose(2.229262, 0.225965, fit.dose(0.5, 1, 2));
  }

  /** An invented freezing test, fitted in R: alive of 20 each. */
  @Test
  void agreesWithAFreezingTest() {
    int[] alive = {20, 19, 15, 8, 2, 0};
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      groups.add(new Group(new double[] {1, -4 - 4 * i}, 20, 20 - alive[i]));
    }
    LogisticFit fit = LogisticFit.of(groups).orElseThrow();
    assertEquals(-6.680144, fit.coefficients().getEntry(0), 1e-5);
    assertEquals(-0.451151, fit.coefficients().getEntry(1), 1e-5);
    assertDose(-14.806890, 0.668696, fit.dose(0.5, 0, 1));
    assertEquals(-9.936626, fit.dose(0.1, 0, 1).value(), 1e-5);
    assertEquals(-19.677153, fit.dose(0.9, 0, 1).value(), 1e-5);
    double[] ends = fit.interval(0, 1).orElseThrow();
    // Fieller's interval is close to the normal one where the slope is sure, and wider.
    assertEquals(-14.81 - 1.96 * 0.669, ends[0], 0.15);
    assertEquals(-14.81 + 1.96 * 0.669, ends[1], 0.15);
    assertTrue(ends[1] - ends[0] > 2 * 1.96 * 0.668);
    // The same data without a curve, by Spearman and Kärber: -14.8 (checks/SOURCES.md).
    assertEquals(-14.8, fit.dose(0.5, 0, 1).value(), 0.02);
  }

  /**
   * Another way to the same figure. Sets with at most one dose that kills some and spares some have
   * no likeliest curve; the others agree with Spearman and Kärber as two methods do.
   */
  @Test
  void liesBesideSpearmanAndKaerberWhereDosesOverlap() {
    int fitted = 0;
    int separated = 0;
    for (CSVRecord row : CheckTable.rows("lt50_spearman_karber")) {
      if (!row.get("scale").equals("log10 dose") || CheckTable.number(row, "trim") > 0) {
        continue;
      }
      double[] doses = numbers(row.get("x_list"));
      double[] trials = numbers(row.get("n_list"));
      double[] percent = numbers(row.get("percent_dead_list"));
      List<Group> groups = new ArrayList<>();
      for (int i = 0; i < doses.length; i++) {
        int dead = (int) Math.round(percent[i] * trials[i] / 100);
        groups.add(new Group(new double[] {1, Math.log10(doses[i])}, (int) trials[i], dead));
      }
      Optional<LogisticFit> fit = LogisticFit.of(groups);
      long mixed = Arrays.stream(percent).filter(p -> p > 0 && p < 100).count();
      assertEquals(mixed > 1, fit.isPresent(), row.toString());
      if (fit.isPresent()) {
        double middle = Math.pow(10, fit.get().dose(0.5, 0, 1).value());
        assertEquals(1, middle / CheckTable.number(row, "expected_50pct"), 0.08, row.toString());
        fitted++;
      } else {
        separated++;
      }
    }
    assertEquals(4, fitted);
    assertEquals(3, separated);
  }

  @Test
  void flatDataHaveNoInterval() {
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      groups.add(new Group(new double[] {1, -2.0 * i}, 10, i % 2 == 0 ? 5 : 4));
    }
    assertTrue(LogisticFit.of(groups).orElseThrow().interval(0, 1).isEmpty());
  }

  @Test
  void conditionsThatDoNotDifferHaveNoFit() {
    List<Group> groups =
        List.of(new Group(new double[] {1, -5}, 10, 3), new Group(new double[] {1, -5}, 10, 4));
    assertTrue(LogisticFit.of(groups).isEmpty());
  }

  private static double[] numbers(String list) {
    return Arrays.stream(list.split(";", -1)).mapToDouble(Double::parseDouble).toArray();
  }

  private static void assertDose(double value, double standardError, Dose dose) {
    assertEquals(value, dose.value(), 1e-5);
    assertEquals(standardError, dose.standardError(), 1e-5);
  }
}
