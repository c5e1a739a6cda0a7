package org.hibernacle.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hibernacle.model.Place;
import org.hibernacle.model.Season;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.Task;
import org.junit.jupiter.api.Test;

/** Pots that are wrapped where they stand, judged by the oracle. */
class WrapTest {
  /** Seattle, with nights 3 K colder, so that the yard is dangerous and a wrap is enough. */
  private static final JudgedPlan GARDEN =
      JudgedPlan.planned(
          CityGarden.yardInventory(City.SEATTLE),
          CityGarden.withMinima(
              CityGarden.weather(City.SEATTLE), day -> day.getValue().minC() - 3));

  private static PlantPlan plan(String id) {
    return GARDEN.plan().plants().stream()
        .filter(p -> p.plant().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static boolean breaks(PlantPlan plant, List<List<Night>> winters) {
    for (int w = 0; w < winters.size(); w++) {
      Season winter = GARDEN.winters().get(w);
      List<Finding> findings = GARDEN.broken(plant, winter, winters.get(w));
      if (!Agreement.beyondRounding(findings).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static List<List<Night>> unwrapped(PlantPlan plant) {
    Place yard = GARDEN.place("Yard");
    return GARDEN.winters().stream()
        .map(w -> GARDEN.nights(plant, GARDEN.stays(plant, (day, place) -> yard), w))
        .toList();
  }

  @Test
  void aTubNobodyCarriesIsWrappedAndSafe() {
    PlantPlan tub = plan("MAPLE-TUB");
    assertEquals(PlantPlan.Verdict.MOVES, tub.verdict());
    assertEquals(
        List.of(Move.Kind.WRAP, Move.Kind.UNWRAP), tub.moves().stream().map(Move::kind).toList());
    assertFalse(
        breaks(tub, GARDEN.winters().stream().map(w -> GARDEN.nights(tub, w)).toList()), "wrapped");
    assertTrue(breaks(tub, unwrapped(tub)), "without its wrap");
  }

  @Test
  void aTubThatIsWrappedStillStandsInItsPlace() {
    PlantPlan tub = plan("MAPLE-TUB");
    PlaceForecast home =
        GARDEN.plan().places().stream()
            .filter(p -> p.place().name().equals(tub.plant().home()))
            .findFirst()
            .orElseThrow();
    assertTrue(
        home.weeks().stream().allMatch(w -> w.plantIds().contains("MAPLE-TUB")), "every week");
  }

  @Test
  void aPlantThatIsToStayAtHomeIsWrappedThere() {
    PlantPlan stays = plan("MAPLE-STAYS");
    assertTrue(stays.moves().stream().noneMatch(m -> m.kind().carries()), stays.toString());
    assertTrue(stays.move(Move.Kind.WRAP).isPresent(), stays.toString());
  }

  @Test
  void aPlantThatCanBeCarriedIsNot() {
    PlantPlan goes = plan("MAPLE-GOES");
    assertTrue(goes.moves().stream().allMatch(m -> m.kind().carries()), goes.toString());
    assertEquals("Mulched bed", goes.moves().get(0).to().name());
  }

  /** Fleece in the wind is little; where it is not enough the tub is carried after all. */
  @Test
  void aTubIsCarriedWhereItsWrapIsNotEnough() {
    PlantPlan tub = plan("TUB-BENCH");
    assertEquals(PlantPlan.Verdict.MOVES, tub.verdict());
    assertEquals(Move.Kind.MOVE_DOWN, tub.moves().get(0).kind());
    assertFalse(breaks(tub, GARDEN.winters().stream().map(w -> GARDEN.nights(tub, w)).toList()));
  }

  @Test
  void theWorkAndTheMulchAreTold() {
    List<Task> wraps =
        GARDEN.plan().tasks().stream().filter(t -> t.kind() == Task.Kind.WRAP).toList();
    Task tub =
        wraps.stream().filter(t -> t.plantIds().contains("MAPLE-TUB")).findFirst().orElseThrow();
    assertTrue(tub.amount().orElseThrow() > 60, "a ring round 60 L is more than 60 L: " + tub);
  }
}
