package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Two hundred megabytes in a small memory; run by {@code mvn -Pproof test -Dtest=LongStreamTest}.
 * All rows of it would fill several times what may be in use in the end.
 */
class LongStreamTest {
  private static final int DAYS = 8_800;
  private static final long MOST_BYTES = 64L << 20;

  @Test
  @EnabledIfSystemProperty(named = "proof.pages", matches = "true")
  void memoryGrowsWithDaysAndNotWithRows() {
    long before = used();
    Problems problems = new Problems();
    TemperatureSeries series =
        TemperatureCsv.read(MinuteStream.source(DAYS), TemperatureCsv.Options.NONE, problems)
            .orElseThrow();
    assertEquals(DAYS, series.days().size());
    assertEquals(DAYS, series.hours().size());
    assertEquals(LocalDate.of(1990, 1, 1), series.days().firstKey());
    assertTrue(used() - before < MOST_BYTES, "the series takes " + (used() - before) + " bytes");
  }

  private static long used() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
