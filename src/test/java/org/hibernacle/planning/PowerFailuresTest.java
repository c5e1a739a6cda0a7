package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
import org.hibernacle.SomeWinter;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Settings;
import org.hibernacle.report.Fixtures;
import org.junit.jupiter.api.Test;

/** A heated room that a plant never leaves; nights of -15 °C without heat, figures invented. */
class PowerFailuresTest {
  private static final Place ROOM =
      SomePlace.of(PlaceKind.WARM_ROOM).named("BENCH").lowestHeld(16).place();
  private static final WintersOnFile WINTERS =
      new WintersOnFile(
          SomeWinter.SEASON,
          List.of(SomeWinter.wholeYear(day -> SomeWinter.wave(day, 5, 15, 8))),
          List.of(ROOM),
          SomeWinter.LATITUDE_DEG);

  @Test
  void whatLivesInTheWarmIsNamedForTheWholeWinter() {
    Task task = tasks("Ficus microcarpa").get(0);
    assertEquals(List.of("P-01"), task.plantIds());
    assertEquals(SomeWinter.SEASON.coreStart(), task.from());
    assertEquals(SomeWinter.SEASON.coreEndExclusive().minusDays(1), task.to());
    assertTrue(task.amount().orElseThrow() < 12, task.toString());
  }

  private static List<Task> tasks(String taxon) {
    Settings settings = Fixtures.settings(Settings.Units.METRIC, Locale.UK);
    PlantPlanner planner =
        PlantPlanner.of(SomePlant.of(taxon).plant(), settings, new Caution(2, 1, 0), WINTERS);
    return new PowerFailures(
            WINTERS, List.of(new Together.Settled(planner, planner.find(), Optional.empty())))
        .tasks();
  }
}
