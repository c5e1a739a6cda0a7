package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Settings;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan.Verdict;
import org.junit.jupiter.api.Test;

/** Invented gardens in which it is known what is missing; each remedy told is made by hand. */
class RemediesTest {
  private static final LocalDate FIRST = LocalDate.of(2019, 7, 1);
  private static final int YEARS = 4;
  private static final TemperatureSeries WEATHER = weather();

  /** The olive cannot go to the glasshouse while nobody is there; one day would do. */
  @Test
  void aDayIsCheaperThanAHouse() {
    Inventory garden = garden(List.of("OLIVE-10"), "Bench", "Glasshouse");
    Inventory away =
        with(garden, garden.settings(), new DateSpan(day(2023, 7, 2), day(2024, 1, 31)));
    SeasonPlan plan = planOf(away);
    assertEquals(1, plan.unprotected().count());
    Remedy cheapest = plan.help().remedies().get(0);
    assertEquals(Remedy.Change.EXTRA_MOVING_DAY, cheapest.change());
    eachIsTrue(plan);
  }

  /** Two olives, room for one under glass. */
  @Test
  void roomForTheSecondIsToldToATenth() {
    Inventory one = garden(List.of("OLIVE-10"), "Bench", "Glasshouse");
    Plant olive = one.plants().get(0);
    List<Plant> olives = List.of(olive, LargeGardens.renamed(olive, "OLIVE-B"));
    Inventory two = new Inventory(olives, one.places(), one.settings(), List.of());
    Place glass = two.place("Glasshouse");
    double each = two.plants().get(0).floorM2();
    Inventory tight =
        new Inventory(
            two.plants(),
            List.of(two.place("Bench"), glass.withFloor(OptionalDouble.of(each))),
            two.settings(),
            List.of());
    SeasonPlan plan = planOf(tight);
    assertEquals(1, plan.unprotected().count());
    Remedy room =
        plan.help().remedies().stream()
            .filter(r -> r.change() == Remedy.Change.MORE_ROOM)
            .findFirst()
            .orElseThrow();
    double missingM2 = two.plants().stream().mapToDouble(p -> p.floorM2()).sum() - each;
    assertTrue(room.amount() >= missingM2 - 1e-9, "missing " + missingM2);
    assertTrue(room.amount() < missingM2 + 0.1, "told " + room.amount());
    eachIsTrue(plan);
  }

  @Test
  void nobodyInNeedIsToldNothing() {
    SeasonPlan plan = planOf(garden(List.of("LARCH-30"), "Bench", "Mulched bed"));
    assertEquals(Help.NOT_NEEDED, plan.help());
  }

  private static void eachIsTrue(SeasonPlan plan) {
    assertFalse(plan.help().remedies().isEmpty());
    assertTrue(plan.help().remedies().size() <= Help.MOST_REMEDIES);
    TreeSet<String> lost = new TreeSet<>();
    plan.unprotected().forEach(p -> lost.add(p.plant().id()));
    for (Remedy remedy : plan.help().remedies()) {
      SeasonPlan then = planOf(remedy.applyTo(plan.inventory()));
      TreeSet<String> told = new TreeSet<>(lost);
      remedy.protects().forEach(p -> assertTrue(told.remove(p.id()), p.id()));
      TreeSet<String> lostThen = new TreeSet<>();
      then.plants().stream()
          .filter(p -> p.verdict() == Verdict.UNPROTECTED)
          .forEach(p -> lostThen.add(p.plant().id()));
      assertEquals(told, lostThen, remedy.toString());
    }
  }

  private static Inventory garden(List<String> plants, String... places) {
    Inventory all = CityGarden.inventory(City.NEW_YORK);
    List<String> there = List.of(places);
    return new Inventory(
        all.plants().stream().filter(p -> plants.contains(p.id())).toList(),
        all.places().stream().filter(p -> there.contains(p.name())).toList(),
        all.settings(),
        List.of());
  }

  private static Inventory with(Inventory garden, Settings s, DateSpan away) {
    Settings settings =
        new Settings(
            s.site(),
            s.siteColderByK(),
            s.latitudeDeg(),
            s.longitudeDeg(),
            s.zone(),
            s.units(),
            s.safetyMarginK(),
            s.acceptedRiskOfTen(),
            s.movingDays(),
            List.of(away),
            s.plantsPerMovingDay(),
            s.minutesPerMovingDay(),
            s.paper(),
            s.firstDayOfWeek(),
            s.language());
    return new Inventory(garden.plants(), garden.places(), settings, List.of());
  }

  private static LocalDate day(int year, int month, int day) {
    return LocalDate.of(year, month, day);
  }

  private static SeasonPlan planOf(Inventory inventory) {
    return SeasonPlanner.plan(inventory, WEATHER, OptionalInt.empty()).orElseThrow();
  }

  /** Years between 20 °C in July and 1 °C in January, with a week of -8 °C in January. */
  private static TemperatureSeries weather() {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (LocalDate day = FIRST; day.isBefore(FIRST.plusYears(YEARS)); day = day.plusDays(1)) {
      double mean = 10.5 - 9.5 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 17) / 365.25);
      boolean cold = day.getMonthValue() == 1 && day.getDayOfMonth() <= 7;
      double meanC = cold ? -8 : mean;
      days.put(day, new DailyExtremes(meanC - 3, meanC + 3));
    }
    return new TemperatureSeries("invented", days, new TreeMap<>());
  }
}
