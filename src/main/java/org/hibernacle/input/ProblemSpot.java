package org.hibernacle.input;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernacle.model.Diagnostic;

/**
 * Where a problem lies, taken apart.
 *
 * @param file name of the file, or what else the problem names
 * @param sheet of a workbook; empty for the file as a whole and for text files
 * @param cell such as {@code C7}; {@code A7} for the whole of row 7; empty if none is named
 * @param line of a text file, from 1; empty if none is named
 */
public record ProblemSpot(
    String file, Optional<String> sheet, Optional<String> cell, Optional<Integer> line) {
  private static final Pattern IN_A_SHEET =
      Pattern.compile("(?s)(.*?), sheet (.*?)(?:, (?:([A-Z]{1,3}[1-9]\\d{0,6})|row (\\d+)|.*))?");
  private static final Pattern IN_A_LINE = Pattern.compile("(?s)(.*?), line (\\d{1,9})(?:, .*)?");

  /** Reads what {@link Diagnostic#where} says. */
  public static ProblemSpot of(Diagnostic problem) {
    String where = problem.where();
    Matcher inSheet = IN_A_SHEET.matcher(where);
    if (inSheet.matches()) {
      Optional<String> cell =
          Optional.ofNullable(inSheet.group(3))
              .or(() -> Optional.ofNullable(inSheet.group(4)).map(row -> "A" + row));
      return new ProblemSpot(
          inSheet.group(1), Optional.of(inSheet.group(2)), cell, Optional.empty());
    }
    Matcher inLine = IN_A_LINE.matcher(where);
    if (inLine.matches()) {
      return new ProblemSpot(
          inLine.group(1),
          Optional.empty(),
          Optional.empty(),
          Optional.of(Integer.valueOf(inLine.group(2))));
    }
    return new ProblemSpot(where, Optional.empty(), Optional.empty(), Optional.empty());
  }
}
