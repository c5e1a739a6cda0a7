package org.hibernacle.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.model.HardinessZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The built-in table as a grower would check it, read as plain text. */
class SpeciesTableTest {
  private static final Path TABLE = Path.of("src/main/resources/species.csv");
  private static final Path SOURCES = Path.of("docs/sources.md");

  private final List<CSVRecord> rows = read();

  @Test
  void holds150TaxaEachOnce() {
    Set<String> taxa = new HashSet<>();
    rows.forEach(row -> assertTrue(taxa.add(row.get("taxon")), row.get("taxon")));
    assertEquals(150, taxa.size());
  }

  @Test
  void noNameLeadsToTwoTaxa() {
    Map<String, String> taxonOf = new HashMap<>();
    for (CSVRecord row : rows) {
      Set<String> names = new HashSet<>(list(row, "synonyms"));
      names.addAll(list(row, "common_names"));
      names.add(row.get("taxon"));
      for (String name : names) {
        String other = taxonOf.put(name.toLowerCase(Locale.ROOT), row.get("taxon"));
        assertNull(other, name);
      }
    }
  }

  /** Common practice, no source: a limit is a place to stop before damage, not after it. */
  @Test
  void noLimitIsColderThanTheFigureOnRootDeathBesideIt() {
    for (CSVRecord row : rows) {
      if (!row.get("root_kill_c").isEmpty() && !row.get("root_kill_relation").equals("survives")) {
        assertTrue(number(row, "root_limit_estimate_c") >= number(row, "root_kill_c"), name(row));
      }
    }
  }

  @Test
  void limitsAndStoresAreInOrder() {
    for (CSVRecord row : rows) {
      double limitC = number(row, "root_limit_estimate_c");
      assertTrue(limitC <= number(row, "unhardened_limit_c"), name(row));
      assertTrue(number(row, "min_store_c") >= limitC + 2, name(row));
      assertTrue(number(row, "max_store_c") > number(row, "min_store_c"), name(row));
      HardinessZone zone = HardinessZone.parse(row.get("usda_zone_min"));
      assertEquals(row.get("usda_zone_min"), zone.toString());
      assertTrue(limitC > zone.coldEndC(), name(row) + ": roots stand less than tops");
    }
  }

  /** The line of docs/species.md, "How the limits were estimated". */
  @Test
  void zoneFitLimitsLieOnTheLine() {
    for (CSVRecord row : rows) {
      if (row.get("estimate_basis").equals("rule:zone-fit")) {
        double coldEndC = HardinessZone.parse(row.get("usda_zone_min")).coldEndC();
        double lineC = Math.max(-13, Math.min(-5, 9.5 + 0.73 * coldEndC + 2.5));
        assertEquals(lineC, number(row, "root_limit_estimate_c"), 0.5, name(row));
      }
    }
  }

  @Test
  void onlyLeaflessPlantsMayStandInTheDark() {
    for (CSVRecord row : rows) {
      assertEquals(
          row.get("evergreen").equals("no"),
          row.get("light_in_store").equals("dark-ok"),
          name(row));
    }
  }

  @Test
  void harmlessIsNeverSaidWithoutASource() {
    for (CSVRecord row : rows) {
      String source = row.get("toxic_source");
      switch (row.get("toxic_to_pets_or_people")) {
        case "yes" -> assertFalse(source.isEmpty(), name(row));
        case "no" -> assertFalse(source.isEmpty() || source.equals("memory"), name(row));
        default -> assertEquals("", source, name(row));
      }
    }
  }

  @Test
  void everyKeyIsInTheSourceList() throws IOException {
    String sources = Files.readString(SOURCES);
    for (CSVRecord row : rows) {
      assertFalse(row.get("sources").isEmpty(), name(row));
      for (String column : List.of("sources", "root_kill_source", "toxic_source")) {
        for (String key : list(row, column)) {
          assertTrue(key.equals("memory") || sources.contains("`" + key + "`"), name(row) + key);
        }
      }
    }
  }

  /**
   * Figures stated in the sources themselves, °F turned into °C by hand: lindstrom1994, bigras1996,
   * mityga1971, coleman1992, moran2011 (abstracts); wapo1980 (2 °F), reid1983 (10, 15 and -10 °F),
   * mathers-quote (9 °F). See docs/sources.md.
   */
  @ParameterizedTest
  @CsvSource({
    "Pinus sylvestris, -20, survives",
    "Picea abies, -25, survives",
    "Picea mariana, -30, survives",
    "Taxus cuspidata, -29, survives",
    "Abies lasiocarpa, -11.5, lt50",
    "Pinus contorta, -7.5, lt50",
    "Malus domestica, -12, lt50",
    "Pyracantha coccinea, -16.7, kills",
    "Rhododendron Kurume Group, -12.2, kills",
    "Rhododendron 'Purple Gem', -9.4, kills",
    "Rhododendron PJM Group, -23.3, kills",
    "Ilex opaca, -12.8, kills",
  })
  void figuresOnRootDeathAreThoseOfTheSources(String taxon, double killC, String relation) {
    CSVRecord row = rows.stream().filter(r -> name(r).equals(taxon)).findFirst().orElseThrow();
    assertEquals(killC, number(row, "root_kill_c"), 1e-9);
    assertEquals(relation, row.get("root_kill_relation"));
  }

  private static String name(CSVRecord row) {
    return row.get("taxon");
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private static List<String> list(CSVRecord row, String column) {
    return row.get(column).isEmpty() ? List.of() : List.of(row.get(column).split(";"));
  }

  private static List<CSVRecord> read() {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(Files.newBufferedReader(TABLE), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
