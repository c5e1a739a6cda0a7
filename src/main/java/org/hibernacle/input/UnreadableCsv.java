package org.hibernacle.input;

/** A file that can not be read any further. */
final class UnreadableCsv extends Exception {
  private static final long serialVersionUID = 1;

  private final String code;
  private final String where;
  private final String found;
  private final String expected;

  UnreadableCsv(String code, String where, String found, String expected) {
    super(where + ": " + found);
    this.code = code;
    this.where = where;
    this.found = found;
    this.expected = expected;
  }

  void tell(Problems problems) {
    problems.error(code, where, found, expected);
  }
}
