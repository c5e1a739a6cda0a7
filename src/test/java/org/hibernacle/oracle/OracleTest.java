package org.hibernacle.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Season;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Stay;
import org.hibernacle.planning.Violation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Holds plans against a second simulation that shares only the pages in {@code docs} with them. */
class OracleTest {
  @ParameterizedTest
  @EnumSource
  void confirmsThePlan(City city) {
    JudgedPlan garden = JudgedPlan.of(city);
    garden.plan().plants().forEach(plant -> confirm(garden, plant));
  }

  /**
   * Buds that broke under a roof, even on the last night there, meet no frost they can not stand.
   */
  @ParameterizedTest
  @EnumSource
  void growthMadeUnderARoofMeetsNoFrost(City city) {
    JudgedPlan garden = JudgedPlan.of(city);
    for (PlantPlan plant : garden.plan().plants()) {
      for (Season winter : garden.winters()) {
        List<Night> nights = garden.nights(plant, winter);
        List<Finding> frosts =
            Agreement.beyondRounding(garden.broken(plant, winter, nights)).stream()
                .filter(f -> f.rule() == Rule.WOKEN_GROWTH)
                .toList();
        assertEquals(List.of(), frosts, () -> plant.plant().id() + " in " + winter);
      }
    }
  }

  /**
   * A plant is given up only if no single stay would do: here one as in its plan, but up to four
   * weeks earlier or later at either end, and well inside its margins.
   */
  @Test
  void noOtherDatesWouldProtectWhatIsGivenUp() {
    JudgedPlan poor = JudgedPlan.ofPoorGarden(City.SEATTLE);
    for (PlantPlan plant : poor.plan().unprotected().toList()) {
      if (plant.moves().size() != 2) {
        continue;
      }
      Move away = plant.moves().get(0);
      Move back = plant.moves().get(1);
      for (int out = -4; out <= 4; out++) {
        for (int home = 0; home <= 4; home++) {
          LocalDate from = away.date().plusWeeks(out);
          LocalDate to = back.date().plusWeeks(home);
          List<Stay> other =
              poor.stays(plant, (d, p) -> between(d, from, to) ? away.to() : away.from());
          assertFalse(
              poor.winters().stream().allMatch(winter -> keepsAll(poor, plant, other, winter)),
              () -> plant.plant().id() + " would be safe from " + from + " to " + to);
        }
      }
    }
  }

  private static boolean keepsAll(
      JudgedPlan garden, PlantPlan plant, List<Stay> stays, Season winter) {
    return garden
        .oracle()
        .brokenWithMore(
            Agreement.LIMIT_K, plant.plant(), winter, garden.nights(plant, stays, winter))
        .isEmpty();
  }

  @Test
  void confirmsTheDemo() {
    JudgedPlan demo = JudgedPlan.ofTheDemo();
    assertEquals(12, demo.plan().plants().size());
    demo.plan().plants().parallelStream().forEach(plant -> confirm(demo, plant));
  }

  /** Snow is in no file of the two cities, so it is invented here. */
  @Test
  void confirmsAPlanUnderSnow() {
    JudgedPlan garden = JudgedPlan.ofAGardenInSnow(City.NEW_YORK);
    garden.plan().plants().forEach(plant -> confirm(garden, plant));
  }

  /** With hardly anywhere to go most rules break somewhere, and each has to be seen. */
  @ParameterizedTest
  @EnumSource
  void findsWhatThePlanCanNotKeep(City city) {
    JudgedPlan poor = JudgedPlan.ofPoorGarden(city);
    assertTrue(poor.plan().unprotected().count() >= 4, "nothing to find");
    poor.plan().plants().forEach(plant -> confirm(poor, plant));
  }

