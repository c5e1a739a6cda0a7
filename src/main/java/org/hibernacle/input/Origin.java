package org.hibernacle.input;

import org.hibernacle.model.Phrase;

/**
 * Where a value stands.
 *
 * @param file as messages name it
 * @param line of it, from 1
 */
record Origin(String file, long line) {
  /** {@code temps.csv, line 7}. */
  Phrase where() {
    return Phrase.of("where.line", file, line);
  }
}
