package org.hibernacle.model;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One thing that is wrong or worth knowing about the input or the run. Its texts are those of its
 * key in the bundle {@code org/hibernacle/model/messages.properties}; what it says of itself here
 * is English, {@link Phrasebook} says it in other languages.
 *
 * @param severity whether the run can go on
 * @param key its code, listed in {@code docs/messages.md}, and a further word where one code has
 *     several wordings: {@code IN-104} or {@code IN-104.empty}
 * @param place file, sheet, cell or line
 * @param arguments of its texts; {@link Phrasebook} tells what they may be
 */
public record Diagnostic(Severity severity, String key, Phrase place, List<Object> arguments) {

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

  public Diagnostic {
    arguments = List.copyOf(arguments);
    assert Phrasebook.ENGLISH.takes(severity, key, arguments) : key + " does not take " + arguments;
  }

  /** Stable: {@code IN-104}. */
  public String code() {
    return code(key);
  }

  static String code(String key) {
    int end = key.indexOf('.');
    return end < 0 ? key : key.substring(0, end);
  }

  /** File, sheet, cell or line, in English. */
  public String where() {
    return Phrasebook.ENGLISH.where(this);
  }

  /** What stands there, in English. */
  public String found() {
    return Phrasebook.ENGLISH.found(this);
  }

  /** What would be right, in English; empty where nothing is wrong. */
  public String expected() {
    return Phrasebook.ENGLISH.expected(this);
  }

  /** What the program did about it, in English. */
  public String consequence() {
    return Phrasebook.ENGLISH.consequence(this);
  }

  /** The place with its numbers widened, so that they sort by size. */
  private String whereInOrder() {
    return NUMBER
        .matcher(where())
        .replaceAll(n -> "0".repeat(Math.max(0, 9 - n.group().length())) + n.group());
  }

  /** One line, in English: {@code where [code]: found; expected ...; consequence}. */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder(where()).append(" [").append(code()).append("]: ");
    line.append(found());
    if (!expected().isBlank()) {
      line.append("; expected ").append(expected());
    }
    if (!consequence().isBlank()) {
      line.append("; ").append(consequence());
    }
    return line.append('.').toString();
  }
}
