package org.hibernacle.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernacle.model.Phrase;

/** Counts equal remarks, so that forty plants with one default make one note. */
final class Tally {
  /**
   * What is counted.
   *
   * @param key of the phrase that tells how many, such as {@code for 3 plants}
   * @param more arguments of it
   */
  record Noun(String key, List<Object> more) {
    static final Noun PLANT = new Noun("for-plants");
    static final Noun CELL = new Noun("cells-counted");
    static final Noun ROW = new Noun("rows-hidden");
    static final Noun COLUMN = new Noun("columns-hidden");
    static final Noun NOTHING = new Noun("");

    Noun(String key, Object... more) {
      this(key, List.of(more));
    }

    Phrase counted(int count) {
      List<Object> arguments = new ArrayList<>(more);
      arguments.add(0, count);
      return key.isEmpty() ? Phrase.verbatim("") : new Phrase(key, arguments);
    }
  }

  private record Remark(String key, Phrase where, Noun noun, List<Object> arguments) {}

  private final Problems problems;
  private final Map<Remark, Integer> counts = new LinkedHashMap<>();

  Tally(Problems problems) {
    this.problems = problems;
  }

  /** Counts one more remark; how many there were is the last argument of its texts. */
  void add(String key, Phrase where, Noun noun, Object... arguments) {
    counts.merge(new Remark(key, where, noun, List.of(arguments)), 1, Integer::sum);
  }

  /** Hands the notes on, one a different remark. */
  void close() {
    counts.forEach(
        (remark, count) -> {
          List<Object> arguments = new ArrayList<>(remark.arguments());
          arguments.add(remark.noun().counted(count));
          problems.note(remark.key(), remark.where(), arguments.toArray());
        });
    counts.clear();
  }
}
