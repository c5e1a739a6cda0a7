package org.hibernacle.model;

import static org.hibernacle.CheckTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Checked against the published table of half zones; {@code SOURCES.md} tells its origin. */
class HardinessZoneTest {
  private static final List<CSVRecord> TABLE = CheckTable.rows("usda_zones");

  @Test
  void coldEndsAreThoseOfThePublishedTable() {
    assertEquals(26, TABLE.size());
    for (CSVRecord row : TABLE) {
      HardinessZone zone = HardinessZone.parse(row.get("zone"));
      assertEquals(row.get("zone"), zone.toString());
      assertEquals(number(row, "min_C_exact"), zone.coldEndC(), 1e-6, row.get("zone"));
      assertEquals(number(row, "min_C_published"), zone.coldEndC(), 0.05 + 1e-9, row.get("zone"));
    }
  }

  @Test
  void eachHalfZoneBeginsWhereTheColderOneEnds() {
    for (int i = 1; i < TABLE.size(); i++) {
      double coldEndC = HardinessZone.parse(TABLE.get(i).get("zone")).coldEndC();
      assertEquals(number(TABLE.get(i - 1), "max_C_exact"), coldEndC, 1e-6);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0a", "14a", "5", "5c", "", "a5", "05a"})
  void refusesWhatIsNoZone(String text) {
    assertThrows(IllegalArgumentException.class, () -> HardinessZone.parse(text));
  }

  @Test
  void readsCapitalsAndSpaces() {
    assertEquals(new HardinessZone(13, true), HardinessZone.parse(" 13B "));
  }
}
