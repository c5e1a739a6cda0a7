package org.hibernacle.model;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The log sheet of an earlier plan, whatever the language of its headings.
 *
 * @param table as found; where a cell holds one of the words offered, the name of its constant
 *     stands for it, such as {@code NO_DAMAGE}
 * @param ids what each column is, such as {@code real-move-in}; empty for one of the keeper's own
 */
public record LogSheet(SheetTable table, List<String> ids) {
  public LogSheet {
    ids = List.copyOf(ids);
    if (ids.size() != table.headings().size()) {
      throw new IllegalArgumentException("an id is wanted for each of " + table.headings());
    }
  }

  /** What stands in a column of the row; an empty string where there is none. */
  public Object value(List<Object> row, String id) {
    int column = ids.indexOf(id);
    return column < 0 ? "" : row.get(column);
  }

  /** The heading of a column as it was found; its id where there is no such column. */
  public String heading(String id) {
    int column = ids.indexOf(id);
    return column < 0 ? id : table.headings().get(column);
  }

  /** Columns of the keeper's own: those with a heading, or with anything below it. */
  public List<Integer> own() {
    return IntStream.range(0, ids.size())
        .filter(i -> ids.get(i).isEmpty())
        .filter(
            i ->
                !table.headings().get(i).isBlank()
                    || table.rows().stream().anyMatch(row -> !row.get(i).equals("")))
        .boxed()
        .toList();
  }
}
