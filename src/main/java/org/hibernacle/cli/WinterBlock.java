package org.hibernacle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.climate.WinterSummary.Frosts;

/** One winter as lines of text. */
final class WinterBlock {
  private WinterBlock() {}

  static List<String> lines(WinterSummary winter, WinterFitness fitness) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Winter "
            + winter.season()
            + ", "
            + winter.season().start()
            + " to "
            + winter.season().endExclusive().minusDays(1));
    lines.add(
        line("coldest night", number(winter.coldestNightC()) + " °C on " + winter.coldestNight()));
    for (Frosts frosts : winter.frosts()) {
      lines.add(line("at or below " + threshold(frosts.thresholdC()) + " °C", words(frosts)));
    }
    lines.add(line("longest run below 0 °C", nights(winter.longestFrostRunDays())));
    lines.add(line("missing days", winter.missingDays() + " of " + winter.season().days()));
    lines.add(
        line(
            "chill and warmth",
            winter.window().fromInclusive()
                + " to "
                + winter.window().toExclusive().minusDays(1)
                + ", "
                + winter.windowMissingDays()
                + " days missing"));
    lines.add(line("  chilling hours", Math.round(winter.chillingHours()) + " h"));
    lines.add(line("  Utah units", number(winter.utahUnits())));
    lines.add(line("  chill portions", number(winter.chillPortions())));
    lines.add(line("  growing degree hours", number(winter.growingDegreeHours()) + " K·h"));
    String extra = fitness.words().isEmpty() ? "" : ": " + fitness.words();
    lines.add(line("for planning", (fitness.usable() ? "complete" : "not complete") + extra));
    return lines;
  }

  /** {@code 0}, {@code -2.2}, {@code -5}, {@code -10}. */
  static String threshold(double thresholdC) {
    return number(thresholdC).replace(".0", "");
  }

  /** To one decimal, with a point. */
  static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value + 0.0);
  }

  private static String words(Frosts frosts) {
    return frosts.first().isEmpty() || frosts.last().isEmpty()
        ? "none"
        : nights(frosts.days()) + ", " + frosts.first().get() + " to " + frosts.last().get();
  }

  private static String nights(int count) {
    return count == 1 ? "1 night" : count + " nights";
  }

  /** A name and, in its column, a value. */
  static String line(String name, String value) {
    return "  " + name + " ".repeat(Math.max(1, 26 - name.length())) + value;
  }
}
