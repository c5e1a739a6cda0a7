package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Who has room where: a porch of 1 m2 that is home to one plant, and a bench without end. */
class LedgerTest {
  private static final int PORCH = 0;
  private static final int BENCH = 1;
  private static final int NIGHTS = 3;

  private final Ledger ledger =
      new Ledger(
          new double[] {1, Double.POSITIVE_INFINITY},
          NIGHTS,
          OptionalInt.empty(),
          OptionalInt.empty());
  private final Ledger.Load atHome = new Ledger.Load(PORCH, 0.8, 1, 5);
  private final Ledger.Load visitor = new Ledger.Load(BENCH, 0.3, 1, 5);

  @Test
  void aVisitorFindsOnlyTheRoomThatThoseAtHomeLeave() {
    assertTrue(ledger.left(visitor).open(PORCH, 1));
    ledger.take(atHome, Path.standing(NIGHTS, PORCH));
    assertFalse(ledger.left(visitor).open(PORCH, 1));
    ledger.giveBack(atHome, Path.standing(NIGHTS, PORCH));
    assertTrue(ledger.left(visitor).open(PORCH, 1));
  }

  @Test
  void homeIsNeverClosedToItsOwn() {
    ledger.take(visitor, Path.standing(NIGHTS, PORCH));
    assertTrue(ledger.left(atHome).open(PORCH, 1));
    ledger.take(atHome, Path.standing(NIGHTS, PORCH));
    assertFalse(ledger.contested(atHome, Path.standing(NIGHTS, PORCH)));
    assertTrue(ledger.contested(visitor, Path.standing(NIGHTS, PORCH)), "it has to give way");
  }
}
