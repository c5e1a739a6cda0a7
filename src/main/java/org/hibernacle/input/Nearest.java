package org.hibernacle.input;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.hibernacle.model.Phrase;

/** Finds the names a keeper may have meant. */
final class Nearest {
  /** Names less alike than this are no help. */
  private static final double FARTHEST = 0.4;

  private Nearest() {}

  /**
   * The offered names most like the wanted one, best first.
   *
   * @param wanted as written
   * @param offered names that exist
   * @param most how many to return
   */
  static List<String> of(String wanted, Collection<String> offered, int most) {
    Map<String, Double> likely = new TreeMap<>();
    for (String name : offered) {
      double distance = distance(wanted, name);
      if (distance <= FARTHEST) {
        likely.merge(name, distance, Math::min);
      }
    }
    return likely.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.naturalOrder()))
        .limit(most)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** A clause for a message: {@code (nearest: "a", "b")}; empty if there is nothing like it. */
  static Phrase clause(List<String> nearest) {
    return nearest.isEmpty()
        ? Phrase.verbatim("")
        : Phrase.of("nearest", nearest.stream().map(Phrase::quoted).toList());
  }

  /**
   * 0 for the same name to 1 for nothing in common: edits per letter of the longer name, a third of
   * that where they share a whole word of at least four letters.
   */
  static double distance(String wanted, String name) {
    Words a = Words.of(wanted);
    Words b = Words.of(name);
    int longest = Math.max(a.key().length(), b.key().length());
    if (longest == 0) {
      return 0;
    }
    boolean wordInCommon =
        a.words().stream()
            .filter(w -> w.key().length() >= 4)
            .anyMatch(w -> b.words().stream().anyMatch(v -> v.key().equals(w.key())));
    return edits(a.key(), b.key()) / (double) longest / (wordInCommon ? 3 : 1);
  }

  /** Fewest letters to put in, take out or exchange (Levenshtein 1966). */
  static int edits(String a, String b) {
    int[] row = IntStream.rangeClosed(0, b.length()).toArray();
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int exchange = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(exchange, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
