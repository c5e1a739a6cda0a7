package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.model.Group;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Light;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.oracle.JudgedPlan;
import org.hibernacle.oracle.Night;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Plans under measured weather, held against what growers do. Where a date or a temperature below
 * is common practice without a source, it says so. What plants meet is taken from the oracle and
 * not from the planner.
 */
class RealCityTest {
  private static final Set<Group> HARDY =
      EnumSet.of(Group.HARDY_CONIFER, Group.HARDY_DECIDUOUS, Group.HARDY_EVERGREEN);

  /** One date for all winters: none leaves after, and none comes before, any winter's own day. */
  @ParameterizedTest
  @EnumSource
  void eachDateIsSafeByEachWintersOwnDay(City city) {
    int spread = 0;
    for (PlantPlan plan : plansOf(city, p -> true)) {
      for (Move move : plan.moves()) {
        boolean back = move.kind().homeward();
        if (back && plan.shuttle().isPresent()) {
          continue;
        }
        LocalDate nearest = (back ? move.latest() : move.earliest()).orElse(move.date());
        boolean safe = back ? !move.date().isBefore(nearest) : !move.date().isAfter(nearest);
        assertTrue(safe, plan.plant().id() + " " + move);
        spread += move.earliest().equals(move.latest()) ? 0 : 1;
      }
    }
    assertTrue(spread >= 10, spread + " moves whose winters differ");
  }

  /** Early October, or nights of 5 °C: common practice, no source. */
  @ParameterizedTest
  @EnumSource
  void tropicalPlantsAreUnderABrightRoofBeforeItIsCold(City city) {
    List<PlantPlan> tropical = plansOf(city, p -> p.plant().species().group() == Group.TROPICAL);
    assertEquals(2, tropical.size());
    for (PlantPlan plan : tropical) {
      Stay stay = stayOn(plan, day(city, MonthDay.of(10, 10)));
      assertTrue(stay.place().roofed(), plan.plant().id() + " " + stay);
      assertEquals(Light.BRIGHT, stay.place().light(), plan.plant().id());
      nights(city, plan)
          .filter(night -> !night.place().roofed())
          .forEach(night -> assertTrue(night.lowestAirC() >= 5, plan.plant().id() + " " + night));
    }
  }

  /** A week above 5 °C wakes what should rest: common practice, no source. */
  @ParameterizedTest
  @EnumSource
  void noHardyPlantSpendsAWarmWeekUnderARoofAtRest(City city) {
    for (PlantPlan plan : plansOf(city, RealCityTest::isHardy)) {
      for (Season winter : JudgedPlan.of(city).winters()) {
        List<Night> nights = JudgedPlan.of(city).nights(plan, winter);
        for (int i = 6; i < nights.size(); i++) {
          List<Night> week = nights.subList(i - 6, i + 1);
          boolean underRoofAtRest =
              week.stream().allMatch(n -> n.place().roofed() && n.dormant() && n.atRest());
          double meanC = week.stream().mapToDouble(Night::meanAirC).average().orElseThrow();
          assertFalse(underRoofAtRest && meanC > 5.2, plan.plant().id() + " " + nights.get(i));
        }
      }
    }
  }

  /** Large larches and pines winter outdoors: common practice, no source. */
  @ParameterizedTest
  @EnumSource
  void largeLarchesAndPinesNeverGoUnderARoof(City city) {
    List<PlantPlan> large =
        plansOf(city, p -> Set.of("LARCH-30", "PINE-30", "MUGO-30").contains(p.plant().id()));
    assertEquals(3, large.size());
    for (PlantPlan plan : large) {
      assertTrue(plan.stays().stream().noneMatch(s -> s.place().roofed()), plan.plant().id());
      assertTrue(plan.verdict() != PlantPlan.Verdict.UNPROTECTED, plan.plant().id());
    }
  }

  /** The station read -16.0 °C on the morning of 4 January 2014 (noaa/weather.csv). */
  @Test
  void whatCanNotStandItIsOffTheBenchInTheColdestNightOfNewYork() {
    LocalDate evening = day(City.NEW_YORK, MonthDay.of(1, 3));
    for (String id : List.of("MAPLE-6", "YEW-8", "YEW-JP-8", "AZALEA-5", "OLIVE-10")) {
      PlaceKind kind = stayOn(plan(City.NEW_YORK, id), evening).place().kind();
      assertTrue(kind != PlaceKind.BENCH, id);
    }
  }

