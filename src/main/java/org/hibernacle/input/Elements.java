package org.hibernacle.input;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hibernacle.input.CsvLayout.Role;

/** Tells lowest from highest by the words of public files. */
final class Elements {
  private static final Pattern LOWEST =
      Pattern.compile("\\b(min|minimum|minimi|minimal|lowest|tmin|lagsta|tiefst\\w*)\\b");
  private static final Pattern HIGHEST =
      Pattern.compile("\\b(max|maximum|maksimi|maximal|highest|tmax|hogsta|hochst\\w*)\\b");

  private Elements() {}

  /** What a cell in a column of elements names; empty for rain and all the rest. */
  static Optional<Role> named(String cell) {
    CsvHeading heading = CsvHeading.of(cell);
    return List.of(Role.LOWEST, Role.HIGHEST, Role.SNOW).stream()
        .filter(role -> CsvLayouts.common(role).knows(heading))
        .findFirst();
  }

  /** What the lines above a table name, if it is one of the two and not both. */
  static Optional<Role> inTitle(String title) {
    String plain = CsvHeading.plain(title);
    boolean lowest = LOWEST.matcher(plain).find();
    boolean highest = HIGHEST.matcher(plain).find();
    return lowest == highest ? Optional.empty() : Optional.of(lowest ? Role.LOWEST : Role.HIGHEST);
  }
}
