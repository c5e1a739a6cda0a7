package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BallTraceCopyTest {
  @Test
  void oneNightIsCopiedWholeAndNoOther() {
    BallTrace from = BallTrace.ofNights(3);
    for (int n = 0; n < 3; n++) {
      from.ballMinC()[n] = -1 - n;
      from.ballMinHour()[n] = 20 + 24 * n;
      from.ballMeanC()[n] = 1 + n;
      from.edgeIceMax()[n] = 0.3 + 0.1 * n;
      from.coreIceMin()[n] = 0.1 + 0.1 * n;
      from.airMinC()[n] = -6 - n;
      from.airMinHour()[n] = 30 + 24 * n;
      from.airMeanC()[n] = -2 - n;
    }
    BallTrace to = BallTrace.ofNights(3);
    to.copyNights(from, 1, 2);
    assertEquals(3, to.nights());
    assertArrayEquals(new double[] {0, -2, 0}, to.ballMinC());
    assertArrayEquals(new int[] {0, 44, 0}, to.ballMinHour());
    assertArrayEquals(new double[] {0, 2, 0}, to.ballMeanC());
    assertArrayEquals(new double[] {0, 0.4, 0}, to.edgeIceMax());
    assertArrayEquals(new double[] {0, 0.2, 0}, to.coreIceMin());
    assertArrayEquals(new double[] {0, -7, 0}, to.airMinC());
    assertArrayEquals(new int[] {0, 54, 0}, to.airMinHour());
    assertArrayEquals(new double[] {0, -3, 0}, to.airMeanC());
  }
}
