package org.hibernacle.report.xlsx;

import java.util.List;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Phrase;

/** What can be wrong with a template; {@code docs/messages.md} has cause and cure. */
final class TemplateProblem {
  static final String UNREADABLE = "OU-601";
  static final String DAMAGED = "OU-601.damaged";
  static final String ANCHOR_MISSING = "OU-602";
  static final String ANCHOR_TWICE = "OU-603";
  static final String ANCHOR_ELSEWHERE = "OU-604";
  static final String NO_STYLES = "OU-605";
  static final String ROLE_MISSING = "OU-606";
  static final String ROLE_TWICE = "OU-607";
  static final String ROLE_UNKNOWN = "OU-608";
  static final String TOO_PALE = "OU-609";
  static final String TOO_SMALL = "OU-610";

  private TemplateProblem() {}

  /** All of them stop the run. */
  static Diagnostic of(String key, Phrase where, Object... arguments) {
    return new Diagnostic(Diagnostic.Severity.ERROR, key, where, List.of(arguments));
  }
}
