package org.hibernacle.planning;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hibernacle.SomePlace;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Settings;
import org.hibernacle.planning.CityGarden.City;
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

  /** A bed of 1 m2 whose pot of 0.8 m2 is wrapped where it stands. */
  @Test
  void aPotThatIsWrappedStillTakesItsFloor() {
    Place bed = SomePlace.of(PlaceKind.GROUND).place().withFloor(OptionalDouble.of(1));
    Place wrap = bed.wrapped(bed.name() + Place.WRAPPED, Place.Cover.MULCH, 15);
    Place bench = SomePlace.of(PlaceKind.BENCH).place();
    Settings settings = CityGarden.inventory(City.NEW_YORK).settings();
    Ledger beds = new Ledger(List.of(bed, wrap, bench), NIGHTS, settings, 0);
    Ledger.Load tub = new Ledger.Load(0, 0.8, 1, 5);
    beds.take(tub, Path.standing(NIGHTS, 1));
    assertFalse(beds.left(new Ledger.Load(2, 0.3, 1, 5)).open(0, 1), "no room for a guest");
    assertTrue(beds.left(new Ledger.Load(2, 0.2, 1, 5)).open(0, 1), "and room for a small one");
    assertTrue(beds.left(tub).open(1, 1) && beds.left(tub).open(0, 1), "it is at home");
    assertFalse(beds.contested(tub, Path.standing(NIGHTS, 1)));
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
