package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the delimiter and the heading row of a file: the first row, among its first {@value
 * #ROWS_SEARCHED}, in which a layout finds all its columns.
 */
final class HeadingSearch {
  private static final int ROWS_SEARCHED = 60;
  private static final int ROWS_COMPARED = 100;
  private static final char[] DELIMITERS = {',', ';', '\t'};

  /**
   * A heading row.
   *
   * @param delimiter between its cells
   * @param line on which it stands
   * @param fits the layouts that find all their columns in it
   * @param consistentRows how many of the rows below have as many cells
   */
  record Found(char delimiter, long line, List<CsvColumns> fits, int consistentRows) {}

  private final List<CsvLayout> layouts;
  private final List<Found> found = new ArrayList<>();
  private List<String> widest = List.of();

  private HeadingSearch(List<CsvLayout> layouts) {
    this.layouts = layouts;
  }

  /** The heading row; reports an error and is empty if there is none, or if two layouts fit it. */
  static Optional<Found> in(CsvText text, List<CsvLayout> layouts, Problems problems)
      throws UnreadableCsv {
    HeadingSearch search = new HeadingSearch(layouts);
    UnreadableCsv trouble = null;
    for (char delimiter : DELIMITERS) {
      try {
        search.look(text, delimiter);
      } catch (UnreadableCsv e) {
        trouble = trouble == null ? e : trouble;
      }
    }
    if (search.found.isEmpty()) {
      if (trouble != null) {
        throw trouble;
      }
      search.tellMissing(text, problems);
      return Optional.empty();
    }
    Found best = search.found.get(0);
    for (Found other : search.found) {
      best = other.consistentRows() > best.consistentRows() ? other : best;
    }
    String where = text.path() + ", line " + best.line();
    if (best.fits().size() > 1) {
      List<String> names = best.fits().stream().map(fit -> fit.layout().name()).toList();
      problems.error(
          "IN-306",
          where,
          "headings that fit the layouts " + String.join(" and ", names),
          "--layout with one of them");
      return Optional.empty();
    }
    int before = problems.errorCount();
    best.fits().get(0).tellDoubled(where, problems);
    return problems.errorCount() > before ? Optional.empty() : Optional.of(best);
  }

  /** Whether a row has that many cells, empty ones at its end aside. */
  static boolean fits(CsvText.Row row, int columns) {
    List<String> cells = row.cells();
    return cells.size() >= columns
        && cells.subList(columns, cells.size()).stream().allMatch(String::isEmpty);
  }

  private void look(CsvText text, char delimiter) throws UnreadableCsv {
    List<CsvText.Row> rows = new ArrayList<>();
    text.rows(delimiter, row -> rows.add(row) && rows.size() < ROWS_SEARCHED + ROWS_COMPARED);
    for (int i = 0; i < Math.min(rows.size(), ROWS_SEARCHED); i++) {
      CsvText.Row row = rows.get(i);
      if (row.cells().size() > widest.size()) {
        widest = row.cells();
      }
      List<CsvColumns> fits =
          layouts.stream()
              .map(layout -> CsvColumns.match(layout, row.cells()))
              .filter(match -> match.missing().isEmpty())
              .toList();
      if (!fits.isEmpty()) {
        List<CsvText.Row> below = rows.subList(i + 1, rows.size());
        int columns = row.cells().size();
        int consistent = (int) below.stream().filter(r -> fits(r, columns)).count();
        found.add(new Found(delimiter, row.line(), fits, consistent));
        return;
      }
    }
  }

  private void tellMissing(CsvText text, Problems problems) {
    List<String> wants = new ArrayList<>();
    for (CsvLayout layout : layouts) {
      List<String> missing =
          CsvColumns.match(layout, widest).missing().stream().map(Object::toString).toList();
      wants.add("layout " + layout.name() + " lacks " + String.join(", ", missing));
    }
    problems.error(
        "IN-305",
        text.path().toString(),
        "no row of known headings; the widest row is \"" + String.join(" | ", widest) + "\"",
        "headings of one layout (" + String.join("; ", wants) + ")");
  }
}
