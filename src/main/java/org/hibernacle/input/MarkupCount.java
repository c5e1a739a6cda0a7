package org.hibernacle.input;

import java.util.Optional;
import org.hibernacle.model.Phrase;

/**
 * Counts what the parts of a workbook would be once they are taken apart, from their bytes and
 * without keeping any: a hundred kilobytes of archive can hold what no memory does.
 */
final class MarkupCount {
  /**
   * Most elements and attributes of all parts for each half a gigabyte of memory; a cell has some
   * five. The library needs some 400 bytes for each (measured).
   */
  static final int NODES_PER_HALF_GIB = 1_000_000;

  private static final long HALF_GIB = 512L << 20;

  /** Longest text or tag; a cell holds at most 32,767 characters. */
  static final int LONGEST = 1 << 20;

  /** Most widths of columns; no sheet has more columns, and the library is slow with many. */
  static final int MOST_WIDTHS = 16_384;

  private static final String WIDTH = "col";

  private final long mostNodes;
  private final StringBuilder name = new StringBuilder();
  private boolean inName;
  private long nodes;
  private int widths;
  private int run;
  private int longest;
  private int before;

  /**
   * Nothing is counted yet.
   *
   * @param memoryBytes most that the program may use; less than half a gigabyte counts as that
   */
  MarkupCount(long memoryBytes) {
    mostNodes = (long) (NODES_PER_HALF_GIB * (double) Math.max(HALF_GIB, memoryBytes) / HALF_GIB);
  }

  /** Counts on in the same part. */
  void take(byte[] bytes, int length) {
    for (int i = 0; i < length; i++) {
      int next = bytes[i];
      if (next != 0) { // every other byte of UTF-16
        take(next);
        before = next;
      }
    }
  }

  private void take(int next) {
    run = next == '<' || next == '>' ? 0 : run + 1;
    longest = Math.max(longest, run);
    if (next == '<') {
      inName = true;
      name.setLength(0);
    } else if (inName && (Character.isLetterOrDigit(next) || next < 0)) {
      name.append((char) next);
    } else if (inName && next == ':') {
      name.setLength(0);
    } else if (inName) {
      inName = false;
      nodes += name.isEmpty() ? 0 : 1;
      widths += name.toString().equals(WIDTH) ? 1 : 0;
    } else if ((next == '"' || next == '\'') && before == '=') {
      nodes++;
    }
  }

  /** What there is too much of, in words; empty if nothing. */
  Optional<Phrase> beyond() {
    if (nodes > mostNodes) {
      return Optional.of(Phrase.of("too-many-cells"));
    }
    if (longest > LONGEST) {
      return Optional.of(Phrase.of("too-long-text"));
    }
    return widths > MOST_WIDTHS ? Optional.of(Phrase.of("too-many-widths")) : Optional.empty();
  }
}
