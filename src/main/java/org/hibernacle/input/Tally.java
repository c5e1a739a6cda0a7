package org.hibernacle.input;

import java.util.LinkedHashMap;
import java.util.Map;

/** Counts equal remarks, so that forty plants with one default make one note. */
final class Tally {
  /**
   * What is counted.
   *
   * @param one a single one: {@code plant}
   * @param many several: {@code plants}
   */
  record Noun(String one, String many) {
    static final Noun PLANT = new Noun("plant", "plants");
    static final Noun CELL = new Noun("cell", "cells");
    static final Noun NOTHING = new Noun("", "");
  }

  private record Remark(String code, String where, String found, Noun noun, String consequence) {}

  private final Problems problems;
  private final Map<Remark, Integer> counts = new LinkedHashMap<>();

  Tally(Problems problems) {
    this.problems = problems;
  }

  /** Counts one more remark: {@code found} "Wind is empty", {@code consequence} "open is used". */
  void add(String code, String where, String found, Noun noun, String consequence) {
    counts.merge(new Remark(code, where, found, noun, consequence), 1, Integer::sum);
  }

  /** Hands the notes on, one a different remark. */
  void close() {
    counts.forEach(
        (remark, count) ->
            problems.note(
                remark.code(),
                remark.where(),
                remark.noun().equals(Noun.NOTHING)
                    ? remark.found()
                    : remark.found() + " for " + count(count, remark.noun()),
                remark.consequence()));
    counts.clear();
  }

  private static String count(int count, Noun noun) {
    return count + " " + (count == 1 ? noun.one() : noun.many());
  }
}
