package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadingsTest {
  @ParameterizedTest
  @CsvSource({
    "PLANTS, Depth cm, DEPTH_OF_POT, cm",
    "PLANTS, depth (CM), DEPTH_OF_POT, cm",
    "PLANTS, Pot depth [in], DEPTH_OF_POT, in",
    "PLANTS, 'Length, inches', LENGTH_OF_POT, in",
    "PLANTS, Diameter mm, LENGTH_OF_POT, mm",
    "PLANTS, Volume gal, VOLUME_OF_POT, gal",
    "PLANTS, POT-VOLUME (litres), VOLUME_OF_POT, L",
    "PLANTS, Root limit °F, OWN_ROOT_LIMIT, °F",
    "PLANTS, Root limit (degrees Celsius), OWN_ROOT_LIMIT, °C",
    "PLANTS, Stay in, STAY_IN, ''",
    "PLANTS, frostproof pot, FROST_PROOF_POT, ''",
    "PLACES, Floor m², FLOOR, m2",
    "PLACES, Floor area (sq ft), FLOOR, ft2",
    "PLACES, Warmer by °F, WARMER_BY, °F",
    "PLACES, warmer by k, WARMER_BY, K",
    "PLACES, Lag h, LAG, h",
    "SPECIES, root_limit_estimate_c, ROOT_LIMIT, °C",
    "SPECIES, Root limit estimate F, ROOT_LIMIT, °F",
    "SPECIES, min_store_c, MIN_STORE, °C",
    "SPECIES, USDA zone min, ZONE, ''",
    "SETTINGS, Safety margin (°F), SAFETY_MARGIN, °F",
    "SETTINGS, time  ZONE, TIME_ZONE, ''"
  })
  void recognisesAHeadingHoweverItIsWritten(
      InventorySheet sheet, String heading, Column column, String unit) {
    Headings.Meaning meaning = Headings.meaning(sheet, heading).orElseThrow();
    assertEquals(column, meaning.column());
    assertEquals(unit, meaning.unit().map(Quantity.Unit::symbol).orElse(""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Depth (furlong)", "Came from", "Depth gal", "Id cm", ""})
  void leavesAloneWhatItDoesNotKnow(String heading) {
    assertTrue(Headings.meaning(InventorySheet.PLANTS, heading).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(Column.class)
  void recognisesTheHeadingOfTheBlankForm(Column column) {
    assertEquals(column, Headings.meaning(column.sheet(), column.heading()).orElseThrow().column());
  }

  @ParameterizedTest
  @EnumSource(InventorySheet.class)
  void noSpellingMeansTwoColumnsOfOneSheet(InventorySheet sheet) {
    Set<String> seen = new HashSet<>();
    for (Column column : sheet.columns()) {
      for (String key : column.keys()) {
        assertTrue(seen.add(key), () -> sheet + ": " + key + " is ambiguous");
      }
    }
  }

  // Exact by definition: inch 2.54 cm, US gallon 231 cubic inches, foot 0.3048 m (NIST Special
  // Publication 811, appendix B). A difference of 9 °F is one of 5 K.
  @ParameterizedTest
  @CsvSource({
    "LENGTH, in, 10, 25.4",
    "LENGTH, ft, 1, 30.48",
    "LENGTH, mm, 305, 30.5",
    "VOLUME, gal, 1, 3.785411784",
    "VOLUME, gal, 231, 874.430122104",
    "VOLUME, qt, 4, 3.785411784",
    "AREA, ft2, 100, 9.290304",
    "TEMPERATURE, f, 14, -10",
    "TEMPERATURE, f, 212, 100",
    "TEMPERATURE, c, -7.5, -7.5",
    "DIFFERENCE, f, 9, 5",
    "DIFFERENCE, c, 2, 2"
  })
  void convertsUnitsExactly(Quantity quantity, String key, double written, double ours) {
    Quantity.Unit unit = quantity.spelled(key).orElseThrow();
    assertEquals(ours, unit.toOurs(written), 1e-9);
    assertEquals(written, unit.fromOurs(ours), 1e-9);
  }

  @Test
  void aGallonIs231CubicInches() {
    double inchCm = Quantity.LENGTH.spelled("in").orElseThrow().factor();
    double gallonL = Quantity.VOLUME.spelled("gal").orElseThrow().factor();
    assertEquals(231 * Math.pow(inchCm, 3) / 1000, gallonL, 1e-12);
  }
}
