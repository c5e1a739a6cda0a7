package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.LogEntry;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.PlannedMove;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Season;
import org.hibernacle.planning.CityGarden;
import org.hibernacle.planning.CityGarden.City;
import org.hibernacle.planning.Stay;
import org.junit.jupiter.api.Test;

/** One plant, planned down to the mulched bed on 1 December and home on 1 March. */
class RealStaysTest {
  private static final Season SEASON = new Season(2014, false);
  private static final Inventory GARDEN = CityGarden.inventory(City.NEW_YORK);
  private static final Plant PLANT = GARDEN.plants().get(0);
  private static final LocalDate DOWN = LocalDate.of(2014, 12, 1);
  private static final LocalDate BACK = LocalDate.of(2015, 3, 1);
  private static final List<PlannedMove> PLAN =
      List.of(
          new PlannedMove(PLANT.id(), DOWN, "Bench", "Mulched bed"),
          new PlannedMove(PLANT.id(), BACK, "Mulched bed", "Bench"));

  /** Days and place of a log entry, blank ones as {@code null}. */
  private static RealStays real(
      Optional<LocalDate> down,
      Optional<LocalDate> in,
      Optional<LocalDate> back,
      Optional<String> stoodIn,
      Optional<IfBlank> ifBlank) {
    LogEntry entry =
        new LogEntry(
            PLANT.id(),
            down,
            in,
            Optional.empty(),
            back,
            stoodIn,
            ifBlank,
            Optional.empty(),
            Optional.empty(),
            "");
    return RealStays.of(PLANT, PLAN, entry, GARDEN, SEASON);
  }

  private static Optional<LocalDate> day(int year, int month, int day) {
    return Optional.of(LocalDate.of(year, month, day));
  }

  private static <T> Optional<T> none() {
    return Optional.empty();
  }

  private static String told(List<Stay> stays) {
    return stays.stream()
        .map(s -> s.place().name() + " " + s.fromInclusive())
        .collect(Collectors.joining(", "));
  }

  @Test
  void aBlankLogIsThePlan() {
    RealStays stays = real(none(), none(), none(), none(), none());
    assertEquals("Bench 2014-07-01, Mulched bed 2014-12-01, Bench 2015-03-01", told(stays.real()));
    assertEquals(stays.planned(), stays.real());
    assertTrue(stays.moves().stream().allMatch(RealStays.Step::assumed));
    assertEquals(SEASON.endExclusive(), stays.real().get(2).toExclusive());
  }

  @Test
  void notMovedMeansAtHome() {
    RealStays stays = real(none(), none(), none(), none(), Optional.of(IfBlank.NOT_MOVED));
    assertEquals("Bench 2014-07-01", told(stays.real()));
    assertEquals(2, stays.moves().size());
    assertTrue(stays.moves().stream().allMatch(s -> s.day().isEmpty() && !s.assumed()));
  }

  @Test
  void aDayToldReplacesThePlannedOne() {
    RealStays stays = real(day(2014, 12, 20), none(), none(), none(), none());
    assertEquals("Bench 2014-07-01, Mulched bed 2014-12-20, Bench 2015-03-01", told(stays.real()));
  }

  @Test
  void anotherPlaceOfTheSameKindIsWhereItStood() {
    RealStays stays = real(none(), none(), none(), Optional.of("Hedge foot"), none());
    assertEquals("Bench 2014-07-01, Hedge foot 2014-12-01, Bench 2015-03-01", told(stays.real()));
  }

  /** In on 15 November, so the move-down that was only planned did not happen. */
  @Test
  void whatIsAssumedGivesWayToWhatIsTold() {
    RealStays stays = real(none(), day(2014, 11, 15), none(), Optional.of("Shed"), none());
    assertEquals("Bench 2014-07-01, Shed 2014-11-15, Bench 2015-03-01", told(stays.real()));
    assertEquals(1, stays.dropped().size());
  }

  /** Down on 20 March only, after the day of its planned return: it never came home. */
  @Test
  void anAssumedReturnBeforeTheMoveDidNotHappen() {
    RealStays stays = real(day(2015, 3, 20), none(), none(), none(), none());
    assertEquals("Bench 2014-07-01, Mulched bed 2015-03-20", told(stays.real()));
  }

  /** Three places have a roof, so nobody knows where to. */
  @Test
  void anUnplannedMoveToNowhereIsLeftOut() {
    RealStays stays = real(none(), day(2014, 12, 24), none(), none(), none());
    assertEquals(1, stays.dropped().size());
    assertEquals("Bench 2014-07-01, Mulched bed 2014-12-01, Bench 2015-03-01", told(stays.real()));
  }
}
