package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hibernacle.model.Season;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of docs/planning.md on risk and on few winters. */
class CautionTest {
  @ParameterizedTest
  @CsvSource({"1, 2", "2, 1", "3, 0.5", "4, 0", "10, 0", "60, 0"})
  void fewWintersKeepMoreInHand(int winters, double widenedByK) {
    assertEquals(widenedByK, Caution.widenedByK(winters));
  }

  @ParameterizedTest
  @CsvSource({"10, 1, 1", "10, 2, 2", "9, 1, 0", "19, 1, 1", "20, 1, 2", "3, 9, 0", "4, 5, 2"})
  void theRiskIsAShareOfTheWintersRoundedDown(int winters, int riskOfTen, int allowed) {
    assertEquals(allowed, new Caution(2, winters, riskOfTen).failuresAllowed());
  }

  /** Of a limit itself nothing is ever accepted; of the margin all of it. */
  @Test
  void ticksOfTheLimitAreThoseBelowIt() {
    Violation above = violation(Rule.ROOT_BALL, -3.5, -4);
    assertEquals(15, Cost.ticks(above));
    assertEquals(0, Cost.ticksOfLimit(above));
    Violation below = violation(Rule.SHOOTS, -4.5, -4);
    assertEquals(25, Cost.ticks(below));
    assertEquals(5, Cost.ticksOfLimit(below));
    Violation dark = violation(Rule.TOO_DARK, 0, 3);
    assertEquals(Cost.ticks(dark), Cost.ticksOfLimit(dark));
    assertTrue(Cost.ticks(dark) > 0);
  }

  private static Violation violation(Rule rule, double foundC, double limitC) {
    Season season = new Season(2014, false);
    return new Violation(
        rule, season, season.midwinter(), "Bench", foundC, limitC, limitC + 2 - foundC);
  }
}
