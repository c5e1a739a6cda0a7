package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Group;
import org.hibernacle.model.Light;
import org.hibernacle.model.Species;
import org.hibernacle.model.Species.RootKill;
import org.hibernacle.model.Species.RootKill.Relation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The built-in table: whether its rows are possible, and agree with what was published. */
class SpeciesCatalogueTest {
  private static final SpeciesCatalogue TABLE = SpeciesCatalogue.builtIn();

  static Stream<Species> rows() {
    return TABLE.species().stream();
  }

  private static Species row(String taxon) {
    return TABLE.row(taxon).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void figuresArePossible(Species s) {
    assertTrue(s.rootLimitC() >= -30 && s.rootLimitC() <= 12, s.taxon());
    assertTrue(s.unhardenedLimitC() >= -4 && s.unhardenedLimitC() <= 15, s.taxon());
    assertTrue(s.newGrowthLimitC() >= -5 && s.newGrowthLimitC() <= 12, s.taxon());
    assertTrue(s.minStoreC() >= -8 && s.maxStoreC() <= 28, s.taxon());
    assertTrue(s.minStoreC() >= s.rootLimitC(), s.taxon() + " is stored below its root limit");
    assertTrue(s.builtIn());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void everyRowNamesItsSourcesAndABasis(Species s) {
    assertFalse(s.sources().isEmpty(), s.taxon());
    assertTrue(s.rootLimitBasis().matches("published|common-practice|rule:[\\w-]+"), s.taxon());
    assertFalse(s.notes().isBlank(), s.taxon());
    if (s.rootLimitBasis().equals("published")) {
      RootKill kill = s.rootKill().orElseThrow();
      assertFalse(kill.source().isBlank(), s.taxon());
    }
  }

  /** A figure at which roots died must not lie above the limit a plan keeps to. */
  @ParameterizedTest
  @MethodSource("rows")
  void theLimitIsNotColderThanAFigureThatKills(Species s) {
    s.rootKill()
        .filter(kill -> kill.relation() != Relation.SURVIVES)
        .ifPresent(kill -> assertTrue(s.rootLimitC() >= kill.killC(), s.taxon()));
    s.rootKill()
        .filter(kill -> kill.relation() == Relation.SURVIVES)
        .ifPresent(kill -> assertTrue(s.rootLimitC() > kill.killC(), s.taxon()));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void limitsFitTheGroup(Species s) {
    if (s.group() == Group.TROPICAL) {
      assertTrue(s.rootLimitC() > 0 && s.newGrowthLimitC() > 0 && s.minStoreC() > 5, s.taxon());
      assertTrue(s.unhardenedLimitC() > s.rootLimitC(), s.taxon());
    }
    if (s.group().restsCold()) {
      assertTrue(s.rootLimitC() < s.unhardenedLimitC() && s.unhardenedLimitC() < 0, s.taxon());
      assertTrue(s.maxStoreC() <= 10, s.taxon());
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void onlyLeaflessPlantsMayStandInTheDark(Species s) {
    assertTrue(s.lightInStore() != Light.DARK || s.foliage() == Foliage.DECIDUOUS, s.taxon());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void aPoisonVerdictHasASource(Species s) {
    boolean verdict = s.toxic() != Species.Toxicity.UNKNOWN;
    assertEquals(verdict, !s.toxicSource().isBlank(), s.taxon());
  }

  @Test
  void eachTaxonStandsOnceHoweverItIsWritten() {
    Set<String> keys = new HashSet<>();
    for (Species s : TABLE.species()) {
      assertTrue(keys.add(SpeciesNames.key(s.taxon())), s.taxon());
    }
    assertTrue(keys.size() >= 150);
  }

  // Mature roots of 'Atropurpureum' killed at -10 °C: table quoted in a botanical garden's forum;
  // Pinus contorta -7.5 and Abies lasiocarpa -11.5 °C: Coleman, Hinckley, McNaughton and Smit 1992,
  // abstract; M.26 apple roots LT50 -12 to -14 °C: Moran et al. 2011, abstract; PJM rhododendron
  // -23.3 °C: Reid 1983; Ilex opaca mature -12.8 °C: quoted from Mathers.
  @Test
  void publishedFiguresStandAsPublished() {
    assertEquals(-10, kill("Acer palmatum Atropurpureum Group").killC());
    assertEquals(-7.5, kill("Pinus contorta").killC());
    assertEquals(Relation.LT50, kill("Pinus contorta").relation());
    assertEquals(-11.5, kill("Abies lasiocarpa").killC());
    assertEquals(-12, kill("Malus domestica").killC());
    assertEquals(-23.3, kill("Rhododendron PJM Group").killC());
    assertEquals(-12.8, kill("Ilex opaca").killC());
    assertEquals("mature", kill("Ilex opaca").kind());
  }

  private static RootKill kill(String taxon) {
    return row(taxon).rootKill().orElseThrow();
  }

  // Over half of the spruces lived at -25 and of the pines at -20 °C: Lindström and Stattin 1994,
  // abstract. Dark mature yew roots hardier than -29 °C: Mityga and Lanphear 1971, abstract.
  @Test
  void aFigureThatWasSurvivedIsABoundAndNoLimit() {
    for (String taxon : List.of("Picea abies", "Pinus sylvestris", "Taxus cuspidata")) {
      assertEquals(Relation.SURVIVES, kill(taxon).relation());
      assertTrue(kill(taxon).verified());
      assertTrue(row(taxon).rootLimitC() >= kill(taxon).killC() + 5, taxon);
    }
  }

  // Lethal root temperatures of 38 container ornamentals span -5 to -23.3 °C: Havis 1976, abstract.
  @Test
  void figuresFromTheOldestTableLieInItsSpan() {
    long rows =
        rows()
            .flatMap(s -> s.rootKill().stream())
            .filter(kill -> kill.source().contains("havis1976"))
            .peek(kill -> assertTrue(kill.killC() >= -23.3 && kill.killC() <= -5))
            .count();
    assertTrue(rows >= 10);
  }

  // Chill portions of Japanese apricot: 24 to 82 for 69 cultivars, Zhuang et al. 2016, abstract;
  // 'Golden Delicious' 50: table of chill needs, University of California, Davis.
  @Test
  void chillPortionsAreOneNumberOrARange() {
    assertEquals(OptionalDouble.of(24), row("Prunus mume").chillPortionsLow());
    assertEquals(OptionalDouble.of(82), row("Prunus mume").chillPortionsHigh());
    assertEquals(OptionalDouble.of(50), row("Malus domestica").chillPortionsLow());
    assertEquals(OptionalDouble.of(50), row("Malus domestica").chillPortionsHigh());
    assertTrue(row("Acer palmatum").chillPortionsLow().isEmpty());
  }

  @Test
  void aWrongRowIsReportedWithItsLine() throws IOException {
    Problems problems = new Problems();
    String text =
        "taxon,group,evergreen,usda_zone_min,root_limit_estimate_c,unhardened_limit_c,"
            + "new_growth_limit_c,chill_need,min_store_c,max_store_c,light_in_store\n"
            + "Exemplum primum,tropical,yes,11a,5,8,7,none,12,25,bright\n"
            + "Exemplum secundum,arctic,yes,14c,9,8,7,none,30,25,bright\n";
    List<Species> rows = SpeciesCatalogue.read(new StringReader(text), problems);
    assertEquals(List.of("Exemplum primum"), rows.stream().map(Species::taxon).toList());
    String errors = problems.sorted().toString();
    assertTrue(
        errors.contains(
            "species.csv, line 3, usda_zone_min [IN-122]: usda_zone_min \"14c\"; expected a zone"
                + " from 1a to 13b"),
        errors);
    assertTrue(errors.contains("group \"arctic\"; expected one of hardy-conifer,"), errors);
  }

  @Test
  void aTableWithAForeignColumnIsOurMistake() {
    StringReader text = new StringReader("taxon,height\nExemplum primum,3\n");
    assertThrows(IllegalStateException.class, () -> SpeciesCatalogue.read(text, new Problems()));
  }
}
