package org.hibernacle.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hibernacle.model.Season;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Rule;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What a keeper gets for two seasons of risk in ten, counted by the oracle over the demo's ten
 * winters: fewer nights away, a margin broken in two winters at most, a limit in none.
 */
class AcceptedRiskTest {
  private static final int RISK_OF_TEN = 2;
  private static final JudgedPlan STRICT = JudgedPlan.ofTheDemo();
  private static final JudgedPlan DARING = JudgedPlan.ofTheDemo(RISK_OF_TEN);

  @BeforeAll
  static void tenWinters() {
    assertEquals(10, DARING.winters().size());
  }

  @Test
  void noMoreWintersFailThanAreAccepted() {
    long daringPlants = 0;
    for (PlantPlan plant : DARING.plan().plants()) {
      long failing = DARING.winters().stream().filter(w -> marginBreaks(DARING, plant, w)).count();
      long allowed = plant.plant().priority() >= 4 ? 0 : RISK_OF_TEN;
      assertTrue(failing <= allowed, plant.plant().id() + " fails in " + failing);
      long told = plant.broken().stream().map(v -> v.winter()).distinct().count();
      assertTrue(told <= allowed && failing <= told, plant.plant().id() + " tells of " + told);
      daringPlants += told > 0 ? 1 : 0;
    }
    assertTrue(daringPlants >= 3, "plants that use the risk: " + daringPlants);
  }

  @Test
  void noLimitIsBrokenInAnyWinter() {
    for (PlantPlan plant : DARING.plan().plants()) {
      assertTrue(plant.verdict() != Verdict.UNPROTECTED, plant.plant().id());
      for (Season winter : DARING.winters()) {
        List<Night> nights = DARING.nights(plant, winter);
        List<Finding> below =
            Agreement.beyondRounding(
                DARING.oracle().brokenLimits(plant.plant(), winter, nights).stream()
                    .filter(f -> f.rule() != Rule.WOKEN_GROWTH)
                    .toList());
        assertEquals(List.of(), below, plant.plant().id() + " in " + winter);
      }
    }
  }

  @Test
  void riskBuysFewerMovesOrFewerNightsAway() {
    long gained = 0;
    for (int i = 0; i < DARING.plan().plants().size(); i++) {
      PlantPlan careful = STRICT.plan().plants().get(i);
      PlantPlan bold = DARING.plan().plants().get(i);
      String id = bold.plant().id();
      assertTrue(bold.moves().size() <= careful.moves().size(), id);
      if (bold.plant().priority() >= 4) {
        assertEquals(careful.stays(), bold.stays(), id);
      } else if (bold.moves().size() < careful.moves().size()) {
        gained++;
      } else {
        gained += nightsAway(bold) < nightsAway(careful) ? 1 : 0;
      }
    }
    assertTrue(gained >= 3, "plants that gain: " + gained);
  }

  private static long nightsAway(PlantPlan plant) {
    return plant.stays().stream()
        .filter(s -> !s.place().name().equals(plant.plant().home()))
        .mapToLong(s -> ChronoUnit.DAYS.between(s.fromInclusive(), s.toExclusive()))
        .sum();
  }

  private static boolean marginBreaks(JudgedPlan garden, PlantPlan plant, Season winter) {
    List<Night> nights = garden.nights(plant, winter);
    List<Finding> broken =
        garden.broken(plant, winter, nights).stream()
            .filter(f -> f.rule() != Rule.WOKEN_GROWTH)
            .toList();
    return !Agreement.beyondRounding(broken).isEmpty();
  }
}
