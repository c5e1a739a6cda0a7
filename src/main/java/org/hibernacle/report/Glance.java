package org.hibernacle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the first sheet of a workbook answers in one look, for the day that stands in its first
 * cell. The keeper may type another day there; everything below follows.
 *
 * @param asOf the day that stands there
 * @param label of that cell
 * @param prompt shown when the cell is chosen
 * @param first earliest day that may be typed
 * @param last latest day that may be typed
 * @param lines below it, in order
 */
public record Glance(
    LocalDate asOf,
    String label,
    String prompt,
    LocalDate first,
    LocalDate last,
    List<Line> lines) {
  /** Name of the cell with the day, for formulas. */
  public static final String AS_OF = "as_of";

  /**
   * One answer.
   *
   * @param name of its cell, for formulas; lower case and underscores
   * @param label in front of it
   * @param help shown as a note; may be empty
   * @param cell the answer for {@link Glance#asOf}
   * @param formula the same in the manner of {@link Section.Live#formula}
   * @param mark a look it takes on; {@code {}} in its condition is the cell itself
   */
  public record Line(
      String name,
      String label,
      String help,
      Cell cell,
      String formula,
      Optional<Section.Mark> mark) {}

  public Glance {
    lines = List.copyOf(lines);
  }
}
