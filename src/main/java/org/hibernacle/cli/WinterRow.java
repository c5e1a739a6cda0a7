package org.hibernacle.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.climate.WinterSummary.Frosts;

/** One winter as a row for a spreadsheet. */
final class WinterRow {
  private WinterRow() {}

  static String headings() {
    List<String> cells =
        new ArrayList<>(
            List.of("Station", "Winter", "From", "To", "Coldest night (°C)", "Coldest night on"));
    for (double thresholdC : WinterSummary.THRESHOLDS_C) {
      String limit = " at or below " + WinterBlock.number(thresholdC).replace(".0", "") + " °C";
      cells.addAll(List.of("Nights" + limit, "First" + limit, "Last" + limit));
    }
    cells.addAll(
        List.of(
            "Longest run below 0 °C (nights)",
            "Missing days",
            "Chill and warmth from",
            "Chill and warmth to",
            "Missing days there",
            "Chilling hours (h)",
            "Utah units",
            "Chill portions",
            "Growing degree hours (K·h)",
            "Complete for planning",
            "Remark"));
    return joined(cells);
  }

  static String of(String station, WinterSummary winter, WinterFitness fitness) {
    List<String> cells = new ArrayList<>();
    cells.add(asText(station));
    cells.add(winter.season().toString());
    cells.add(winter.season().start().toString());
    cells.add(winter.season().endExclusive().minusDays(1).toString());
    cells.add(WinterBlock.number(winter.coldestNightC()));
    cells.add(winter.coldestNight().toString());
    for (Frosts frosts : winter.frosts()) {
      cells.add(Integer.toString(frosts.days()));
      cells.add(frosts.first().map(LocalDate::toString).orElse(""));
      cells.add(frosts.last().map(LocalDate::toString).orElse(""));
    }
    cells.add(Integer.toString(winter.longestFrostRunDays()));
    cells.add(Integer.toString(winter.missingDays()));
    cells.add(winter.window().fromInclusive().toString());
    cells.add(winter.window().toExclusive().minusDays(1).toString());
    cells.add(Integer.toString(winter.windowMissingDays()));
    cells.add(Long.toString(Math.round(winter.chillingHours())));
    cells.add(WinterBlock.number(winter.utahUnits()));
    cells.add(WinterBlock.number(winter.chillPortions()));
    cells.add(WinterBlock.number(winter.growingDegreeHours()));
    cells.add(fitness.usable() ? "yes" : "no");
    cells.add(fitness.words());
    return joined(cells);
  }

  /** A name that a spreadsheet program would take for a formula is made text by an apostrophe. */
  private static String asText(String name) {
    return name.matches("(?s)[=+@\\t\\r-].*") ? "'" + name : name;
  }

  private static String joined(List<String> cells) {
    return cells.stream().map(WinterRow::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
