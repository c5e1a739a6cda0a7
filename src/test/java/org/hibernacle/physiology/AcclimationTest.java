package org.hibernacle.physiology;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.physiology.Acclimation.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The kernel with the constants of Ferguson et al. 2014, table 4, against runs of an independent
 * implementation of that paper's equation 1; see checks/SOURCES.md. Then what must hold for any
 * constants.
 */
class AcclimationTest {
  private static final List<CSVRecord> PARAMETERS = CheckTable.rows("ferguson_parameters_2014");

  @Test
  void all23GenotypesHardenAsPublished() {
    List<CSVRecord> rows = CheckTable.rows("ferguson_closed_form_summary");
    assertEquals(23, rows.size());
    for (CSVRecord row : rows) {
      String genotype = row.get("genotype");
      Buds buds = new Buds(genotype);
      double coldestC = 0;
      int coldestDay = -1;
      int budBreak = -1;
      int lastAtRest = -1;
      for (int day = 0; day < 273; day++) {
        buds.day(meanC(day));
        if (day % 30 == 29 && day < 240) {
          double expected = number(row, "hc_day_" + day);
          assertEquals(expected, buds.limitC, 1e-5, genotype + " day " + day);
        }
        if (buds.limitC < coldestC) {
          coldestC = buds.limitC;
          coldestDay = day;
        }
        budBreak = budBreak < 0 && buds.limitC >= buds.budBreakC ? day : budBreak;
        lastAtRest = lastAtRest < 0 && buds.restComplete ? day : lastAtRest;
      }
      assertEquals(number(row, "coldest_hc"), coldestC, 1e-5, genotype);
      assertEquals(number(row, "coldest_day"), coldestDay, genotype);
      assertEquals(number(row, "budbreak_day"), budBreak, genotype);
      assertEquals(number(row, "day_period2_starts_after"), lastAtRest, genotype);
    }
  }

  @ParameterizedTest
  @CsvSource({"Cabernet Sauvignon", "Chardonnay", "Concord", "Riesling"})
  void fourGenotypesAreFollowedEveryDay(String genotype) {
    String column = genotype.replace(' ', '_');
    Buds buds = new Buds(genotype);
    List<CSVRecord> rows = CheckTable.rows("ferguson_closed_form_daily");
    assertEquals(273, rows.size());
    for (CSVRecord row : rows) {
      int day = (int) number(row, "day");
      assertEquals(number(row, "tmean_C"), meanC(day), 1e-6);
      buds.day(meanC(day));
      assertEquals(number(row, "hc_" + column), buds.limitC, 1e-5, "day " + day);
      assertEquals(number(row, "period_" + column), buds.restComplete ? 2 : 1, "day " + day);
    }
  }

  /** One day each, Cabernet Sauvignon, by the same equation. */
  @ParameterizedTest
  @CsvSource({
    "-10.27,   3, false, -11.015363",
    "-20,     18, false, -19.685882",
    "-24,     10, true,  -23.500000",
    "-5,      15, true,  -4.298227",
    "-5,       0, true,  -5.420635",
    "-24,    -30, true,  -24.166667",
    "-2,      20, true,  -1.682404"
  })
  void singleDaysAreThoseOfTheEquation(
      double beforeC, double meanC, boolean restComplete, double afterC) {
    Acclimation buds = acclimation(parameters("Cabernet Sauvignon"));
    assertEquals(afterC, buds.next(beforeC, meanC, restComplete, true, 1), 1e-5);
  }

  @Test
  void nothingIsLostBeforeAnyColdWasFelt() {
    Acclimation buds = acclimation(parameters("Cabernet Sauvignon"));
    assertEquals(-20, buds.next(-20, 18, false, false, 1));
    assertTrue(buds.next(-20, 18, false, true, 1) > -20);
    assertTrue(buds.next(-20, 3, false, false, 1) < -20);
  }

  @Test
  void readinessScalesTheGainOnly() {
    Acclimation buds = acclimation(parameters("Cabernet Sauvignon"));
    double whole = buds.next(-12, 0, false, true, 1) + 12;
    assertEquals(whole / 2, buds.next(-12, 0, false, true, 0.5) + 12, 1e-12);
    assertEquals(-12, buds.next(-12, 0, false, true, 0));
    assertEquals(buds.next(-20, 18, false, true, 1), buds.next(-20, 18, false, true, 0));
  }

