package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
import org.hibernacle.SomeWinter;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Plant;
import org.junit.jupiter.api.Test;

/** Seven weeks of frost from 1 January: thaw and water after 3 to 4, common practice, no source. */
class PlantTasksTest {
  private static final LocalDate FROST = LocalDate.of(2021, 1, 1);
  private static final List<Place> PLACES =
      List.of(
          SomePlace.of(PlaceKind.BENCH).open().named("BENCH").place(),
          SomePlace.of(PlaceKind.GROUND).place());
  private static final Winter WINTER =
      SomeWinter.wholeYear(
          day ->
              day.isBefore(FROST) || !day.isBefore(FROST.plusWeeks(7))
                  ? SomeWinter.wave(day, 12, 7, 4)
                  : SomeWinter.steady(-4));
  private static final WintersOnFile WINTERS =
      new WintersOnFile(SomeWinter.SEASON, List.of(WINTER), PLACES, SomeWinter.LATITUDE_DEG);

  @Test
  void anEvergreenOnAnOpenBenchIsThawedAfterThreeToFourWeeks() {
    Task thaw = thawOut("Pinus mugo", 0).orElseThrow();
    long days = ChronoUnit.DAYS.between(FROST, thaw.from());
    assertTrue(days >= 21 && days <= 30, thaw.toString());
    assertEquals("BENCH", thaw.place());
    assertEquals(List.of("P-01"), thaw.plantIds());
    assertTrue(!thaw.to().isAfter(FROST.plusWeeks(7).plusDays(1)), thaw.toString());
    assertTrue(thaw.amount().orElseThrow() > 40, "days frozen: " + thaw.amount());
  }

  @Test
  void shelterComesLaterAndBareTwigsNotAtAll() {
    LocalDate open = thawOut("Pinus mugo", 0).orElseThrow().from();
    assertTrue(thawOut("Pinus mugo", 1).orElseThrow().from().isAfter(open.plusDays(7)));
    assertEquals(Optional.empty(), thawOut("Acer palmatum", 0));
  }

  @Test
  void whatIsTooHeavyForOneWantsTwoOnTheDaysItIsCarried() {
    LocalDate day = LocalDate.of(2020, 11, 14);
    Move move =
        new Move(
            Move.Kind.MOVE_DOWN, day, PLACES.get(0), PLACES.get(1), Optional.empty(), List.of());
    Plant small = SomePlant.of("Pinus mugo").plant();
    assertEquals(List.of(), lifts(small, move));
    Container box = new Container(Shape.RECTANGULAR, 60, 60, 40, 100, Material.WOOD);
    Plant big = SomePlant.of("Pinus mugo").pot(box).plant();
    Task lift = lifts(big, move).get(0);
    assertEquals(day, lift.from());
    assertEquals(Mass.wetKg(box), lift.amount().orElseThrow());
  }

  /** Common practice, no source. */
  @Test
  void whatComesInFromOutdoorsInLeafStandsApart() {
    LocalDate day = LocalDate.of(2020, 9, 12);
    Move in =
        new Move(Move.Kind.MOVE_IN, day, PLACES.get(0), PLACES.get(1), Optional.empty(), List.of());
    Task apart =
        tasks(SomePlant.of("Ficus microcarpa").plant(), 0, List.of(in)).stream()
            .filter(task -> task.kind() == Task.Kind.QUARANTINE)
            .findFirst()
            .orElseThrow();
    assertEquals(day, apart.from());
    assertEquals(day.plusDays(14), apart.to());
    assertTrue(
        tasks(SomePlant.of("Pinus mugo").plant(), 0, List.of(in)).stream()
            .noneMatch(task -> task.kind() == Task.Kind.QUARANTINE));
  }

  private static List<Task> lifts(Plant plant, Move move) {
    return tasks(plant, 0, List.of(move)).stream()
        .filter(task -> task.kind() == Task.Kind.TWO_PERSON_LIFT)
        .toList();
  }

  private static Optional<Task> thawOut(String taxon, int place) {
    return tasks(SomePlant.of(taxon).plant(), place, List.of()).stream()
        .filter(task -> task.kind() == Task.Kind.THAW_OUT)
        .findFirst();
  }

  private static List<Task> tasks(Plant plant, int place, List<Move> moves) {
    List<Lived> lived = List.of(new Trial(plant, WINTERS, 2).atHome(0, place));
    Path path = Path.standing(SomeWinter.SEASON.days(), place);
    PlantPlanner.Found found =
        new PlantPlanner.Found(
            path,
            new Kept<>(() -> lived),
            new Kept<>(() -> lived),
            Set.of(),
            new PathCost(0, 0),
            Optional.empty());
    return new PlantTasks(plant, WINTERS, found, moves).tasks();
  }
}
