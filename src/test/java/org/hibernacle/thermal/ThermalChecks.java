package org.hibernacle.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.hibernacle.CheckTable;

/** Rows of checks/thermal.csv; see checks/SOURCES.md for where they come from. */
final class ThermalChecks {
  private ThermalChecks() {}

  /**
   * The rows of one group whose case starts with a prefix.
   *
   * @param count how many there must be, so that no check is lost unseen
   */
  static List<CSVRecord> rows(String group, String prefix, int count) {
    List<CSVRecord> rows =
        CheckTable.rows("thermal").stream()
            .filter(row -> row.get("group").equals(group) && row.get("case").startsWith(prefix))
            .toList();
    assertEquals(count, rows.size(), group + " " + prefix);
    return rows;
  }

  /** The one row of that case. */
  static CSVRecord row(String group, String name) {
    return rows(group, name, 1).get(0);
  }

  static double expected(CSVRecord row) {
    return CheckTable.number(row, "expected");
  }

  /** The number after {@code name=} among the inputs. */
  static double input(CSVRecord row, String name) {
    Matcher m =
        Pattern.compile("(?:^|[; ])" + name + "=(-?[0-9.]+(?:e-?[0-9]+)?)")
            .matcher(row.get("inputs"));
    if (!m.find()) {
      throw new IllegalArgumentException("no " + name + " in " + row);
    }
    return Double.parseDouble(m.group(1));
  }
}