  @ParameterizedTest
  @EnumSource
  void seesWhatWouldHappenAtHome(City city) {
    JudgedPlan garden = JudgedPlan.of(city);
    for (PlantPlan plant : garden.plan().plants()) {
      List<Stay> home = garden.stays(plant, (day, place) -> garden.place(plant.plant().home()));
      plant.withoutMoves().ifPresent(told -> assertSeen(garden, plant, home, told));
      if (plant.withoutMoves().isEmpty()) {
        assertEquals(Verdict.STAYS_HOME, plant.verdict(), plant.plant().id());
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void seesWhyPlantsAreTakenAwayAndNotBroughtBackEarlier(City city) {
    JudgedPlan garden = JudgedPlan.of(city);
    int seen = 0;
    for (PlantPlan plant : garden.plan().plants()) {
      for (int i = 0; i < plant.moves().size(); i++) {
        Optional<Violation> told = plant.moves().get(i).because();
        if (told.isPresent()) {
          assertTrue(
              otherDates(garden, plant, i).stream()
                  .anyMatch(s -> seen(garden, plant, s, told.get())),
              plant.plant().id() + ": " + told.get());
          seen++;
        }
      }
    }
    assertTrue(seen >= 15, "reasons seen: " + seen);
  }

  @ParameterizedTest
  @EnumSource
  void meetsTheSameTightestNight(City city) {
    JudgedPlan garden = JudgedPlan.of(city);
    for (PlantPlan plant : garden.plan().plants()) {
      PlantPlan.Tightest told = plant.tightest();
      List<Night> nights = garden.nights(plant, told.winter());
      double leastK =
          nights.stream()
              .filter(n -> HardRules.judges(told.winter(), n.day()))
              .mapToDouble(n -> n.lowestEdgeC() - n.rootLimitC())
              .min()
              .orElseThrow();
      double mostK = Agreement.BALL_K + Agreement.LIMIT_K;
      assertEquals(told.marginK(), leastK, mostK, plant.plant().id());
    }
  }

  /**
   * No rule may be broken by more than rounding explains, but those that the plan tells of. Growth
   * woken under a roof hangs on a single date and has a test of its own.
   */
  private static void confirm(JudgedPlan garden, PlantPlan plant) {
    for (Season winter : garden.winters()) {
      List<Night> nights = garden.nights(plant, winter);
      List<Finding> findings = garden.broken(plant, winter, nights);
      Set<Rule> told = EnumSet.noneOf(Rule.class);
      for (Violation violation : plant.broken()) {
        if (violation.winter().equals(winter)) {
          told.add(violation.rule());
          assertTrue(
              Agreement.sees(violation, nights, findings),
              () -> plant.plant().id() + " is told to break, but does not: " + violation);
        }
      }
      List<Finding> untold =
          Agreement.beyondRounding(findings).stream()
              .filter(f -> f.rule() != Rule.WOKEN_GROWTH && !told.contains(f.rule()))
              .toList();
      assertEquals(List.of(), untold, () -> plant.plant().id() + " in " + winter);
    }
  }

  private static void assertSeen(
      JudgedPlan garden, PlantPlan plant, List<Stay> stays, Violation told) {
    assertTrue(seen(garden, plant, stays, told), () -> plant.plant().id() + ": " + told);
  }

  private static boolean seen(
      JudgedPlan garden, PlantPlan plant, List<Stay> stays, Violation told) {
    List<Night> nights = garden.nights(plant, stays, told.winter());
    return Agreement.sees(told, nights, garden.broken(plant, told.winter(), nights));
  }

  /**
   * What the reason of a move speaks of: going away, the plant stays until its next move; coming
   * back, it comes on one of the six moving days before.
   */
  private static List<List<Stay>> otherDates(JudgedPlan garden, PlantPlan plant, int index) {
    Move move = plant.moves().get(index);
    List<List<Stay>> others = new ArrayList<>();
    if (move.kind() == Move.Kind.MOVE_DOWN || move.kind() == Move.Kind.MOVE_IN) {
      LocalDate next = plant.stays().get(index + 1).toExclusive();
      others.add(garden.stays(plant, (d, p) -> between(d, move.date(), next) ? move.from() : p));
    } else {
      LocalDate arrived = plant.stays().get(index).fromInclusive();
      LocalDate earlier = move.date();
      while (others.size() < 6 && earlier.isAfter(arrived.plusDays(1))) {
        earlier = earlier.minusDays(1);
        LocalDate from = earlier;
        if (garden.plan().inventory().settings().isMovingDay(from)) {
          others.add(garden.stays(plant, (d, p) -> between(d, from, move.date()) ? move.to() : p));
        }
      }
    }
    return others;
  }

  private static boolean between(LocalDate day, LocalDate from, LocalDate toExclusive) {
    return !day.isBefore(from) && day.isBefore(toExclusive);
  }
}
