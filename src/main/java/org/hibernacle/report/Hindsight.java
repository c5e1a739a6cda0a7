package org.hibernacle.report;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.planning.WinterJudged;

/** How plans made without a winter would have fared in it, as a table for a screen. */
public final class Hindsight {
  private static final int WINTER_WIDTH = 10;
  private static final int WIDTH = 16;

  private Hindsight() {}

  /** A heading, one line a winter, a line for all. */
  public static List<String> write(List<WinterJudged> winters, Words words) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("hindsight.title"));
    StringBuilder heading = new StringBuilder(left(words.text("column.winter")));
    for (String column : List.of("margin", "limit", "away", "needless")) {
      heading.append(right(words.text("hindsight." + column)));
    }
    lines.add(heading.toString());
    int[] all = new int[4];
    int pots = 0;
    for (WinterJudged w : winters) {
      int[] counts = {w.marginBroken(), w.limitBroken(), w.nightsAway(), w.needlessNights()};
      lines.add(row(w.winter().toString(), counts));
      for (int i = 0; i < all.length; i++) {
        all[i] += counts[i];
      }
      pots += w.pots();
    }
    lines.add(row(words.text("hindsight.all"), all));
    lines.add(words.text("hindsight.pots", pots));
    return lines;
  }

  private static String row(String winter, int[] counts) {
    StringBuilder row = new StringBuilder(left(winter));
    for (int count : counts) {
      row.append(right(Integer.toString(count)));
    }
    return row.toString();
  }

  private static String left(String text) {
    return text + " ".repeat(Math.max(0, WINTER_WIDTH - text.length()));
  }

  private static String right(String text) {
    return " ".repeat(Math.max(1, WIDTH - text.length())) + text;
  }
}
