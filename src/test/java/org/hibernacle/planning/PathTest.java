package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import org.hibernacle.SomePlace;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;

class PathTest {
  private static final Season SEASON = new Season(2020, false);
  private static final Place BENCH = SomePlace.of(PlaceKind.BENCH).place();
  private static final Place GROUND = SomePlace.of(PlaceKind.GROUND).place();

  @Test
  void standingStillIsOneStay() {
    Path path = Path.standing(SEASON.days(), 0);
    assertEquals(List.of(), path.moveNights());
    assertEquals(
        List.of(new Stay(BENCH, SEASON.start(), SEASON.endExclusive())),
        path.stays(SEASON, List.of(BENCH, GROUND)));
  }

  /** Night 139 begins on 17 November; the move is on that day, and the stay starts with it. */
  @Test
  void staysMeetOnTheDayOfTheMove() {
    Path path = Path.standing(SEASON.days(), 0).with(139, 263, 1);
    assertEquals(List.of(139, 263), path.moveNights());
    LocalDate down = LocalDate.of(2020, 11, 17);
    LocalDate back = LocalDate.of(2021, 3, 21);
    assertEquals(
        List.of(
            new Stay(BENCH, SEASON.start(), down),
            new Stay(GROUND, down, back),
            new Stay(BENCH, back, SEASON.endExclusive())),
        path.stays(SEASON, List.of(BENCH, GROUND)));
  }

  @Test
  void changingNightsLeavesTheOldPathAlone() {
    Path path = Path.standing(5, 0);
    assertArrayEquals(new int[] {0, 1, 1, 0, 0}, path.with(1, 3, 1).placeByNight());
    assertArrayEquals(new int[] {1, 1, 1, 1, 1}, path.with(-3, 99, 1).placeByNight());
    assertArrayEquals(new int[] {0, 0, 0, 0, 0}, path.with(3, 3, 1).placeByNight());
    assertArrayEquals(new int[5], path.placeByNight());
  }

  @Test
  void aMoveOnTheLastNightIsAStayOfOneDay() {
    Path path = Path.standing(SEASON.days(), 0).with(364, 365, 1);
    List<Stay> stays = path.stays(SEASON, List.of(BENCH, GROUND));
    assertEquals(LocalDate.of(2021, 6, 30), stays.get(1).fromInclusive());
    assertEquals(LocalDate.of(2021, 7, 1), stays.get(1).toExclusive());
  }

  @Test
  void aStayOfNoDaysIsRefused() {
    LocalDate day = LocalDate.of(2020, 11, 17);
    assertThrows(IllegalArgumentException.class, () -> new Stay(BENCH, day, day));
  }
}