  /** Two nights of -3 °C do not freeze a ball of 5 L through: common practice, no source. */
  @ParameterizedTest
  @EnumSource
  void twoFrostyNightsAtTheBenchInMidOctoberMoveNoHardyConifer(City city) {
    assertMidOctoberFrostMovesNoHardyConifer(city, 0);
  }

  /**
   * The same where the station reads -3 °C, so that the bench has -4.5: common practice, no source.
   */
  @ParameterizedTest
  @EnumSource
  void twoFrostyNightsAtTheStationInMidOctoberMoveNoHardyConifer(City city) {
    assertMidOctoberFrostMovesNoHardyConifer(city, 1.5);
  }

  private static void assertMidOctoberFrostMovesNoHardyConifer(City city, double siteColderByK) {
    TemperatureSeries frosty =
        CityGarden.withMinima(
            CityGarden.weather(city),
            day -> isMidOctober(day.getKey()) ? -3 : day.getValue().minC());
    Set<String> ids = Set.of("LARCH-30", "PINE-30", "MUGO-30", "JUNIPER-8");
    Inventory inventory = only(CityGarden.inventory(city, siteColderByK), ids);
    Map<String, PlantPlan> unedited = byId(CityGarden.planOf(inventory, CityGarden.weather(city)));
    assertEquals(ids, unedited.keySet());
    for (PlantPlan plan : CityGarden.planOf(inventory, frosty).plants()) {
      String id = plan.plant().id();
      LocalDate first = firstMove(plan);
      assertFalse(first.isBefore(day(city, MonthDay.of(11, 1))), id + " " + plan.moves());
      LocalDate without = firstMove(Objects.requireNonNull(unedited.get(id)));
      assertFalse(first.isBefore(without), id + " " + first + " " + without);
    }
  }

