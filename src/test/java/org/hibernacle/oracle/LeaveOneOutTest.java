package org.hibernacle.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.hibernacle.model.DailyExtremes;
import org.hibernacle.model.Season;
import org.hibernacle.model.TemperatureSeries;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Question;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.SeasonPlanner;
import org.hibernacle.planning.WinterJudged;
import org.junit.jupiter.api.Test;

/**
 * New York's coldest winter on file, planned for from the two others: once as the program judges
 * itself, and once from a file that lacks that winter, lived through by the oracle.
 */
class LeaveOneOutTest {
  private static final Season LEFT_OUT = new Season(2013, false);
  private static final TemperatureSeries WEATHER = CityGarden.weather(City.NEW_YORK);

  @Test
  void theOracleCountsTheSamePots() {
    List<WinterJudged> all =
        SeasonPlanner.leaveOneOut(
            new Question(
                CityGarden.inventory(City.NEW_YORK), WEATHER, Map.of(), OptionalInt.of(2015)));
    assertEquals(3, all.size());
    WinterJudged judged = all.get(1);
    assertEquals(LEFT_OUT, judged.winter());
    assertEquals(15, judged.pots());

    SeasonPlan plan =
        SeasonPlanner.plan(
                CityGarden.inventory(City.NEW_YORK), withoutTheWinter(), OptionalInt.of(2015))
            .orElseThrow();
    assertEquals(2, plan.winters().size());
    Oracle oracle = new Oracle(plan.inventory(), WEATHER, plan.season(), List.of(LEFT_OUT));
    int surely = 0;
    int perhaps = 0;
    int nightsAway = 0;
    for (PlantPlan plant : plan.plants()) {
      List<Night> nights = oracle.nights(plant.plant(), plant.stays(), LEFT_OUT);
      // The oracle keeps 2 K more in hand for a single winter; here it is to judge, not to plan.
      List<Finding> findings = oracle.brokenWithMore(-2, plant.plant(), LEFT_OUT, nights);
      perhaps += findings.isEmpty() ? 0 : 1;
      surely += Agreement.beyondRounding(findings).isEmpty() ? 0 : 1;
      String home = plant.plant().home();
      nightsAway += (int) nights.stream().filter(n -> !n.place().name().equals(home)).count();
    }
    assertTrue(surely <= judged.marginBroken(), surely + " surely, told " + judged);
    assertTrue(judged.marginBroken() <= perhaps, perhaps + " perhaps, told " + judged);
    assertEquals(nightsAway, judged.nightsAway());
    assertTrue(judged.limitBroken() <= judged.marginBroken());
    assertTrue(judged.needlessNights() > 0 && judged.needlessNights() < judged.nightsAway());
  }

  private static TemperatureSeries withoutTheWinter() {
    TreeMap<LocalDate, DailyExtremes> days = new TreeMap<>(WEATHER.days());
    days.subMap(LocalDate.of(2014, 1, 1), LocalDate.of(2014, 1, 20)).clear();
    return new TemperatureSeries(WEATHER.station(), days, WEATHER.hours());
  }
}
