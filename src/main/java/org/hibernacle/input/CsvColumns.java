package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.input.CsvLayout.Shape;
import org.hibernacle.model.Phrase;

/**
 * Which columns of a heading row a layout would take.
 *
 * @param layout the layout
 * @param headings the row
 * @param candidates column numbers from 0 by role; roles without any are absent
 */
record CsvColumns(
    CsvLayout layout, List<CsvHeading> headings, Map<Role, List<Integer>> candidates) {

  /** Roles of which a second column does no harm: the first is taken. */
  private static final Set<Role> FIRST_WINS =
      Set.of(
          Role.STATION,
          Role.MARK,
          Role.LOWEST_MARK,
          Role.HIGHEST_MARK,
          Role.BESIDE,
          Role.PART,
          Role.YEAR,
          Role.MONTH,
          Role.DAY);

  /** The columns that the headings tell. */
  static CsvColumns match(CsvLayout layout, List<CsvHeading> headings) {
    Map<Role, List<Integer>> candidates = new EnumMap<>(Role.class);
    layout.columns().forEach((role, known) -> take(role, known, headings, candidates));
    List<Integer> parts = WideTable.parts(layout.shape(), headings);
    if (!parts.isEmpty()) {
      candidates.put(Role.PART, parts);
    }
    new DateColumns(headings, candidates).settle();
    return new CsvColumns(layout, headings, candidates);
  }

  /** The columns by their place alone. */
  static CsvColumns inOrder(CsvLayout layout, List<CsvHeading> headings) {
    Map<Role, List<Integer>> candidates = new EnumMap<>(Role.class);
    for (int i = 0; i < layout.order().size(); i++) {
      if (layout.order().get(i) != Role.BESIDE) {
        candidates.computeIfAbsent(layout.order().get(i), role -> new ArrayList<>()).add(i);
      }
    }
    return new CsvColumns(layout, headings, candidates);
  }

  private static void take(
      Role role, KnownHeadings known, List<CsvHeading> headings, Map<Role, List<Integer>> into) {
    List<Integer> columns = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      if (known.knows(headings.get(i))) {
        columns.add(i);
      }
    }
    if (FIRST_WINS.contains(role) && columns.size() > 1) {
      columns.sort(Comparator.comparingInt(i -> known.place(headings.get(i))));
      columns.subList(1, columns.size()).clear();
    }
    if (!columns.isEmpty()) {
      into.put(role, columns);
    }
  }

  /** Required roles without a column, in the order of the roles. */
  List<Role> missing() {
    if (!layout.cuts().isEmpty()) {
      return List.of(Role.DATE); // no headings tell a layout of positions
    }
    List<Role> missing = new ArrayList<>();
    for (Role role : Role.values()) {
      boolean needed = layout.columns().containsKey(role) && !layout.optional().contains(role);
      boolean date = role == Role.DATE && dated();
      if (needed && !candidates.containsKey(role) && !date) {
        missing.add(role);
      }
    }
    boolean wide = layout.shape().wide();
    if (!wide && !dated() && !missing.contains(Role.DATE)) {
      missing.add(0, Role.DATE);
    }
    if (wide && !candidates.containsKey(Role.PART)) {
      missing.add(Role.PART);
    }
    return missing;
  }

  /** Whether there are columns for a date, in one or in several parts. */
  private boolean dated() {
    boolean year = candidates.containsKey(Role.YEAR);
    boolean day = candidates.containsKey(Role.MONTH) && candidates.containsKey(Role.DAY);
    return candidates.containsKey(Role.DATE)
        || (year && (day || candidates.containsKey(Role.DAY_OF_YEAR)));
  }

  /** Whether years and months have extremes but no days: of no use here. */
  boolean monthly() {
    return layout.shape() == Shape.DAY
        && missing().equals(List.of(Role.DATE))
        && candidates.containsKey(Role.YEAR)
        && candidates.containsKey(Role.MONTH);
  }

  boolean has(Role role) {
    return candidates.containsKey(role);
  }

  /** The column of the role, from 0; the first where there are several. */
  Optional<Integer> column(Role role) {
    return Optional.ofNullable(candidates.get(role)).map(columns -> columns.get(0));
  }

  /** All columns of the role, from 0. */
  List<Integer> all(Role role) {
    return candidates.getOrDefault(role, List.of());
  }

  /** The last column that is read, from 0. */
  int lastUsed() {
    return candidates.values().stream()
        .flatMap(List::stream)
        .mapToInt(Integer::intValue)
        .max()
        .orElse(0);
  }

  /** The heading of the role as written; throws where the file has none. */
  CsvHeading heading(Role role) {
    return headings.get(column(role).orElseThrow());
  }

  /** The cell of the role, if the file has such a column. */
  Optional<String> cell(Role role, CsvText.Row row) {
    return column(role).filter(i -> i < row.cells().size()).map(row.cells()::get);
  }

  /** The mark of the value in that column, if the file has one for it. */
  Optional<String> mark(Role role, int column, CsvText.Row row) {
    List<Integer> marks = all(role.mark());
    int place = role == Role.PART && marks.size() > 1 ? all(role).indexOf(column) : 0;
    return place < marks.size() && marks.get(place) < row.cells().size()
        ? Optional.of(row.cells().get(marks.get(place)))
        : Optional.empty();
  }

  /** Whether more than one column could fill a role that can have only one. */
  boolean doubled() {
    return candidates.entrySet().stream()
        .anyMatch(e -> e.getValue().size() > 1 && !FIRST_WINS.contains(e.getKey()));
  }

  /** Reports every role that more than one column could fill. */
  void tellDoubled(Phrase where, Problems problems) {
    candidates.forEach(
        (role, columns) -> {
          if (columns.size() > 1 && !FIRST_WINS.contains(role)) {
            List<Phrase> names =
                columns.stream().map(i -> Phrase.quoted(headings.get(i).written())).toList();
            problems.error("IN-307", where, columns.size(), role, names);
          }
        });
  }
}
