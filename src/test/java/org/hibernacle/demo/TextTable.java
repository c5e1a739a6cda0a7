package org.hibernacle.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernacle.model.SheetTable;

/**
 * Turns a table typed as text into a sheet: one line a row, cells parted by {@code |}, the headings
 * first. A cell that reads as a number or an ISO date becomes one; trailing empty cells may be left
 * out.
 */
final class TextTable {
  private TextTable() {}

  /** A sheet with the headings of the text. */
  static SheetTable sheet(String name, String text) {
    List<Map<String, String>> rows = rows(text);
    List<String> headings = split(text.strip().lines().findFirst().orElseThrow());
    return sheet(name, headings, rows);
  }

  /** A sheet with other headings than the text, each row a map from heading to cell. */
  static SheetTable sheet(String name, List<String> headings, List<Map<String, String>> rows) {
    List<List<Object>> cells = new ArrayList<>();
    for (Map<String, String> row : rows) {
      for (String heading : row.keySet()) {
        if (!headings.contains(heading)) {
          throw new IllegalArgumentException(name + ": no column \"" + heading + "\" for " + row);
        }
      }
      cells.add(headings.stream().map(h -> value(row.getOrDefault(h, ""))).toList());
    }
    return new SheetTable(name, headings, cells);
  }

  /** The rows of the text as maps from its headings, empty cells left out. */
  static List<Map<String, String>> rows(String text) {
    List<String> lines = text.strip().lines().toList();
    List<String> headings = split(lines.get(0));
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      List<String> cells = split(line);
      if (cells.size() > headings.size()) {
        throw new IllegalArgumentException("more cells than headings: " + line);
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        if (!cells.get(i).isEmpty()) {
          row.put(headings.get(i), cells.get(i));
        }
      }
      rows.add(row);
    }
    return rows;
  }

  private static List<String> split(String line) {
    return Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
  }

  private static Object value(String text) {
    if (text.matches("-?\\d+(\\.\\d+)?")) {
      return Double.valueOf(text);
    }
    return text.matches("\\d{4}-\\d\\d-\\d\\d") ? LocalDate.parse(text) : text;
  }
}
