package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hibernacle.input.TestBook.Reading;
import org.hibernacle.model.Group;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;

class OwnSpeciesRowsTest {
  private static final Species MAPLE =
      SpeciesCatalogue.builtIn().row("Acer palmatum").orElseThrow();

  private static Reading planting(String name, String headings, Object... values) {
    return TestBook.least()
        .plants("Id|Species|Home|Volume L", "A1", name, "Bench", 5)
        .sheet("Species", headings, values)
        .read();
  }

  private static Species species(Reading reading) {
    return reading.sound().plants().get(0).species();
  }

  @Test
  void oneFigureOfOneTaxonCanBeCorrected() {
    Reading reading =
        planting("Japanese maple", "taxon|root_limit_estimate_c", "acer PALMATUM", -6.5);
    Species own = species(reading);
    assertEquals(-6.5, own.rootLimitC());
    assertEquals("own", own.rootLimitBasis());
    assertTrue(own.rootLimitIsEstimate());
    assertFalse(own.builtIn());
    assertEquals(MAPLE.taxon(), own.taxon());
    assertEquals(MAPLE.unhardenedLimitC(), own.unhardenedLimitC());
    assertEquals(MAPLE.commonNames(), own.commonNames());
    assertEquals(MAPLE.rootKill(), own.rootKill());
    assertTrue(own.sources().contains("own"));
    assertEquals(
        "NOTE inventory.xlsx, sheet Species [IN-204]: own figures for Acer palmatum; used in place"
            + " of the built-in ones: root_limit_estimate.\n",
        reading.text("IN-204"));
  }

  @Test
  void figuresMayBeFahrenheit() {
    Species own =
        species(
            planting(
                "momiji", "Taxon|Root limit estimate °F|Min store F", "Acer palmatum", 14, 32));
    assertEquals(-10, own.rootLimitC(), 1e-12);
    assertEquals(0, own.minStoreC(), 1e-12);
  }

  @Test
  void aNewTaxonIsAdded() {
    Reading reading =
        planting(
            "Example tree",
            "taxon|common_names|group|evergreen|usda_zone_min|root_limit_estimate_c"
                + "|unhardened_limit_c|new_growth_limit_c|chill_need|min_store_c|max_store_c"
                + "|light_in_store",
            "Exemplum inventum",
            "example tree; other tree",
            "hardy-deciduous",
            "no",
            "6a",
            -6,
            -2,
            -1,
            "medium",
            -3,
            5,
            "dark-ok");
    Species own = species(reading);
    assertEquals("Exemplum inventum", own.taxon());
    assertEquals(List.of("example tree", "other tree"), own.commonNames());
    assertEquals(Group.HARDY_DECIDUOUS, own.group());
    assertEquals(Species.Toxicity.UNKNOWN, own.toxic());
    assertTrue(reading.text("IN-204").contains("is not in the built-in table; it is added"));
  }

  @Test
  void aNewTaxonNeedsItsFigures() {
    Reading reading = planting("ume", "taxon|root_limit_estimate_c", "Exemplum inventum", -6);
    String errors = reading.text("IN-129");
    assertEquals(9, errors.lines().count(), errors);
    assertTrue(
        errors.contains(
            "sheet Species, row 2 [IN-129]: group is empty; expected a value, for the built-in"
                + " table has no row to take it from; nothing was written."),
        errors);
  }

  @Test
  void figuresThatContradictEachOtherAreAnError() {
    Reading limit = planting("ume", "taxon|root_limit_estimate_c", "Acer palmatum", 3);
    assertTrue(
        limit
            .text("IN-203")
            .contains(
                "B2 [IN-203]: root_limit_estimate_c \"3\"; expected"
                    + " root_limit_estimate to be at or below the unhardened limit"),
        limit::text);
    Reading store = planting("ume", "taxon|min_store_c", "Acer palmatum", 20);
    assertTrue(store.text("IN-203").contains("B2 [IN-203]: min_store_c \"20\""), store::text);
  }

  @Test
  void evidenceNeedsToSayWhatWasSeen() {
    Reading reading = planting("ume", "taxon|root_kill_c", "Acer palmatum", -12);
    assertTrue(
        reading.text("IN-129").contains("root_kill_relation is empty; expected one of kills, lt50"),
        reading::text);
  }

  @Test
  void aTaxonStandsOnce() {
    Reading reading = planting("ume", "taxon|min_store_c", "Acer palmatum", 0, "Acer  Palmatum", 1);
    assertTrue(
        reading.text("IN-130").contains("A3 [IN-130]: taxon \"Acer Palmatum\""), reading::text);
  }

  @Test
  void anEmptySheetChangesNothing() {
    assertEquals(MAPLE, species(planting("momiji", "taxon|min_store_c")));
  }
}
