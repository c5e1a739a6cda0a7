package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.Light;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.Place.Sun;
import org.hibernacle.model.Place.Wind;
import org.hibernacle.model.PlaceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceRowsTest {
  /** A bench, so that the plant has a home, and one more place. */
  private static Reading with(String headings, Object... values) {
    Object[] all = new Object[2 * values.length];
    java.util.Arrays.fill(all, 0, values.length, "");
    all[0] = "Bench";
    all[1] = "bench";
    System.arraycopy(values, 0, all, values.length, values.length);
    return TestBook.least().places(headings, all).read();
  }

  private static Place place(String headings, Object... values) {
    return with(headings, values).sound().places().get(1);
  }

  @Test
  void readsEveryColumn() {
    Place place =
        place(
            "Place|Kind|Floor m2|Sun|Wind|Cover|Cover depth cm|Light|Lowest held °C"
                + "|Highest held °C|Warmer by K|Lag h|Holds down to °C|Clear height cm|Vents|Notes",
            "House",
            "glasshouse",
            12.5,
            "part",
            "sheltered",
            "fleece",
            1,
            "bright",
            3,
            12,
            2,
            5,
            -15,
            210,
            "no",
            "south side");
    assertEquals(PlaceKind.GLASSHOUSE, place.kind());
    assertEquals(OptionalDouble.of(12.5), place.floorM2());
    assertEquals(Sun.PART, place.sun());
    assertEquals(Wind.SHELTERED, place.wind());
    assertEquals(Cover.FLEECE, place.cover());
    assertEquals(1, place.coverDepthCm());
    assertEquals(Light.BRIGHT, place.light());
    assertEquals(OptionalDouble.of(3), place.lowestHeldC());
    assertEquals(OptionalDouble.of(12), place.highestHeldC());
    assertEquals(2, place.warmerByK());
    assertEquals(5, place.lagHours());
    assertEquals(OptionalDouble.of(-15), place.holdsDownToC());
    assertEquals(OptionalDouble.of(210), place.clearHeightCm());
    assertFalse(place.vents());
    assertEquals("south side", place.notes());
  }

  @ParameterizedTest
  @CsvSource({
    "bench, BENCH, FULL, OPEN, false",
    "ground, GROUND, PART, SHELTERED, false",
    "cold store, COLD_STORE, NONE, SHELTERED, false",
    "Garage, COLD_STORE, NONE, SHELTERED, false",
    "Greenhouse, GLASSHOUSE, FULL, SHELTERED, true",
    "frost-free room, FROST_FREE_ROOM, NONE, SHELTERED, false",
    "FROSTFREE ROOM, FROST_FREE_ROOM, NONE, SHELTERED, false",
    "warm room, WARM_ROOM, NONE, SHELTERED, false"
  })
  void aBareKindStandsForItsDefaults(
      String word, PlaceKind kind, Sun sun, Wind wind, boolean vents) {
    Place place = place("Place|Kind", "There", word);
    assertEquals(kind, place.kind());
    assertEquals(sun, place.sun());
    assertEquals(wind, place.wind());
    assertEquals(vents, place.vents());
    assertEquals(kind.defaultLight(), place.light());
    assertEquals(kind.defaultLagHours(), place.lagHours());
    assertEquals(kind.defaultWarmerByK(), place.warmerByK());
    assertEquals(Cover.NONE, place.cover());
    assertEquals(0, place.coverDepthCm());
    assertTrue(place.floorM2().isEmpty());
  }

  @Test
  void heatedRoomsHoldTheirUsualTemperatures() {
    assertEquals(
        OptionalDouble.of(4), place("Place|Kind", "Porch", "frost-free room").lowestHeldC());
    Place warm = place("Place|Kind", "Hall", "warm room");
    assertEquals(OptionalDouble.of(16), warm.lowestHeldC());
    assertEquals(OptionalDouble.of(24), warm.highestHeldC());
    assertTrue(place("Place|Kind", "Shed", "cold store").lowestHeldC().isEmpty());
  }

  @Test
  void everyDefaultIsListedWithTheKindItWasUsedFor() {
    String notes = with("Place|Kind", "Bed", "ground").text("IN-128");
    assertTrue(
        notes.contains(
            "NOTE inventory.xlsx, sheet Places [IN-128]: Wind is empty for 1 place of kind ground;"
                + " sheltered is used."),
        notes);
    assertTrue(notes.contains("Wind is empty for 1 place of kind bench; open is used."), notes);
  }

  @Test
  void warmerByInFahrenheitIsADifference() {
    Place place =
        place(
            "Place|Kind|Warmer by °F|Lowest held °F|Floor sq ft",
            "House",
            "glasshouse",
            9,
            41,
            100);
    assertEquals(5, place.warmerByK(), 1e-12);
    assertEquals(5, place.lowestHeldC().orElseThrow(), 1e-12);
    assertEquals(9.290304, place.floorM2().orElseThrow(), 1e-12);
    Place pocket = place("Place|Kind|Warmer by °F", "Hollow", "ground", -3.6);
    assertEquals(-2, pocket.warmerByK(), 1e-12);
  }

  @Test
  void mulchWithoutADepthIsTakenAsTenCentimetres() {
    assertEquals(10, place("Place|Kind|Cover", "Bed", "ground", "mulch").coverDepthCm());
    Reading bare = with("Place|Kind|Cover depth cm", "Bed", "ground", 12);
    assertEquals(0, bare.sound().places().get(1).coverDepthCm());
    assertTrue(
        bare.text("IN-142").startsWith("WARNING inventory.xlsx, sheet Places, C3 [IN-142]"),
        bare::text);
  }

  @Test
  void placesAreToldApartWithoutCaseAndSpaces() {
    assertEquals(
        "ERROR inventory.xlsx, sheet Places, A3 [IN-130]: Place \"BEN ch\"; expected a name of its"
            + " own; the same stands in A2; nothing was written.\n",
        with("Place|Kind", "BEN ch", "ground").text("IN-130"));
  }

  @Test
  void aMissingOrUnknownKindIsAnError() {
    String kinds =
        "expected one of bench, ground, cold store, glasshouse, frost-free room, warm room;";
    assertTrue(
        with("Place|Kind", "Bed", "")
            .text("IN-129")
            .contains("B3 [IN-129]: Kind is empty; " + kinds));
    assertTrue(
        with("Place|Kind", "Bed", "igloo")
            .text("IN-122")
            .contains("B3 [IN-122]: Kind \"igloo\"; " + kinds));
    assertTrue(with("Place|Kind", "", "bench").text("IN-129").contains("A3 [IN-129]: Place is"));
  }

  @Test
  void aThermostatMustNotBeUpsideDown() {
    Reading both = with("Place|Kind|Lowest held °C|Highest held °C", "Hall", "warm room", 22, 18);
    assertTrue(
        both.text("IN-140")
            .contains(
                "D3 [IN-140]: Highest held °C \"18\"; expected a highest"
                    + " temperature above the lowest held, which is 22 °C"),
        both::text);
    Reading overDefault = with("Place|Kind|Lowest held °C", "Hall", "warm room", 30);
    assertTrue(overDefault.text("IN-140").contains("C3 [IN-140]"), overDefault::text);
  }

  @Test
  void aHeaterWithoutAThermostatIsWarnedAbout() {
    Reading reading = with("Place|Kind|Holds down to °C", "Shed", "cold store", -12);
    assertTrue(
        reading
            .text("IN-141")
            .contains(
                "C3 [IN-141]: Holds down to °C \"-12\"; expected Lowest"
                    + " held as well, the temperature the heater keeps; the place is taken as unheated."),
        reading::text);
    assertTrue(
        with("Place|Kind|Holds down to °C", "Den", "warm room", -12).text("IN-141").isEmpty());
  }
}