  @Test
  void theLimitStaysWithinItsBounds() {
    long seed = 8_101;
    SplittableRandom random = new SplittableRandom(seed);
    for (CSVRecord row : PARAMETERS) {
      Acclimation buds = acclimation(row);
      double limitC = number(row, "hc_initial");
      for (int day = 0; day < 2000; day++) {
        limitC =
            buds.next(
                limitC,
                random.nextDouble(-50, 45),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextDouble());
        assertTrue(limitC >= buds.mostC() && limitC <= buds.leastC(), "seed " + seed);
        double hardness = buds.hardness(limitC);
        assertTrue(hardness >= 0 && hardness <= 1, "seed " + seed);
      }
    }
  }

  /** Until rest is complete, colder days never leave a bud less hardy, from the same start. */
  @Test
  void aColderPastNeverLeavesItLessHardy() {
    long seed = 8_102;
    SplittableRandom random = new SplittableRandom(seed);
    for (CSVRecord row : PARAMETERS) {
      Acclimation buds = acclimation(row);
      for (int run = 0; run < 50; run++) {
        double mildC = number(row, "hc_initial");
        double coldC = mildC;
        for (int day = 0; day < 100; day++) {
          double meanC = random.nextDouble(-25, 25);
          double colderK = Math.max(0, random.nextDouble(-5, 10));
          mildC = buds.next(mildC, meanC, false, true, 1);
          coldC = buds.next(coldC, meanC - colderK, false, true, 1);
          String where = "seed " + seed + ", " + row.get("genotype") + " run " + run;
          assertTrue(coldC <= mildC + 1e-12, where + " day " + day);
        }
      }
    }
  }

  @Test
  void hardnessRunsFromUnhardenedToFullyHard() {
    Acclimation roots = new Acclimation(-2, -10, new Phase(10, 0.1, 0.1), new Phase(5, 0, 0), 3);
    assertEquals(0, roots.hardness(-2));
    assertEquals(0.5, roots.hardness(-6));
    assertEquals(1, roots.hardness(-10));
    Acclimation tropical = new Acclimation(8, 8, roots.atRest(), roots.quiescent(), 3);
    assertEquals(1, tropical.hardness(8));
    assertEquals(8, tropical.next(8, -30, false, true, 1));
  }

  /** Daily mean of the check series, °C; day 0 is 7 September. */
  private static double meanC(int day) {
    return 9.5
        + 12 * Math.cos(2 * Math.PI * (day + 40) / 365)
        + 4 * Math.sin(2 * Math.PI * day / 9.7);
  }

  private static CSVRecord parameters(String genotype) {
    return PARAMETERS.stream()
        .filter(row -> row.get("genotype").equals(genotype))
        .findFirst()
        .orElseThrow();
  }

  private static Acclimation acclimation(CSVRecord row) {
    return new Acclimation(
        number(row, "hc_min"),
        number(row, "hc_max"),
        new Phase(
            number(row, "t_threshold_endo"),
            number(row, "k_acclim_endo"),
            number(row, "k_deacclim_endo")),
        new Phase(
            number(row, "t_threshold_eco"),
            number(row, "k_acclim_eco"),
            number(row, "k_deacclim_eco")),
        number(row, "theta"));
  }

  /** The paper's own rule for the end of rest and for bud break, around the kernel. */
  private static final class Buds {
    final double budBreakC;
    private final Acclimation kernel;
    private final double restEndsAt;
    private double chill;
    private double chillBelowTen;
    double limitC;
    boolean restComplete;

    Buds(String genotype) {
      CSVRecord row = parameters(genotype);
      kernel = acclimation(row);
      restEndsAt = number(row, "ecodormancy_boundary_dd10");
      limitC = number(row, "hc_initial");
      budBreakC = kernel.leastC() == -1.2 ? -2.2 : -6.4;
    }

    void day(double meanC) {
      limitC = kernel.next(limitC, meanC, restComplete, chill < 0, 1);
      Phase phase = restComplete ? kernel.quiescent() : kernel.atRest();
      chill += Math.min(0, meanC - phase.thresholdC());
      chillBelowTen += Math.min(0, meanC - 10);
      restComplete |= chillBelowTen <= restEndsAt;
    }
  }
}
