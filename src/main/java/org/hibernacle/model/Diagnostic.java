package org.hibernacle.model;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * One thing that is wrong or worth knowing about the input or the run.
 *
 * @param severity whether the run can go on
 * @param code stable, listed in {@code docs/messages.md}: {@code IN-104}
 * @param where file, sheet, cell or line
 * @param found what stands there
 * @param expected what would be right; empty where nothing is wrong
 * @param consequence what the program did about it
 */
public record Diagnostic(
    Severity severity,
    String code,
    String where,
    String found,
    String expected,
    String consequence) {

  /** Whether the run can go on. */
  public enum Severity {
    /** The run stops before anything is written. */
    ERROR,
    /** The run goes on with the value named. */
    WARNING,
    /** A default or an assumption. */
    NOTE
  }

  private static final Pattern NUMBER = Pattern.compile("\\d+");

  /** Errors first, then by place (line 9 before line 10), then by code. */
  public static final Comparator<Diagnostic> ORDER =
      Comparator.comparing(Diagnostic::severity)
          .thenComparing(Diagnostic::whereInOrder)
          .thenComparing(Diagnostic::code)
          .thenComparing(Diagnostic::found);

  /** The place with its numbers widened, so that they sort by size. */
  private String whereInOrder() {
    return NUMBER
        .matcher(where)
        .replaceAll(n -> "0".repeat(Math.max(0, 9 - n.group().length())) + n.group());
  }

  /** One line: {@code where [code]: found; expected ...; consequence}. */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder(where).append(" [").append(code).append("]: ");
    line.append(found);
    if (!expected.isBlank()) {
      line.append("; expected ").append(expected);
    }
    if (!consequence.isBlank()) {
      line.append("; ").append(consequence);
    }
    return line.append('.').toString();
  }
}
