package org.hibernacle.input;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Stops a row that never ends (a quote that is not closed, a file that is no table) before it fills
 * the memory.
 */
final class RowLimitReader extends FilterReader {
  /** Far beyond any row of a temperature file, characters; the parser reads ahead a little. */
  static final int LIMIT = 100_000;

  private int sinceRow;

  RowLimitReader(Reader in) {
    super(in);
  }

  /** To be called after each row. */
  void rowDone() {
    sinceRow = 0;
  }

  @Override
  public int read() throws IOException {
    int c = super.read();
    count(c < 0 ? 0 : 1);
    return c;
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    int got = super.read(buffer, offset, length);
    count(got);
    return got;
  }

  private void count(int got) throws IOException {
    sinceRow += Math.max(0, got);
    if (sinceRow > LIMIT) {
      throw new TooLong();
    }
  }

  /** A row went over the limit. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1;

    TooLong() {
      super("a row of more than " + LIMIT + " characters");
    }
  }
}
