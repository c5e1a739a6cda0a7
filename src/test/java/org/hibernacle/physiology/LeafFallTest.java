package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.hibernacle.model.Foliage;
import org.junit.jupiter.api.Test;

/**
 * Contract of the forecast, by docs/models/rest.md; {@link WildTreesTest} holds it to real trees.
 */
class LeafFallTest {
  private static final double SHORT_DAY_H = 11.9;

  @Test
  void sixtyDegreeDaysOfColdBringTheLeavesDown() {
    assertEquals(5, daysToFall(0, 0, SHORT_DAY_H), "12 K a day");
    assertEquals(6, daysToFall(0.1, 0, SHORT_DAY_H), "11.9 K a day");
    assertEquals(60, daysToFall(11, 8, SHORT_DAY_H), "1 K a day");
    assertEquals(Integer.MAX_VALUE, daysToFall(12, 8, SHORT_DAY_H), "no cold");
  }

  @Test
  void aFrostOfFourDegreesDoesSoAWeekLater() {
    assertEquals(8, daysToFall(12, -4, SHORT_DAY_H));
    assertEquals(Integer.MAX_VALUE, daysToFall(12, -3.9, SHORT_DAY_H));
  }

  @Test
  void longDaysKeepTheLeavesOn() {
    assertEquals(Integer.MAX_VALUE, daysToFall(-5, -10, 12));
    assertEquals(4, daysToFall(-5, -10, 11.99));
  }

  @Test
  void coldPastMidwinterIsNoAutumn() {
    LeafFall leaves = new LeafFall();
    for (int day = 0; day < 100; day++) {
      leaves.day(-10, -20, 9, true);
    }
    assertFalse(leaves.dormant());
    assertFalse(leaves.bare(Foliage.DECIDUOUS));
  }

  @Test
  void onlyDeciduousPlantsAreBareAndNothingGrowsLeavesAgain() {
    LeafFall leaves = new LeafFall();
    leaves.day(-60, -60, 9, false);
    for (int day = 0; day < 50; day++) {
      leaves.day(25, 20, 15, day > 20);
      assertTrue(leaves.dormant());
      assertTrue(leaves.bare(Foliage.DECIDUOUS));
      assertFalse(leaves.bare(Foliage.EVERGREEN));
    }
  }

  @Test
  void aColderAutumnIsNeverALaterOne() {
    long seed = 8_401;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 300; run++) {
      LeafFall mild = new LeafFall();
      LeafFall cold = new LeafFall();
      for (int day = 0; day < 90; day++) {
        double meanC = random.nextDouble(-2, 16);
        double dayLengthH = 13 - day / 30.0;
        double colderK = random.nextDouble(0, 3);
        mild.day(meanC, meanC - 4, dayLengthH, false);
        cold.day(meanC - colderK, meanC - 4 - colderK, dayLengthH, false);
        assertTrue(cold.dormant() || !mild.dormant(), "seed " + seed + ", run " + run);
      }
    }
  }

  private static int daysToFall(double meanC, double minC, double dayLengthH) {
    LeafFall leaves = new LeafFall();
    for (int day = 1; day <= 150; day++) {
      assertFalse(leaves.dormant());
      leaves.day(meanC, minC, dayLengthH, false);
      if (leaves.dormant()) {
        return day;
      }
    }
    return Integer.MAX_VALUE;
  }
}
