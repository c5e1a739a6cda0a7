package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;

/** The order of docs/planning.md, Costs, holds whatever a season adds up to. */
class CostTest {
  private static final Season SEASON = new Season(2023, false);
  private static final int NIGHTS = SEASON.days();
  private static final int AUTUMN_NIGHTS = SEASON.index(SEASON.midwinter());

  /** 366 nights; at most ten degrees a night outside the storage range are counted. */
  @Test
  void noFieldEverCarriesIntoTheNext() {
    assertEquals(366, NIGHTS);
    long storage = 10L * NIGHTS * Cost.STORAGE_DEGREE_DAY;
    assertTrue(storage < Cost.SPRING_NIGHT_AWAY);
    long spring = (NIGHTS - AUTUMN_NIGHTS) * Cost.SPRING_NIGHT_AWAY + storage;
    assertTrue(spring < Cost.ROOF_NIGHT);
    long roof = NIGHTS * Cost.ROOF_NIGHT + spring;
    assertTrue(roof < Cost.AUTUMN_NIGHT_AWAY);
    long autumn = AUTUMN_NIGHTS * Cost.AUTUMN_NIGHT_AWAY + roof;
    assertTrue(autumn < Cost.MOVE);
    long moves = StaySearch.MOST_MOVES * Cost.MOVE + autumn;
    assertTrue(moves < Cost.BROKEN_TICK);
    long broken = Math.multiplyExact((long) NIGHTS * Cost.MOST_BROKEN_PER_NIGHT, Cost.BROKEN_TICK);
    assertTrue(Math.addExact(broken, moves) > broken);
  }

  @Test
  void aTickIsATenthOfAKelvinBegun() {
    assertEquals(1, ticks(Rule.ROOT_BALL, 0.01));
    assertEquals(1, ticks(Rule.ROOT_BALL, 0.1));
    assertEquals(2, ticks(Rule.ROOT_BALL, 0.11));
    assertEquals(30, ticks(Rule.SHOOTS, 3));
    assertEquals(Cost.MOST_BROKEN_PER_NIGHT, ticks(Rule.ROOT_BALL, 600));
  }

  /** Cold sheltered ground beats a warm roof where no place is good. */
  @Test
  void beingTooWarmAtRestCountsThreeTimes() {
    assertEquals(3 * ticks(Rule.ROOT_BALL, 2), ticks(Rule.TOO_WARM_AT_REST, 2));
  }

  private static int ticks(Rule rule, double deficitK) {
    LocalDate day = LocalDate.of(2024, 1, 10);
    return Cost.ticks(new Violation(rule, SEASON, day, "BENCH", -9, -7, deficitK));
  }
}
