package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected widths worked out by hand. */
class ColumnWidthsTest {
  private static final float TOLERANCE = 1e-3f;
  private final ColumnWidths widths = new ColumnWidths(List.of(20f, 30f), List.of(20f, 130f));

  @Test
  void spareWidthGoesToTheColumnThatWouldWrap() {
    assertArrayEquals(new float[] {20, 80}, widths.share(100), TOLERANCE);
  }

  @Test
  void withRoomForAllTheColumnsGrowAlike() {
    assertArrayEquals(new float[] {40, 260}, widths.share(300), TOLERANCE);
  }

  @Test
  void withoutRoomForTheWordsTheColumnsShrinkAlike() {
    assertArrayEquals(new float[] {10, 15}, widths.share(25), TOLERANCE);
  }
}
