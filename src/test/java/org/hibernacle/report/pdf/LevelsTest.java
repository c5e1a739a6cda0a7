package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Expected shares worked out by hand. */
class LevelsTest {
  private static final float TOLERANCE = 1e-3f;

  @Test
  void aSurplusRaisesTheShortOnesToOneFloor() {
    assertArrayEquals(
        new float[] {60, 20, 20}, Levels.share(new float[] {60, 10, 5}, 100), TOLERANCE);
    assertArrayEquals(
        new float[] {40, 40, 40}, Levels.share(new float[] {30, 10, 5}, 120), TOLERANCE);
  }

  @Test
  void aShortageLowersTheLongOnesToOneCeiling() {
    assertArrayEquals(
        new float[] {45, 10, 45}, Levels.share(new float[] {60, 10, 90}, 100), TOLERANCE);
    assertArrayEquals(
        new float[] {20, 20, 20}, Levels.share(new float[] {60, 70, 90}, 60), TOLERANCE);
  }

  @Test
  void anExactFitStaysAsItIs() {
    assertArrayEquals(
        new float[] {60, 10, 30}, Levels.share(new float[] {60, 10, 30}, 100), TOLERANCE);
  }

  @Test
  void theSharesAlwaysAddUp() {
    Random random = new Random(20261003);
    for (int round = 0; round < 200; round++) {
      float[] wanted = new float[1 + random.nextInt(6)];
      for (int i = 0; i < wanted.length; i++) {
        wanted[i] = random.nextInt(300);
      }
      float sum = 0;
      for (float share : Levels.share(wanted, 470)) {
        sum += share;
      }
      assertEquals(470, sum, 0.01, Arrays.toString(wanted));
    }
  }
}
