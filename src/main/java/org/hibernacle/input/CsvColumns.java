package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.input.CsvLayout.Role;

/**
 * Which columns of a heading row a layout would take.
 *
 * @param layout the layout
 * @param headings the row
 * @param candidates column numbers from 0 by role; roles without any are absent
 */
record CsvColumns(
    CsvLayout layout, List<CsvHeading> headings, Map<Role, List<Integer>> candidates) {

  static CsvColumns match(CsvLayout layout, List<String> row) {
    List<CsvHeading> headings = row.stream().map(CsvHeading::of).toList();
    Map<Role, List<Integer>> candidates = new EnumMap<>(Role.class);
    layout.required().forEach((role, keys) -> take(role, keys, headings, candidates));
    layout.optional().forEach((role, keys) -> take(role, keys, headings, candidates));
    // A lone column "time" holds date and time.
    if (!candidates.containsKey(Role.DATE) && candidates.containsKey(Role.TIME)) {
      candidates.put(Role.DATE, candidates.get(Role.TIME));
      candidates.remove(Role.TIME);
    }
    return new CsvColumns(layout, headings, candidates);
  }

  private static void take(
      Role role, List<String> keys, List<CsvHeading> headings, Map<Role, List<Integer>> into) {
    List<Integer> columns = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      if (keys.contains(headings.get(i).key())) {
        columns.add(i);
      }
    }
    if (role == Role.STATION && columns.size() > 1) {
      columns.sort(Comparator.comparingInt(i -> keys.indexOf(headings.get(i).key())));
      columns.subList(1, columns.size()).clear();
    }
    if (!columns.isEmpty()) {
      into.put(role, columns);
    }
  }

  /** Required roles without a column, in the order of the roles. */
  List<Role> missing() {
    return layout.required().keySet().stream()
        .filter(role -> !candidates.containsKey(role))
        .sorted()
        .toList();
  }

  /** The column of the role, from 0; the first where there are several. */
  Optional<Integer> column(Role role) {
    return Optional.ofNullable(candidates.get(role)).map(columns -> columns.get(0));
  }

  /** The heading of the role as written; throws where the file has none. */
  CsvHeading heading(Role role) {
    return headings.get(column(role).orElseThrow());
  }

  /** The cell of the role, if the file has such a column. */
  Optional<String> cell(Role role, CsvText.Row row) {
    return column(role).map(row.cells()::get);
  }

  /** Reports every role that more than one column could fill. */
  void tellDoubled(String where, Problems problems) {
    candidates.forEach(
        (role, columns) -> {
          if (columns.size() > 1) {
            List<String> names =
                columns.stream().map(i -> "\"" + headings.get(i).written() + "\"").toList();
            problems.error(
                "IN-307",
                where,
                columns.size() + " columns for the " + role + ": " + String.join(", ", names),
                "one; remove or rename the others");
          }
        });
  }
}
