package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hibernacle.model.TemperatureSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Hundreds of megabytes in a small memory; run by {@code mvn -Pproof test -Dtest=LongStreamTest
 * -Dproof.megabytes=300}. All rows would fill several times what may be in use in the end.
 */
class LongStreamTest {
  /** Of the file, in millions of bytes. */
  private static final int MEGABYTES = Integer.getInteger("proof.megabytes", 300);

  private static final int DAYS = MEGABYTES * 1_000_000 / MinuteStream.BYTES_A_DAY;

  /** Of a day with its hours; and something to start with. */
  private static final long MOST_BYTES = (32L << 20) + DAYS * 4_000L;

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
    assertEquals(MinuteStream.START, series.days().firstKey());
    assertTrue(used() - before < MOST_BYTES, "the series takes " + (used() - before) + " bytes");
  }

  private static long used() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
