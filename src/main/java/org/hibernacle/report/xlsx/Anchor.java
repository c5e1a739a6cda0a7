package org.hibernacle.report.xlsx;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A place in the template that the program writes by: a defined name, and the sheet it stands on.
 *
 * @param name defined in the workbook
 * @param sheet on which the name must lie
 */
record Anchor(String name, String sheet) {
  static final String OVERVIEW_SHEET = "Overview";

  /** Title of the report; its cell is the pattern. */
  static final Anchor TITLE = new Anchor("pattern_title", OVERVIEW_SHEET);

  /** Site and season. */
  static final Anchor SUBTITLE = new Anchor("pattern_subtitle", OVERVIEW_SHEET);

  /** Label and value of an answer for the day in the first of these lines. */
  static final Anchor ANSWER = new Anchor("pattern_answer", OVERVIEW_SHEET);

  /** Label and text of a line of the overview. */
  static final Anchor FACT = new Anchor("pattern_fact", OVERVIEW_SHEET);

  /** Row of any table without a pattern of its own, and of the inventory's sheets. */
  static final Anchor TABLE = new Anchor("pattern_table", "Any table");

  private static final List<Anchor> SECTIONS =
      Stream.of(
              "Season plan",
              "Moving days",
              "Changes",
              "Tasks",
              "Places",
              "Occupancy",
              "Temperatures",
              "Winters",
              "Log",
              "Notes")
          .map(sheet -> new Anchor("pattern_" + id(sheet), sheet))
          .toList();

  private static String id(String words) {
    return words.toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
  }

  /** Those that every template has. */
  static List<Anchor> all() {
    return Stream.concat(Stream.of(TITLE, SUBTITLE, ANSWER, FACT, TABLE), SECTIONS.stream())
        .toList();
  }

  /** The pattern of a section's rows, if it has one of its own. */
  static Optional<Anchor> ofSection(String sectionId) {
    String wanted = "pattern_" + id(sectionId);
    return SECTIONS.stream().filter(a -> a.name().equals(wanted)).findFirst();
  }
}
