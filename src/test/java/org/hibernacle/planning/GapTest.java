package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.junit.jupiter.api.Test;

/** The gap to the bound against counting stays: with little room, and with room for all. */
class GapTest {
  private static final double BED_M2 = 0.5;
  private static final int POTS_A_DAY = 2;

  @Test
  void theGapIsWhatSharingCosts() {
    Pots pots = Pots.of(CityGarden.scarceInventory(City.NEW_YORK, BED_M2, POTS_A_DAY));
    Wishes wishes = pots.wishes();
    Gap gap = Gap.between(wishes.founds(), new Together(wishes).settle());
    List<PlantPlan> shared =
        CityGarden.planOf(pots.inventory(), CityGarden.weather(City.NEW_YORK)).plants();
    int rows = 0;
    int lost = 0;
    int moves = 0;
    long nights = 0;
    for (int i = 0; i < shared.size(); i++) {
      if (shared.get(i).displaced().isEmpty()) {
        continue;
      }
      PlantPlanner.Found wish = wishes.founds().get(i);
      List<Stay> wished = wish.path().stays(pots.winters().season(), pots.inventory().places());
      String home = shared.get(i).plant().home();
      rows++;
      lost += lost(shared.get(i)) && wish.cost().brokenTicks() == 0 ? 1 : 0;
      moves += moves(shared.get(i).stays(), shared.get(i).shuttle());
      moves -= moves(wished, wish.shuttle());
      nights += nightsAway(shared.get(i).stays(), home) - nightsAway(wished, home);
    }
    assertTrue(rows >= 3, "rows that gave way: " + rows);
    assertEquals(new Gap(lost, moves, (int) nights, rows), gap);
  }

  @Test
  void roomForAllCostsNothing() {
    Wishes wishes = Pots.of(CityGarden.inventory(City.NEW_YORK)).wishes();
    assertEquals(new Gap(0, 0, 0, 0), Gap.between(wishes.founds(), new Together(wishes).settle()));
  }

  private static boolean lost(PlantPlan plan) {
    return plan.verdict() == Verdict.UNPROTECTED;
  }

  private static int moves(List<Stay> stays, Optional<Shuttle> shuttle) {
    return stays.size() - 1 + shuttle.map(Shuttle::mostInAWinter).orElse(0);
  }

  private static long nightsAway(List<Stay> stays, String home) {
    return stays.stream()
        .filter(s -> !s.place().name().equals(home))
        .mapToLong(s -> ChronoUnit.DAYS.between(s.fromInclusive(), s.toExclusive()))
        .sum();
  }
}
