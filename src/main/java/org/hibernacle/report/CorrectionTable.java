package org.hibernacle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernacle.review.Correction;
import org.hibernacle.review.Correction.LaterMove;
import org.hibernacle.review.Correction.PlaceWarmth;
import org.hibernacle.review.Correction.RootLimit;

/** What to change before the next season is planned. */
final class CorrectionTable {
  private CorrectionTable() {}

  static Section write(ReviewMaterial m) {
    boolean none = m.review().corrections().isEmpty();
    Table table =
        new Table(m.words(), "corrections", Table.EVERYWHERE)
            .intro(m.words().text(none ? "intro.corrections.none" : "intro.corrections"))
            .column("correction-kind", 18)
            .column("correction-of", 26)
            .column("so-far", 14)
            .column("proposed", 14)
            .entry(
                "decision",
                12,
                Section.Entry.choice(
                    List.of(m.words().text("decision.accept"), m.words().text("decision.refuse"))))
            .wordsColumn("reason", 80);
    Map<List<Object>, List<LaterMove>> later = new LinkedHashMap<>();
    for (Correction correction : m.review().corrections()) {
      if (correction instanceof LaterMove move) {
        List<Object> alike = List.of(move.kind(), move.planned(), move.proposed());
        later.computeIfAbsent(alike, k -> new ArrayList<>()).add(move);
      } else {
        table.row(StyleRole.PLAIN, cells(m, correction));
      }
    }
    later.values().forEach(moves -> table.row(StyleRole.PLAIN, cells(m, moves)));
    return table.build();
  }

  /** Moves of one day that could have come on one later day. */
  private static List<Cell> cells(ReviewMaterial m, List<LaterMove> alike) {
    LaterMove first = alike.stream().min(Comparator.comparing(LaterMove::dangerFrom)).orElseThrow();
    String ids = alike.stream().map(LaterMove::id).collect(m.words().listing());
    return cells(
        m,
        "later",
        m.words().text("correction.move-of", m.words().of("move", first.kind()), ids),
        new Cell.Day(first.planned(), true),
        new Cell.Day(first.proposed(), true),
        reason(m, first));
  }

  private static List<Cell> cells(ReviewMaterial m, Correction correction) {
    if (correction instanceof RootLimit c) {
      return cells(
          m,
          "root-limit",
          c.taxon(),
          m.measures().temperatureWithUnit(c.oldC()),
          m.measures().temperatureWithUnit(c.proposedC()),
          reason(m, c));
    } else if (correction instanceof PlaceWarmth c) {
      return cells(
          m,
          "warmth",
          c.place(),
          m.measures().differenceWithUnit(c.oldWarmerByK()),
          m.measures().differenceWithUnit(c.proposedWarmerByK()),
          reason(m, c));
    }
    throw new IllegalArgumentException("no words for " + correction);
  }

  private static List<Cell> cells(
      ReviewMaterial m, String kind, String of, Cell soFar, Cell proposed, String reason) {
    return List.of(
        new Cell.Text(m.words().text("correction." + kind)),
        new Cell.Text(of),
        soFar,
        proposed,
        new Cell.Gap(),
        new Cell.Text(reason));
  }

  static String reason(ReviewMaterial m, RootLimit c) {
    String survived =
        m.words().text("correction.survived", c.survivedBelow(), degrees(m, c.coldestSurvivedC()));
    String harmed =
        m.words().text("correction.harmed", c.harmedAbove(), degrees(m, c.warmestHarmedC()));
    String both = c.survivedBelow() > 0 && c.harmedAbove() > 0 ? "both" : "one";
    String told = c.survivedBelow() > 0 ? survived : harmed;
    return m.words().text("correction.reason." + both, told, harmed);
  }

  private static String degrees(ReviewMaterial m, double celsius) {
    return Double.isNaN(celsius) ? "" : m.measures().temperature(celsius);
  }

  static String reason(ReviewMaterial m, PlaceWarmth c) {
    return m.words()
        .text(
            c.meanErrorK() > 0 ? "correction.too-warm" : "correction.too-cold",
            m.display().number(c.hours(), 0),
            m.measures().difference(Math.abs(c.meanErrorK())));
  }

  private static String reason(ReviewMaterial m, LaterMove c) {
    boolean never = !m.review().season().contains(c.dangerFrom());
    return m.words()
        .text(
            never ? "correction.never-needed" : "correction.needed-later",
            m.display().pastDay(c.dangerFrom()));
  }
}
