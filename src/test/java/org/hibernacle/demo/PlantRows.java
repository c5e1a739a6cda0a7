package org.hibernacle.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.model.SheetTable;

/**
 * The Plants sheet from a shorter notation, so that a plant fits on one line. Three columns of the
 * text stand for several of the sheet:
 *
 * <ul>
 *   <li>{@code Pot}: {@code rect 42x31x12 ceramic}, {@code round 30x14 plastic} (width and depth,
 *       cm), or {@code 60 L wood};
 *   <li>{@code Size}: height and spread in cm, {@code 72x64};
 *   <li>{@code More}: any other column, {@code Vigour=weak; Count=6}.
 * </ul>
 */
final class PlantRows {
  static final List<String> HEADINGS =
      List.of(
          "Id",
          "Label",
          "Species",
          "Cultivar",
          "Home",
          "Pot shape",
          "Length cm",
          "Width cm",
          "Depth cm",
          "Volume L",
          "Pot material",
          "Last root work",
          "Vigour",
          "Priority",
          "Value",
          "Root limit °C",
          "Stay in",
          "Not before",
          "Not after",
          "Count",
          "Height cm",
          "Spread cm",
          "Frost-proof pot",
          "Planned root work",
          "Rootstock",
          "Notes",
          "Came from");

  private static final Pattern POT =
      Pattern.compile("(?:rect (\\d+)x(\\d+)x(\\d+)|round (\\d+)x(\\d+)|(\\d+) L) ([a-z]+)");

  private PlantRows() {}

  /** The sheet that the text stands for. */
  static SheetTable sheet(String text) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Map<String, String> line : TextTable.rows(text)) {
      Map<String, String> row = new LinkedHashMap<>(line);
      putPot(row, row.remove("Pot"));
      String[] size = row.remove("Size").split("x");
      row.put("Height cm", size[0]);
      row.put("Spread cm", size[1]);
      String more = row.containsKey("More") ? row.remove("More") : "";
      for (String part : more.isEmpty() ? new String[0] : more.split(";")) {
        String[] pair = part.strip().split("=", 2);
        row.put(pair[0], pair[1]);
      }
      rows.add(row);
    }
    return TextTable.sheet("Plants", HEADINGS, rows);
  }

  private static void putPot(Map<String, String> row, String pot) {
    Matcher m = POT.matcher(pot);
    if (!m.matches()) {
      throw new IllegalArgumentException("pot \"" + pot + "\" of " + row);
    }
    row.put("Pot material", m.group(7));
    if (m.group(1) != null) {
      row.put("Pot shape", "rectangular");
      row.put("Length cm", m.group(1));
      row.put("Width cm", m.group(2));
      row.put("Depth cm", m.group(3));
    } else if (m.group(4) != null) {
      row.put("Pot shape", "round");
      row.put("Length cm", m.group(4));
      row.put("Width cm", m.group(4));
      row.put("Depth cm", m.group(5));
    } else {
      row.put("Pot shape", "round");
      row.put("Volume L", m.group(6));
    }
  }
}
