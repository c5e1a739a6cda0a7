package org.hibernacle.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;
import org.junit.jupiter.api.Test;

/** Wilson's interval; checks/SOURCES.md says where the figures come from. */
class ProportionTest {
  @Test
  void agreesWithNewcombesExamples() {
    List<CSVRecord> rows = CheckTable.rows("wilson_interval_95");
    assertEquals(11, rows.size());
    for (CSVRecord row : rows) {
      int successes = Integer.parseInt(row.get("successes"));
      Proportion p = Proportion.of(successes, Integer.parseInt(row.get("n")));
      assertEquals(CheckTable.number(row, "lower"), p.low(), 1e-7, row.toString());
      assertEquals(CheckTable.number(row, "upper"), p.high(), 1e-7, row.toString());
      assertTrue(p.low() >= 0 && p.high() <= 1, row.toString());
    }
  }

  @Test
  void isAShare() {
    assertEquals(0.25, Proportion.of(1, 4).share());
  }
}
