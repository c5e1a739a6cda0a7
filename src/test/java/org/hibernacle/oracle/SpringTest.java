package org.hibernacle.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Rule;
import org.hibernacle.planning.Shuttle;
import org.hibernacle.planning.Stay;
import org.junit.jupiter.api.Test;

/** Nights back in spring, judged by the oracle: needed, enough, few, and worth it. */
class SpringTest {
  private static final Set<LocalDate> LATE_FROST =
      Set.of(LocalDate.of(2014, 4, 28), LocalDate.of(2014, 4, 29));

  /** New York, but for two nights of hard frost when small trees have come into leaf. */
  private static final JudgedPlan GARDEN =
      JudgedPlan.of(
          City.NEW_YORK,
          CityGarden.withMinima(
              CityGarden.weather(City.NEW_YORK),
              day -> LATE_FROST.contains(day.getKey()) ? -9 : day.getValue().minC()));

  private static List<PlantPlan> shuttled() {
    List<PlantPlan> plants =
        GARDEN.plan().plants().stream().filter(p -> p.shuttle().isPresent()).toList();
    assertTrue(plants.size() >= 2, "plants with nights back: " + plants.size());
    return plants;
  }

  @Test
  void withItsNightsBackThePlantIsSafe() {
    for (PlantPlan plant : shuttled()) {
      for (Season winter : GARDEN.winters()) {
        List<Night> nights = GARDEN.nights(plant, winter);
        List<Finding> findings =
            Agreement.beyondRounding(
                GARDEN.broken(plant, winter, nights).stream()
                    .filter(f -> f.rule() != Rule.WOKEN_GROWTH)
                    .toList());
        assertEquals(List.of(), findings, plant.plant().id() + " in " + winter);
      }
    }
  }

  /** Left out on those nights, a frost would find it in each of the winters named. */
  @Test
  void everyWinterNamedHasAFrostForIt() {
    for (PlantPlan plant : shuttled()) {
      Shuttle shuttle = plant.shuttle().orElseThrow();
      for (Shuttle.Night told : shuttle.nights()) {
        List<Night> nights = GARDEN.nights(plant, plant.stays(), told.winter());
        Optional<Night> night = nights.stream().filter(n -> n.day().equals(told.day())).findFirst();
        assertEquals(plant.plant().home(), night.orElseThrow().place().name());
        double inHandK = night.get().lowestEdgeC() - night.get().rootLimitC();
        assertTrue(inHandK < 2 + Agreement.BALL_K, plant.plant().id() + " " + told);
        assertTrue(night.get().lowestAirC() <= shuttle.triggerC() + Agreement.AIR_K);
      }
    }
  }

  /** Design figures of the tool: eight nights, 15 kg. */
  @Test
  void nightsBackAreFewAndPotsAreSmall() {
    for (PlantPlan plant : shuttled()) {
      assertTrue(plant.shuttle().orElseThrow().mostInAWinter() <= 8, plant.plant().id());
      assertTrue(plant.estimatedMassKg() < 15, plant.plant().id());
    }
  }

  /** It is home when its buds break, and would not be without those nights. */
  @Test
  void thePlantIsHomeByWakingAndCouldNotBeWithout() {
    for (PlantPlan plant : shuttled()) {
      Shuttle shuttle = plant.shuttle().orElseThrow();
      LocalDate home = plant.moves().get(plant.moves().size() - 1).date();
      assertTrue(!home.isAfter(shuttle.waking()), plant.plant().id());
      BiFunction<LocalDate, Place, Place> laterHome =
          (day, place) ->
              day.isBefore(home) || !day.isBefore(shuttle.waking().plusDays(7))
                  ? place
                  : shuttle.refuge();
      List<Stay> stays = GARDEN.stays(plant, laterHome);
      boolean safe =
          GARDEN.winters().stream()
              .allMatch(
                  w ->
                      GARDEN
                          .oracle()
                          .brokenWithMore(
                              Agreement.LIMIT_K, plant.plant(), w, GARDEN.nights(plant, stays, w))
                          .isEmpty());
      assertTrue(!safe, plant.plant().id() + " would be safe a week after waking");
    }
  }
}
