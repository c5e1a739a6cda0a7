package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.hibernacle.planning.Remedy.Change;
import org.junit.jupiter.api.Test;

/** Invented gardens in which it is known what is missing; each remedy told is made by hand. */
class RemediesTest {
  private static final LocalDate FIRST = LocalDate.of(2019, 7, 1);
  private static final int YEARS = 4;
  private static final TemperatureSeries WEATHER = weather(-8, -8);

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

  /** Parts come in their order, and what is counted comes to its end and never goes beyond. */
  @Test
  void whoListensHearsHowFarItIs() {
    Inventory garden = garden(List.of("OLIVE-10", "LARCH-30"), "Bench");
    Map<Pace.Part, Integer> most = new LinkedHashMap<>();
    Pace pace =
        (part, done, of) -> {
          synchronized (most) {
            assertTrue(done >= 0 && (done <= of || of == 0), part + " " + done + " of " + of);
            most.merge(part, done, Math::max);
          }
        };
    SeasonPlanner.plan(
        new Question(garden, WEATHER, Map.of(), OptionalInt.empty(), Optional.empty(), pace));
    assertEquals(
        List.of(
            Pace.Part.WINTERS,
            Pace.Part.PLANTS,
            Pace.Part.SHARING,
            Pace.Part.REMEDIES,
            Pace.Part.REASONS),
        List.copyOf(most.keySet()));
    assertEquals(garden.plants().size(), most.get(Pace.Part.PLANTS));
    assertEquals(garden.plants().size(), most.get(Pace.Part.REASONS));
  }

  @Test
  void nobodyInNeedIsToldNothing() {
    SeasonPlan plan = planOf(garden(List.of("LARCH-30"), "Bench", "Mulched bed"));
    assertEquals(Help.NOT_NEEDED, plan.help());
  }

  /** One winter of four is colder than the hedge foot can make good for either. */
  @Test
  void noThinnerMulchAndNoSmallerRiskWouldDo() {
    TemperatureSeries weather = weather(2, -9);
    noLessWouldDo(
        garden(List.of("MAPLE-6"), "Bench", "Hedge foot"), weather, Change.ACCEPT_RISK, 3, 1);
    noLessWouldDo(
        garden(List.of("TRIDENT-5"), "Bench", "Hedge foot"), weather, Change.MULCH, 20, 10);
  }

  /** Four trees that go the same day, one to be carried a day. */
  @Test
  void noFewerPotsADayWouldDo() {
    Inventory four =
        garden(List.of("MAPLE-6", "TRIDENT-5", "JUNIPER-05", "JUNIPER-8"), "Bench", "Mulched bed");
    Inventory busy =
        new Inventory(
            four.plants(),
            four.places(),
            four.settings().withHands(OptionalInt.of(1), OptionalInt.empty()),
            List.of());
    noLessWouldDo(busy, WEATHER, Change.MORE_POTS_A_DAY, 4, 1);
  }

  private static void noLessWouldDo(
      Inventory garden, TemperatureSeries weather, Change change, double told, double step) {
    Remedy remedy =
        planOf(garden, weather).help().remedies().stream()
            .filter(r -> r.change() == change)
            .findFirst()
            .orElseThrow();
    assertEquals(told, remedy.amount());
    assertTrue(helpsAll(remedy, garden, weather), remedy::toString);
    double amount = told - step;
    Remedy less =
        new Remedy(
            change,
            amount,
            remedy.place().map(p -> p.withMulch(amount)),
            remedy.day(),
            remedy.protects(),
            remedy.eases());
    assertFalse(helpsAll(less, garden, weather), less::toString);
  }

  private static boolean helpsAll(Remedy remedy, Inventory garden, TemperatureSeries weather) {
    SeasonPlan then =
        SeasonPlanner.planOnly(remedy.applyTo(garden), weather, OptionalInt.empty()).orElseThrow();
    return remedy.protects().stream().allMatch(p -> verdict(then, p) != Verdict.UNPROTECTED)
        && remedy.eases().stream().allMatch(p -> isEased(then, p));
  }

  private static Verdict verdict(SeasonPlan plan, Plant plant) {
    return of(plan, plant).verdict();
  }

  private static boolean isEased(SeasonPlan plan, Plant plant) {
    return verdict(plan, plant) != Verdict.UNPROTECTED && of(plan, plant).displaced().isEmpty();
  }

  private static PlantPlan of(SeasonPlan plan, Plant plant) {
    return plan.plants().stream()
        .filter(p -> p.plant().id().equals(plant.id()))
        .findFirst()
        .orElseThrow();
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
    return planOf(inventory, WEATHER);
  }

  private static SeasonPlan planOf(Inventory inventory, TemperatureSeries weather) {
    return SeasonPlanner.plan(inventory, weather, OptionalInt.empty()).orElseThrow();
  }

  /**
   * Years between 20 °C in July and 1 °C in January.
   *
   * @param weekC mean of the first week of each January
   * @param in2021C of that in 2021
   */
  private static TemperatureSeries weather(double weekC, double in2021C) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (LocalDate day = FIRST; day.isBefore(FIRST.plusYears(YEARS)); day = day.plusDays(1)) {
      double mean = 10.5 - 9.5 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 17) / 365.25);
      boolean cold = day.getMonthValue() == 1 && day.getDayOfMonth() <= 7;
      double coldC = day.getYear() == 2021 ? in2021C : weekC;
      double meanC = cold ? coldC : mean;
      days.put(day, new DailyExtremes(meanC - 3, meanC + 3));
    }
    return new TemperatureSeries("invented", days, new TreeMap<>());
  }
}
