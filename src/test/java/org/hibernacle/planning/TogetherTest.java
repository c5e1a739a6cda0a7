package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.junit.jupiter.api.Test;

/** New York's winters in a garden with too little room and too few hands, counted anew. */
class TogetherTest {
  private static final double BED_M2 = 0.30;
  private static final int POTS_A_DAY = 4;
  private static final Inventory SCARCE =
      CityGarden.scarceInventory(City.NEW_YORK, BED_M2, POTS_A_DAY);
  private static final SeasonPlan PLAN =
      CityGarden.planOf(SCARCE, CityGarden.weather(City.NEW_YORK));

  @Test
  void nobodyStandsWhereThereIsNoRoom() {
    LocalDate day = PLAN.season().start();
    double fullest = 0;
    for (; day.isBefore(PLAN.season().endExclusive()); day = day.plusDays(1)) {
      fullest = Math.max(fullest, inBedM2(day));
    }
    assertTrue(fullest <= BED_M2 + 1e-9, "fullest " + fullest);
    assertTrue(fullest > BED_M2 / 2, "the bed is used: " + fullest);
  }

  @Test
  void noDayHasMoreWorkThanTheKeeperWants() {
    Map<LocalDate, Integer> pots = new TreeMap<>();
    PLAN.movesByDate()
        .forEach(m -> pots.merge(m.move().date(), m.plan().plant().count(), Integer::sum));
    assertTrue(Collections.max(pots.values()) <= POTS_A_DAY, pots.toString());
    Map<LocalDate, Integer> unlimited = new TreeMap<>();
    CityGarden.plan(City.NEW_YORK)
        .movesByDate()
        .forEach(m -> unlimited.merge(m.move().date(), 1, Integer::sum));
    assertTrue(Collections.max(unlimited.values()) > POTS_A_DAY, "nothing to share out");
  }

  /** Whoever gave way would not have fitted on the day that is named. */
  @Test
  void theReasonForGivingWayHolds() {
    int room = 0;
    int hands = 0;
    for (PlantPlan plan : PLAN.plants()) {
      Optional<Displaced> displaced = plan.displaced();
      if (displaced.isEmpty()) {
        continue;
      }
      LocalDate day = displaced.get().day();
      if (displaced.get().kind() == Displaced.Kind.ROOM) {
        assertEquals("Mulched bed", displaced.get().place().name(), plan.plant().id());
        boolean inBed = placeOn(plan, day).equals("Mulched bed");
        double others = inBedM2(day) - (inBed ? plan.plant().floorM2() : 0);
        assertTrue(others + plan.plant().floorM2() > BED_M2, plan.plant().id() + " on " + day);
        room++;
      } else {
        long carried =
            PLAN.movesByDate().stream()
                .filter(m -> m.move().date().equals(day) && m.plan() != plan)
                .count();
        assertEquals(POTS_A_DAY, carried, plan.plant().id() + " on " + day);
        hands++;
      }
    }
    assertTrue(room >= 2 && hands >= 1, room + " for room, " + hands + " for hands");
  }

  /** A row of its own day: plans of those who keep their wish are those of a garden with room. */
  @Test
  void whoDoesNotGiveWayDoesAsInAGardenWithRoom() {
    SeasonPlan roomy = CityGarden.plan(City.NEW_YORK);
    for (int i = 0; i < PLAN.plants().size(); i++) {
      PlantPlan plan = PLAN.plants().get(i);
      if (plan.displaced().isEmpty()) {
        assertEquals(told(roomy.plants().get(i)), told(plan), plan.plant().id());
      } else {
        assertFalse(told(roomy.plants().get(i)).equals(told(plan)), plan.plant().id());
      }
    }
  }

  private static List<String> told(PlantPlan plan) {
    return plan.moves().stream().map(m -> m.kind() + " " + m.date() + " " + m.to().name()).toList();
  }

  @Test
  void theOrderOfRowsDoesNotMatter() {
    List<org.hibernacle.model.Plant> turned = new ArrayList<>(SCARCE.plants());
    Collections.reverse(turned);
    SeasonPlan other =
        CityGarden.planOf(
            new Inventory(turned, SCARCE.places(), SCARCE.settings(), List.of()),
            CityGarden.weather(City.NEW_YORK));
    Map<String, List<Stay>> stays = new TreeMap<>();
    other.plants().forEach(p -> stays.put(p.plant().id(), p.stays()));
    PLAN.plants().forEach(p -> assertEquals(stays.get(p.plant().id()), p.stays(), p.plant().id()));
  }

  /** Little hands alone lose nobody: moves spread over more weekends. */
  @Test
  void fewHandsAloneLoseNobody() {
    SeasonPlan plan =
        CityGarden.planOf(
            CityGarden.scarceInventory(City.NEW_YORK, 10, POTS_A_DAY),
            CityGarden.weather(City.NEW_YORK));
    long lost = plan.plants().stream().filter(p -> p.verdict() == Verdict.UNPROTECTED).count();
    long lostAnyway = CityGarden.plan(City.NEW_YORK).unprotected().count();
    assertEquals(lostAnyway, lost);
  }

  private static double inBedM2(LocalDate day) {
    return PLAN.plants().stream()
        .filter(p -> placeOn(p, day).equals("Mulched bed"))
        .mapToDouble(p -> p.plant().floorM2())
        .sum();
  }

  private static String placeOn(PlantPlan plan, LocalDate day) {
    return plan.stays().stream()
        .filter(s -> !day.isBefore(s.fromInclusive()) && day.isBefore(s.toExclusive()))
        .findFirst()
        .orElseThrow()
        .place()
        .name();
  }

  /** Two alike wish for the same; only what is theirs alone tells them apart. */
  @Test
  void whatIsAlikePlansAlikeUnderItsOwnName() {
    Inventory garden = CityGarden.inventory(City.SEATTLE);
    Plant one = garden.plants().get(5);
    Plant twin = LargeGardens.renamed(one, "TWIN");
    List<PlantPlan> both =
        CityGarden.planOf(
                new Inventory(
                    List.of(one, twin), garden.places(), garden.settings(), garden.sheets()),
                CityGarden.weather(City.SEATTLE))
            .plants();
    assertEquals(one.id(), both.get(0).plant().id());
    assertEquals("TWIN", both.get(1).plant().id());
    assertEquals(both.get(0).stays(), both.get(1).stays());
    assertEquals(both.get(0).moves(), both.get(1).moves());
  }
}
