package org.hibernacle.input;

/**
 * Where a value stands.
 *
 * @param file as messages name it
 * @param line of it, from 1
 */
record Origin(String file, long line) {
  /** {@code temps.csv, line 7}. */
  @Override
  public String toString() {
    return file + ", line " + line;
  }
}
