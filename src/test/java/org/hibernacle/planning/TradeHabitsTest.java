package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/** What growers hold to be true of potted trees in winter; common practice, no source. */
class TradeHabitsTest {
  private static final LocalDate FIRST = LocalDate.of(2019, 7, 1);

  /** Enough winters on file for the plain safety margin. */
  private static final int YEARS = 4;

  private static final LocalDate WEEK = LocalDate.of(2020, 1, 12);

  @Test
  void aMapleStandsAWeekOfFiveBelowOnTheBench() {
    PlantPlan maple = plan("MAPLE-6", day -> inTheWeek(day) ? -2 : mild(day), 3);
    assertEquals(PlantPlan.Verdict.STAYS_HOME, maple.verdict(), "nights of -5 °C");
  }

  @Test
  void belowTenDegreesOfFrostBareGroundIsNotEnoughForIt() {
    PlantPlan maple = plan("MAPLE-6", day -> inTheWeek(day) ? -11 : mild(day), 3);
    assertEquals(PlantPlan.Verdict.MOVES, maple.verdict());
    assertEquals("Mulched bed", placeOn(maple, sameDay(WEEK.plusDays(5))));
  }

  @Test
  void anEvergreensBallFrozenForThreeToFourWeeksIsThawedAndWatered() {
    SeasonPlan plan = seasonPlan("PINE-30", day -> inWeeks(day, 5) ? -5 : mild(day), 1.5);
    Task thaw =
        plan.tasks().stream().filter(t -> t.kind() == Task.Kind.THAW_OUT).findFirst().orElseThrow();
    assertEquals(List.of("PINE-30"), thaw.plantIds());
    assertTrue(thaw.from().isAfter(sameDay(WEEK.plusDays(20))), thaw.toString());
    assertTrue(thaw.from().isBefore(sameDay(WEEK.plusDays(32))), thaw.toString());

    SeasonPlan shorter = seasonPlan("PINE-30", day -> inWeeks(day, 2) ? -5 : mild(day), 1.5);
    assertTrue(shorter.tasks().stream().noneMatch(t -> t.kind() == Task.Kind.THAW_OUT));
    SeasonPlan bare = seasonPlan("LARCH-30", day -> inWeeks(day, 5) ? -5 : mild(day), 1.5);
    assertTrue(bare.tasks().stream().noneMatch(t -> t.kind() == Task.Kind.THAW_OUT));
  }

  private static boolean inTheWeek(LocalDate day) {
    return inWeeks(day, 1);
  }

  private static boolean inWeeks(LocalDate day, int weeks) {
    return !day.isBefore(WEEK) && day.isBefore(WEEK.plusWeeks(weeks));
  }

  /** A year between 20 °C in July and 3 °C in January. */
  private static double mild(LocalDate day) {
    return 11.5 - 8.5 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 17) / 365.25);
  }

  private static PlantPlan plan(String id, ToDoubleFunction<LocalDate> meanC, double halfRangeK) {
    return seasonPlan(id, meanC, halfRangeK).plants().get(0);
  }

  private static SeasonPlan seasonPlan(
      String id, ToDoubleFunction<LocalDate> meanC, double halfRangeK) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (LocalDate day = FIRST; day.isBefore(FIRST.plusYears(YEARS)); day = day.plusDays(1)) {
      double mean = meanC.applyAsDouble(day);
      days.put(day, new DailyExtremes(mean - halfRangeK, mean + halfRangeK));
    }
    Inventory all = CityGarden.inventory(City.NEW_YORK);
    Inventory one =
        new Inventory(
            all.plants().stream().filter(p -> p.id().equals(id)).toList(),
            all.places(),
            all.settings(),
            List.of());
    return CityGarden.planOf(one, new TemperatureSeries("invented", days, new TreeMap<>()));
  }

  private static LocalDate sameDay(LocalDate day) {
    return day.plusYears(YEARS);
  }

  private static String placeOn(PlantPlan plan, LocalDate day) {
    return plan.stays().stream()
        .filter(s -> !day.isBefore(s.fromInclusive()) && day.isBefore(s.toExclusive()))
        .findFirst()
        .orElseThrow()
        .place()
        .name();
  }
}
