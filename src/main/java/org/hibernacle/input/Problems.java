package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Diagnostic.Severity;
import org.hibernacle.model.Phrase;

/**
 * Everything found wrong while reading, collected so that the keeper sees it in one go. Not for use
 * by several threads.
 */
public final class Problems {
  /** Most notes and warnings kept, and twice as many errors; the rest is counted. */
  static final int LIMIT = 200;

  private final List<Diagnostic> kept = new ArrayList<>();
  private int dropped;
  private int errors;

  /** Adds an error: the run will stop before anything is written. */
  public void error(String key, Phrase where, Object... arguments) {
    add(new Diagnostic(Severity.ERROR, key, where, List.of(arguments)));
  }

  /** The same of a file or an option. */
  public void error(String key, String where, Object... arguments) {
    error(key, Phrase.verbatim(where), arguments);
  }

  /** Adds a warning, which tells what was done instead. */
  public void warning(String key, Phrase where, Object... arguments) {
    add(new Diagnostic(Severity.WARNING, key, where, List.of(arguments)));
  }

  /** The same of a file or an option. */
  public void warning(String key, String where, Object... arguments) {
    warning(key, Phrase.verbatim(where), arguments);
  }

  /** Adds a note on a default or an assumption. */
  public void note(String key, Phrase where, Object... arguments) {
    add(new Diagnostic(Severity.NOTE, key, where, List.of(arguments)));
  }

  /** The same of a file or an option. */
  public void note(String key, String where, Object... arguments) {
    note(key, Phrase.verbatim(where), arguments);
  }

  public void add(Diagnostic diagnostic) {
    boolean error = diagnostic.severity() == Severity.ERROR;
    errors += error ? 1 : 0;
    int limit = error ? 2 * LIMIT : LIMIT;
    if (kept.size() < limit) {
      kept.add(diagnostic);
    } else {
      dropped++;
    }
  }

  /** Takes over everything that another collection kept or counted. */
  void addAll(Problems others) {
    others.kept.forEach(this::add);
    dropped += others.dropped;
  }

  /** Whether there is something, and every single thing has that code. */
  boolean hasOnly(String code) {
    return !kept.isEmpty() && kept.stream().allMatch(d -> d.code().equals(code));
  }

  /** Whether the run must stop. */
  public boolean hasErrors() {
    return errors > 0;
  }

  /** How many errors so far, those that were not kept included. */
  int errorCount() {
    return errors;
  }

  /** How many more there were than {@link #sorted} returns. */
  public int dropped() {
    return dropped;
  }

  /** Errors first, then by place. */
  public List<Diagnostic> sorted() {
    return kept.stream().sorted(Diagnostic.ORDER).toList();
  }
}
