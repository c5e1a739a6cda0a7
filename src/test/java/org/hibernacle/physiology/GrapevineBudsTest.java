package org.hibernacle.physiology;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.hibernacle.physiology.Acclimation.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The kernel with the constants of Ferguson et al. 2014, Am. J. Enol. Vitic. 65:59-71, table 4,
 * against runs of an independent implementation of that paper's equation 1; see checks/SOURCES.md.
 */
class GrapevineBudsTest extends AcclimationContract {
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

  @Override
  List<Acclimation> sets() {
    return PARAMETERS.stream().map(GrapevineBudsTest::acclimation).toList();
  }

  /** Cabernet Sauvignon, by the same equation outside this program. */
  @Override
  List<OneDay> knownDays() {
    Acclimation buds = acclimation(parameters("Cabernet Sauvignon"));
    return List.of(
        new OneDay("autumn", buds, -10.27, 3, false, 1, -11.015363),
        new OneDay("warm at rest", buds, -20, 18, false, 1, -19.685882),
        new OneDay("warm afterwards", buds, -24, 10, true, 1, -23.5),
        new OneDay("spring", buds, -5, 15, true, 1, -4.298227),
        new OneDay("frost in spring", buds, -5, 0, true, 1, -5.420635),
        new OneDay("deep frost", buds, -24, -30, true, 1, -24.166667),
        new OneDay("nearly open", buds, -2, 20, true, 1, -1.682404));
  }

  @Override
  double toleranceK() {
    return 1e-5;
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
