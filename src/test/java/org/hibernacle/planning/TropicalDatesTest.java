package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden.City;
import org.junit.jupiter.api.Test;

/**
 * When a banyan fig goes in and comes out: lowest storage temperature 12 °C, unhardened limit 8 °C,
 * margin 2 K. Summer nights of 15 °C until 4 October, from then on cool ones; dips are put into
 * September. What growers hold: common practice, no source.
 */
class TropicalDatesTest {
  private static final LocalDate FIRST = LocalDate.of(2019, 7, 1);

  /** Enough winters on file for the plain safety margin. */
  private static final int YEARS = 4;

  private static final LocalDate AUTUMN = LocalDate.of(2019, 10, 4);
  private static final LocalDate SUMMER = LocalDate.of(2020, 5, 24);
  private static final LocalDate NIGHT = LocalDate.of(2019, 9, 13);

  @Test
  void itStaysOutAsLongAsNightsAreWarm() {
    LocalDate in = movesIn(Map.of());
    assertFalse(in.isBefore(sameDay(AUTUMN).minusDays(8)), in.toString());
    assertTrue(in.isBefore(sameDay(AUTUMN).plusDays(1)), in.toString());
  }

  @Test
  void nightsThatGrazeTheLimitMoveNothing() {
    LocalDate undisturbed = movesIn(Map.of());
    assertEquals(undisturbed, movesIn(Map.of(NIGHT, 11.5)), "one night half a kelvin under");
    assertEquals(
        undisturbed,
        movesIn(Map.of(NIGHT.minusDays(4), 11.8, NIGHT.minusDays(2), 11.8, NIGHT, 11.8)),
        "three nights two tenths under");
    assertEquals(
        undisturbed,
        movesIn(Map.of(NIGHT.minusDays(9), 11.0, NIGHT.minusDays(2), 11.0, NIGHT, 11.0)),
        "the first of three is mended");
  }

  @Test
  void itIsInBeforeTheThirdNightAKelvinUnder() {
    LocalDate in = movesIn(Map.of(NIGHT.minusDays(4), 11.0, NIGHT.minusDays(2), 11.0, NIGHT, 11.0));
    assertFalse(in.isAfter(sameDay(NIGHT)), in.toString());
    assertTrue(in.isAfter(sameDay(NIGHT).minusDays(8)), in.toString());
  }

  @Test
  void itIsInBeforeOneDeepNight() {
    for (double deepC : new double[] {9.0, 9.5}) {
      LocalDate in = movesIn(Map.of(NIGHT, deepC));
      assertFalse(in.isAfter(sameDay(NIGHT)), deepC + " °C: " + in);
      assertTrue(in.isAfter(sameDay(NIGHT).minusDays(8)), deepC + " °C: " + in);
    }
  }

  @Test
  void itComesOutWhenNightsAreWarmAgain() {
    PlantPlan fig = plan(Map.of());
    LocalDate out = fig.move(Move.Kind.RETURN).orElseThrow().date();
    assertTrue(out.isAfter(LocalDate.of(2024, 5, 14)), out.toString());
    assertTrue(out.isBefore(LocalDate.of(2024, 6, 7)), out.toString());
  }

  private static LocalDate movesIn(Map<LocalDate, Double> dipsC) {
    return plan(dipsC).move(Move.Kind.MOVE_IN).orElseThrow().date();
  }

  private static PlantPlan plan(Map<LocalDate, Double> dipsC) {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>();
    for (LocalDate day = FIRST; day.isBefore(FIRST.plusYears(YEARS)); day = day.plusDays(1)) {
      LocalDate sameYear = day.withYear(day.getMonthValue() < 7 ? 2020 : 2019);
      boolean cool = !sameYear.isBefore(AUTUMN) && sameYear.isBefore(SUMMER);
      days.put(day, cool ? new DailyExtremes(5, 11) : new DailyExtremes(15, 21));
    }
    dipsC.forEach((day, minC) -> days.put(day, new DailyExtremes(minC, minC + 7)));
    Inventory all = CityGarden.inventory(City.NEW_YORK);
    Inventory fig =
        new Inventory(
            all.plants().stream().filter(p -> p.id().equals("FIG-4")).toList(),
            all.places(),
            all.settings(),
            List.of());
    return CityGarden.planOf(fig, new TemperatureSeries("invented", days, new TreeMap<>()))
        .plants()
        .get(0);
  }

  private static LocalDate sameDay(LocalDate day) {
    return day.plusYears(YEARS);
  }
}
