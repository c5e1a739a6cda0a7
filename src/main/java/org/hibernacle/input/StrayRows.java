package org.hibernacle.input;

import java.util.List;
import java.util.Optional;
import org.hibernacle.input.CsvLayout.Rank;

/**
 * Rows that are not of the table. Text at the very end is passed over; the same between rows is an
 * error, and so are the headings of another table, at which reading stops.
 */
final class StrayRows {
  private final RecognisedCsv csv;
  private final RowTally tally;
  private final Problems problems;
  private Optional<Runnable> waiting = Optional.empty();

  StrayRows(RecognisedCsv csv, RowTally tally, Problems problems) {
    this.csv = csv;
    this.tally = tally;
    this.problems = problems;
  }

  /**
   * Looks at a row that can not be read.
   *
   * @param tell reports it
   * @return whether to go on reading
   */
  boolean takesUp(CsvText.Row row, Runnable tell) {
    long filled = row.cells().stream().filter(cell -> !cell.isEmpty()).count();
    if (filled == 1 && !row.cells().get(0).isEmpty() && !startsLikeADate(row.cells().get(0))) {
      tally.closingLine(csv.where(row).where());
      waiting = waiting.or(() -> Optional.of(tell));
      return true;
    }
    if (isAnotherTable(row.cells())) {
      problems.error("IN-404", csv.where(row).where());
      return false;
    }
    tell.run();
    return true;
  }

  /** A row of the table came: what stood before it was no closing line. */
  void rowGood() {
    waiting.ifPresent(
        tell -> {
          tell.run();
          tally.noClosingLine();
        });
    waiting = Optional.empty();
  }

  private static boolean startsLikeADate(String cell) {
    return Character.isDigit(cell.charAt(0));
  }

  private static boolean isAnotherTable(List<String> cells) {
    if (cells.get(0).isEmpty() || startsLikeADate(cells.get(0))) {
      return false;
    }
    List<CsvHeading> headings = cells.stream().map(CsvHeading::of).toList();
    return CsvLayouts.ALL.stream()
        .filter(layout -> layout.rank() != Rank.SINGLE && layout.rank() != Rank.ASKED)
        .anyMatch(layout -> CsvColumns.match(layout, headings).missing().isEmpty());
  }
}
