package org.hibernacle.input;

import org.hibernacle.model.Phrase;

/** A file that can not be read any further. */
final class UnreadableCsv extends Exception {
  private static final long serialVersionUID = 1;

  private final String key;
  private final transient Phrase where;
  private final transient Object[] arguments;

  UnreadableCsv(String key, Phrase where, Object... arguments) {
    super(key + " " + where);
    this.key = key;
    this.where = where;
    this.arguments = arguments.clone();
  }

  UnreadableCsv(String key, String where, Object... arguments) {
    this(key, Phrase.verbatim(where), arguments);
  }

  void tell(Problems problems) {
    problems.error(key, where, arguments);
  }
}
