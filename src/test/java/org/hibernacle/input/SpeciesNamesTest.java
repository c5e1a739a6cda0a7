package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Group;
import org.hibernacle.model.Light;
import org.hibernacle.model.Species;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesNamesTest {
  private static final SpeciesCatalogue TABLE = SpeciesCatalogue.builtIn();

  private static SpeciesMatch.Named named(String name) {
    return assertInstanceOf(SpeciesMatch.Named.class, TABLE.match(name), name);
  }

  private static SpeciesMatch.GenusOnly genus(String name) {
    return assertInstanceOf(SpeciesMatch.GenusOnly.class, TABLE.match(name), name);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {
        "acer PALMATUM, Acer palmatum",
        "  Acer   palmatum , Acer palmatum",
        "Acer-palmatum, Acer palmatum",
        "Acer polymorphum, Acer palmatum",
        "Japanese maple, Acer palmatum",
        "japanese-maple, Acer palmatum",
        "JapaneseMaple, Acer palmatum",
        "Momiji, Acer palmatum",
        "Taxus x media, Taxus × media",
        "Taxus X media, Taxus × media",
        "Taxus media, Taxus × media",
        "Taxus ×media, Taxus × media",
        "x Citrofortunella microcarpa, Citrus × microcarpa",
        "Acer ginnala, Acer tataricum subsp. ginnala",
        "Acer tataricum ssp ginnala, Acer tataricum subsp. ginnala",
        "rhododendron purple gem, Rhododendron 'Purple Gem'",
        "Pìcea ábies, Picea abies",
        "Schefflera, Heptapleurum arboricola",
        "Ficus retusa, Ficus microcarpa",
        "Zanthoxylum piperitum, Zanthoxylum piperitum"
      })
  void findsAScientificOlderOrCommonName(String written, String taxon) {
    assertEquals(taxon, named(written).species().taxon());
    assertEquals("", named(written).cultivar());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {
        "Acer palmatum 'Deshojo', Acer palmatum, Deshojo",
        "Acer palmatum Deshojo, Acer palmatum, Deshojo",
        "Acer palmatum ‘Arakawa’, Acer palmatum, Arakawa",
        "acer palmatum \"Shindeshojo\", Acer palmatum, Shindeshojo",
        "Acer palmatum cv. Seigen, Acer palmatum, Seigen",
        "Juniperus chinensis 'Blue Alps', Juniperus chinensis, Blue Alps",
        "Acer polymorphum 'Deshojo', Acer palmatum, Deshojo",
        "Japanese maple 'Deshojo', Acer palmatum, Deshojo"
      })
  void keepsACultivarThatStandsBehindTheName(String written, String taxon, String cultivar) {
    assertEquals(new SpeciesMatch.Named(named(taxon).species(), cultivar, false), named(written));
  }

  @Test
  void theLongestNameWins() {
    assertEquals(
        "Acer palmatum Dissectum Group",
        named("Acer palmatum var. dissectum 'Ornatum'").species().taxon());
    assertEquals("Ornatum", named("Acer palmatum Dissectum Group 'Ornatum'").cultivar());
  }

  @Test
  void aCultivarWithARowOfItsOwnTakesItWithinTheGenus() {
    SpeciesMatch.Named kurume = named("Rhododendron 'Hinodegiri'");
    assertEquals("Rhododendron Kurume Group", kurume.species().taxon());
    assertTrue(kurume.byCultivar());
    // The same word names a row of maples; a spruce so called must not become one.
    assertEquals("Picea abies", named("Picea abies 'Katsura'").species().taxon());
  }

  @Test
  void anUnquotedWordBehindACommonNameMakesAnotherName() {
    assertInstanceOf(SpeciesMatch.Unknown.class, TABLE.match("apple mint"));
    assertInstanceOf(SpeciesMatch.Unknown.class, TABLE.match("lemon verbena"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Acer", "acer sp.", "ACER SPP", "Acer species"})
  void aGenusStandsForAllItsRows(String written) {
    List<Species> maples =
        TABLE.species().stream().filter(s -> s.taxon().startsWith("Acer ")).toList();
    SpeciesMatch.GenusOnly acer = genus(written);
    assertEquals(maples.stream().map(Species::taxon).toList(), acer.standingFor());
    assertEquals("Acer sp.", acer.cautious().taxon());
    for (Species maple : maples) {
      assertTrue(acer.cautious().rootLimitC() >= maple.rootLimitC());
      assertTrue(acer.cautious().unhardenedLimitC() >= maple.unhardenedLimitC());
      assertTrue(acer.cautious().newGrowthLimitC() >= maple.newGrowthLimitC());
      assertTrue(acer.cautious().zone().coldEndC() >= maple.zone().coldEndC());
      assertTrue(acer.cautious().minStoreC() >= maple.minStoreC());
    }
    assertTrue(acer.cautious().rootLimitIsEstimate());
  }

  @ParameterizedTest
  @CsvSource({
    "hardy conifer, HARDY_CONIFER",
    "hardy-conifers, HARDY_CONIFER",
    "Tropical, TROPICAL",
    "tender rooted hardy, TENDER_ROOTED_HARDY"
  })
  void aGroupStandsForAllItsRows(String written, Group group) {
    assertEquals(group, genus(written).cautious().group());
    assertEquals(
        TABLE.species().stream().filter(s -> s.group() == group).count(),
        genus(written).standingFor().size());
  }

  @Test
  void oneWarmClimateSpeciesDoesNotKeepAWholeGenusFromItsColdRest() {
    Species pine = genus("Pinus sp.").cautious();
    Species aleppo = named("Pinus halepensis").species();
    assertEquals(Group.HARDY_CONIFER, pine.group());
    assertEquals(aleppo.rootLimitC(), pine.rootLimitC());
    assertTrue(pine.maxStoreC() < aleppo.maxStoreC());
  }

  @Test
  void aGenusIsNeverShownAsSafeUnlessAllItsRowsAre() {
    assertEquals(Species.Toxicity.YES, genus("Juniperus").cautious().toxic());
    assertEquals(Species.Toxicity.UNKNOWN, genus("Ulmus").cautious().toxic());
  }

  @Test
  void everyGenusAndGroupGivesASoundRow() {
    for (Species row : TABLE.species()) {
      String first = row.taxon().split(" ", -1)[0];
      if (TABLE.match(first) instanceof SpeciesMatch.GenusOnly genus) {
        Species cautious = genus.cautious();
        assertTrue(cautious.minStoreC() < cautious.maxStoreC(), first);
        boolean dark = cautious.lightInStore() == Light.DARK;
        assertTrue(!dark || cautious.foliage() == Foliage.DECIDUOUS, first);
      }
    }
  }

  @Test
  void aCommonNameOfTwoTaxaIsUnknownWithBoth() {
    Species maple = named("Acer palmatum").species();
    SpeciesCatalogue own =
        TABLE.with(
            List.of(
                renamed(maple, "Acer primum", "valley maple"),
                renamed(maple, "Acer secundum", "Valley Maple")));
    assertEquals(
        new SpeciesMatch.Unknown(List.of("Acer primum", "Acer secundum")),
        own.match("valley maple"));
  }

  @Test
  void everyNameOfTheTableLeadsSomewhereSensible() {
    Map<String, String> taxonOf = new HashMap<>();
    for (Species row : TABLE.species()) {
      assertEquals(row, named(row.taxon()).species());
      taxonOf.put(row.taxon(), row.taxon());
    }
    for (Species row : TABLE.species()) {
      for (String synonym : row.synonyms()) {
        assertEquals(row.taxon(), named(synonym).species().taxon(), synonym);
      }
      for (String name : row.commonNames()) {
        assertTrue(!(TABLE.match(name) instanceof SpeciesMatch.GenusOnly), name);
      }
    }
  }

  @Test
  void aMisspeltNameBringsTheRightOneFirst() {
    for (String[] pair :
        new String[][] {
          {"Acer plamatum", "Acer palmatum"},
          {"Pinus silvestris", "Pinus sylvestris"},
          {"Itoigawa", "Juniperus chinensis"},
          {"japanse larch", "Larix kaempferi"}
        }) {
      SpeciesMatch.Unknown unknown =
          assertInstanceOf(SpeciesMatch.Unknown.class, TABLE.match(pair[0]));
      assertEquals(pair[1], unknown.nearest().get(0), pair[0]);
      assertTrue(unknown.nearest().size() <= 3);
    }
    assertEquals(new SpeciesMatch.Unknown(List.of()), TABLE.match("qqqqqqqqqqqq"));
    assertEquals(new SpeciesMatch.Unknown(List.of()), TABLE.match("---"));
  }

  private static Species renamed(Species of, String taxon, String commonName) {
    return new Species(
        taxon,
        List.of(),
        List.of(commonName),
        of.group(),
        of.foliage(),
        of.zone(),
        of.rootKill(),
        of.rootLimitC(),
        of.rootLimitBasis(),
        of.unhardenedLimitC(),
        of.newGrowthLimitC(),
        of.chillNeed(),
        of.chillPortionsLow(),
        of.chillPortionsHigh(),
        of.minStoreC(),
        of.maxStoreC(),
        of.lightInStore(),
        of.keepDry(),
        of.dryingRisk(),
        of.toxic(),
        of.toxicSource(),
        of.notes(),
        of.sources(),
        false);
  }
}