  /** Hardy plants stay on the bench to about -5 °C: common practice, no source. */
  @ParameterizedTest
  @EnumSource
  void hardyPlantsStayOnTheBenchWhereWintersAreMild(City city) {
    TemperatureSeries mild =
        CityGarden.withMinima(CityGarden.weather(city), day -> Math.max(-4, day.getValue().minC()));
    Set<String> ids =
        plansOf(city, p -> isHardy(p) && p.plant().container().volumeL() >= 5).stream()
            .filter(p -> p.plant().rootSpecies().rootLimitC() <= -9)
            .map(p -> p.plant().id())
            .collect(Collectors.toSet());
    assertEquals(6, ids.size());
    for (PlantPlan plan : CityGarden.planOf(only(CityGarden.inventory(city), ids), mild).plants()) {
      assertEquals(PlantPlan.Verdict.STAYS_HOME, plan.verdict(), plan.plant().id() + plan.moves());
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyPlanCanBeCarriedOut(City city) {
    SeasonPlan season = CityGarden.plan(city);
    for (PlantPlan plan : season.plants()) {
      String id = plan.plant().id();
      assertTrue(plan.moves().size() <= 4, id);
      assertEquals(plan.moves().size() + 1, plan.stays().size(), id);
      assertEquals(season.season().start(), plan.stays().get(0).fromInclusive(), id);
      assertEquals(plan.plant().home(), plan.stays().get(0).place().name(), id);
      for (int i = 0; i < plan.moves().size(); i++) {
        Move move = plan.moves().get(i);
        Stay before = plan.stays().get(i);
        Stay after = plan.stays().get(i + 1);
        assertTrue(season.inventory().settings().isMovingDay(move.date()), id + " " + move.date());
        assertEquals(move.date(), before.toExclusive(), id);
        assertEquals(move.date(), after.fromInclusive(), id);
        assertEquals(move.from(), before.place(), id);
        assertEquals(move.to(), after.place(), id);
        if (i > 0) {
          LocalDate previous = plan.moves().get(i - 1).date();
          assertFalse(move.date().isBefore(previous.plusDays(14)), id + " " + move.date());
        }
      }
      Stay last = plan.stays().get(plan.stays().size() - 1);
      assertEquals(season.season().endExclusive(), last.toExclusive(), id);
      assertEquals(plan.plant().home(), last.place().name(), id);
    }
  }

  /**
   * A move without a reason must come on the first day it may: for a return the first moving day
   * from 29 January on, else the first one a fortnight after the move before.
   */
  @ParameterizedTest
  @EnumSource
  void everyMoveHasAReasonOrComesAsEarlyAsItMay(City city) {
    for (PlantPlan plan : CityGarden.plan(city).plants()) {
      for (int i = 0; i < plan.moves().size(); i++) {
        Move move = plan.moves().get(i);
        if (move.because().isPresent()) {
          continue;
        }
        assertTrue(i > 0, plan.plant().id() + " leaves home without a reason");
        LocalDate free = plan.moves().get(i - 1).date().plusDays(14);
        LocalDate late = day(city, MonthDay.of(1, 29));
        LocalDate from = move.kind() == Move.Kind.RETURN && late.isAfter(free) ? late : free;
        assertEquals(nextMovingDay(city, from), move.date(), plan.plant().id());
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void theOrderOfPlantsDoesNotMatter(City city) {
    Inventory inventory = CityGarden.inventory(city);
    List<Plant> reversed = new ArrayList<>(inventory.plants());
    Collections.reverse(reversed);
    SeasonPlan other =
        CityGarden.planOf(
            new Inventory(reversed, inventory.places(), inventory.settings(), inventory.sheets()),
            CityGarden.weather(city));
    assertEquals(byId(CityGarden.plan(city)), byId(other));
  }

  @Test
  void planningTwiceGivesTheSamePlan() {
    City city = City.SEATTLE;
    SeasonPlan again = CityGarden.planOf(CityGarden.inventory(city), CityGarden.weather(city));
    assertEquals(CityGarden.plan(city), again);
  }

  private static boolean isHardy(PlantPlan plan) {
    return HARDY.contains(plan.plant().species().group());
  }

  private static boolean isMidOctober(LocalDate day) {
    return MonthDay.from(day).equals(MonthDay.of(10, 14))
        || MonthDay.from(day).equals(MonthDay.of(10, 15));
  }

  private static Inventory only(Inventory all, Set<String> ids) {
    return new Inventory(
        all.plants().stream().filter(p -> ids.contains(p.id())).toList(),
        all.places(),
        all.settings(),
        all.sheets());
  }

  private static List<PlantPlan> plansOf(City city, Predicate<PlantPlan> which) {
    return CityGarden.plan(city).plants().stream().filter(which).toList();
  }

  private static PlantPlan plan(City city, String id) {
    return plansOf(city, p -> p.plant().id().equals(id)).get(0);
  }

  private static Map<String, PlantPlan> byId(SeasonPlan plan) {
    return plan.plants().stream().collect(Collectors.toMap(p -> p.plant().id(), p -> p));
  }

  private static LocalDate day(City city, MonthDay day) {
    Season season = CityGarden.plan(city).season();
    return season.sameDay(day.atYear(2000));
  }

  private static LocalDate nextMovingDay(City city, LocalDate from) {
    return Stream.iterate(from, d -> d.plusDays(1))
        .filter(CityGarden.plan(city).inventory().settings()::isMovingDay)
        .findFirst()
        .orElseThrow();
  }

  private static LocalDate firstMove(PlantPlan plan) {
    return plan.moves().isEmpty() ? LocalDate.MAX : plan.moves().get(0).date();
  }

  private static Stay stayOn(PlantPlan plan, LocalDate day) {
    Optional<Stay> stay =
        plan.stays().stream()
            .filter(s -> !day.isBefore(s.fromInclusive()) && day.isBefore(s.toExclusive()))
            .findFirst();
    return stay.orElseThrow();
  }

  private static Stream<Night> nights(City city, PlantPlan plan) {
    JudgedPlan judged = JudgedPlan.of(city);
    return judged.winters().stream().flatMap(winter -> judged.nights(plan, winter).stream());
  }
}
