package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.input.Headings.Heading;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.SheetTable;

/**
 * A sheet whose columns the program knows, with its headings found and its cells sorted under them.
 * Reports what is wrong with the sheet as a whole.
 */
final class KnownSheet {
  /** Rows in which headings are looked for, so that a title may stand above them. */
  private static final int HEADING_ROWS = 20;

  private final InventorySheet kind;
  private final FoundSheet found;
  private final int headingIndex;
  private final Map<Column, Heading> headings;
  private final Problems problems;
  private final Tally tally;

  KnownSheet(InventorySheet kind, FoundSheet found, Problems problems) {
    this.kind = kind;
    this.found = found;
    this.problems = problems;
    this.tally = new Tally(problems);
    this.headingIndex = headingIndex(kind, found);
    this.headings = Headings.read(kind, found, headingIndex, problems);
    reportRowsAbove();
    reportCells();
  }

  private static int headingIndex(InventorySheet kind, FoundSheet found) {
    return IntStream.range(0, Math.min(HEADING_ROWS, found.rows().size()))
        .boxed()
        .max(
            Comparator.<Integer>comparingLong(i -> Headings.recognised(kind, found.rows().get(i)))
                .thenComparing(Comparator.reverseOrder()))
        .orElse(0);
  }

  private void reportRowsAbove() {
    if (headingIndex > 0) {
      problems.note(Code.ABOVE_HEADINGS, found.where(), found.rows().get(headingIndex).number());
    }
  }

  private void reportCells() {
    for (FoundRow row : foundRows()) {
      for (int column = 0; column < row.cells().size(); column++) {
        CellReport.report(found, row.cells().get(column), known(column), problems, tally);
      }
    }
  }

  private Optional<Column> known(int index) {
    return headings.entrySet().stream()
        .filter(e -> e.getValue().index() == index)
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private List<FoundRow> foundRows() {
    return found.rows().isEmpty()
        ? List.of()
        : found.rows().subList(headingIndex + 1, found.rows().size());
  }

  /** Whether all the columns are there; each that is missing is reported. */
  boolean require(Column... columns) {
    boolean complete = true;
    for (Column column : columns) {
      if (!headings.containsKey(column)) {
        complete = false;
        problems.error(Code.MISSING_HEADING, found.where(), column.title(), someHeadings());
      }
    }
    return complete;
  }

  boolean isEmpty() {
    return foundRows().isEmpty();
  }

  /** Whether there are rows below the headings; reported if not. */
  boolean requireRows() {
    if (isEmpty()) {
      problems.error(Code.NO_ROWS, found.where());
    }
    return !isEmpty();
  }

  private List<String> someHeadings() {
    return kind.columns().stream().limit(4).map(Column::title).toList();
  }

  /** The rows under the headings. */
  List<Row> rows(Tally.Noun noun) {
    List<Row> rows = new ArrayList<>();
    for (FoundRow row : foundRows()) {
      Map<Column, Row.Entry> entries = new EnumMap<>(Column.class);
      headings.forEach(
          (column, heading) ->
              entries.put(
                  column,
                  new Row.Entry(
                      heading.written(), heading.unit(), row.cells().get(heading.index()))));
      rows.add(
          new Row(found.where(), Phrase.of("row", row.number()), entries, problems, tally, noun));
    }
    return rows;
  }

  SheetTable table() {
    return found.table(headingIndex);
  }

  /** Hands on the notes that were counted. */
  void close() {
    tally.close();
  }
}
