package org.hibernacle.cli;

/** What the program tells a script. */
final class ExitCode {
  static final int DONE = 0;

  /** A fault of ours. */
  static final int UNEXPECTED = 1;

  static final int WRONG_USE = 2;

  /** The input has errors; nothing was written. */
  static final int BAD_INPUT = 3;

  /** Done, but some plants can not be protected. */
  static final int UNPROTECTED = 4;

  /** Output could not be written; files that were there are untouched. */
  static final int NOT_WRITTEN = 5;

  private ExitCode() {}
}
