package org.hibernacle.physiology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.hibernacle.SomePlace;
import org.hibernacle.SomePlant;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

/** Thaw and water after 3 to 4 weeks: common practice, no source. */
class DryingTest {
  private static final Place OPEN = SomePlace.of(PlaceKind.BENCH).open().place();
  private static final OptionalDouble NO_SNOW_KNOWN = OptionalDouble.empty();

  @Test
  void anEvergreenInTheOpenIsThawedAfterThreeToFourWeeks() {
    int found = 0;
    for (Species species : SomePlant.CATALOGUE.species()) {
      if (species.foliage() == Foliage.EVERGREEN) {
        int days = days(species, OPEN, -4);
        assertTrue(days >= 21 && days <= 28, species.taxon() + " " + days);
        found++;
      }
    }
    assertTrue(found > 50, "evergreens are looked at");
  }

  @Test
  void shelterRoofLeafFallAndColdAirGiveMoreTime() {
    Species pine = SomePlant.species("Pinus mugo");
    Species maple = SomePlant.species("Acer palmatum");
    int open = days(pine, OPEN, -4);
    int sheltered = days(pine, SomePlace.of(PlaceKind.GROUND).place(), -4);
    int shade = days(pine, SomePlace.of(PlaceKind.GROUND).sun(Sun.NONE).place(), -4);
    int shed = days(pine, SomePlace.of(PlaceKind.COLD_STORE).sun(Sun.NONE).place(), -4);
    assertTrue(open < sheltered && sheltered < shade && shade < shed);
    assertTrue(days(maple, OPEN, -4) > 7 * 7, "bare twigs, seven weeks and more");
    assertTrue(days(pine, OPEN, -10) > open, "cold air takes up less");
    assertTrue(days(pine, OPEN, 1) < open, "mild air over a frozen ball takes up more");
  }

  /**
   * Vapour pressure over ice, from memory of the standard tables: 6.11 hPa at 0, 2.60 at -10 °C.
   */
  @Test
  void theAirWeighsAsMuchAsItCanTakeUp() {
    Species pine = SomePlant.species("Pinus mugo");
    double at0 = Drying.next(0, 1, pine, OPEN, 0, NO_SNOW_KNOWN);
    double at10 = Drying.next(0, 1, pine, OPEN, -10, NO_SNOW_KNOWN);
    assertEquals(2.60 / 6.11, at10 / at0, 0.002);
  }

  @Test
  void snowOverTheCrownStopsIt() {
    Species pine = SomePlant.species("Pinus mugo");
    double bare = Drying.next(0, 1, pine, OPEN, -4, NO_SNOW_KNOWN);
    assertEquals(bare, Drying.next(0, 1, pine, OPEN, -4, OptionalDouble.of(0)));
    assertEquals(bare / 2, Drying.next(0, 1, pine, OPEN, -4, OptionalDouble.of(0.5)), 1e-12);
    assertEquals(0.4, Drying.next(0.4, 1, pine, OPEN, -4, OptionalDouble.of(1)));
  }

  @Test
  void aBallThatIsNotFrozenThroughCanDrink() {
    Species pine = SomePlant.species("Pinus mugo");
    assertEquals(0, Drying.next(0.9, 0.98, pine, OPEN, -4, NO_SNOW_KNOWN));
    assertTrue(Drying.next(0.9, 0.99, pine, OPEN, -4, NO_SNOW_KNOWN) > 0.9);
  }

  private static int days(Species species, Place place, double airC) {
    double index = 0;
    int days = 0;
    while (index < Drying.THAW_AND_WATER) {
      index = Drying.next(index, 1, species, place, airC, NO_SNOW_KNOWN);
      days++;
    }
    return days;
  }
}
