package org.hibernacle.input;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.input.CsvLayout.Shape;
import org.hibernacle.model.Phrase;

/**
 * Files whose columns are known by their place: by {@code --columns}, or by a layout without
 * headings.
 */
final class ColumnOrder {
  /** Leaves a column out. */
  private static final String SKIP = "-";

  private static final int ROWS_LOOKED_AT = 100;

  private static final Set<Role> ALLOWED =
      EnumSet.of(
          Role.DATE,
          Role.TIME,
          Role.YEAR,
          Role.MONTH,
          Role.DAY,
          Role.DAY_OF_YEAR,
          Role.STATION,
          Role.LOWEST,
          Role.HIGHEST,
          Role.READING,
          Role.ELEMENT,
          Role.VALUE);

  private ColumnOrder() {}

  /** The layout that the words make up, such as {@code date,-,lowest,highest}; empty if none. */
  static Optional<CsvLayout> layout(String given) {
    List<Role> order = new ArrayList<>();
    List<Cut> cuts = new ArrayList<>();
    for (String word : given.split(",", -1)) {
      Optional<Cut> cut = Cut.of(word).stream().findFirst();
      if (cut.isPresent() && ALLOWED.contains(cut.get().role())) {
        cuts.add(cut.get());
        order.add(cut.get().role());
        continue;
      }
      String plain = word.strip().replace("day-of-year", "day of year");
      Optional<Role> role =
          plain.equals(SKIP)
              ? Optional.of(Role.BESIDE)
              : CsvLayouts.role(plain).filter(ALLOWED::contains);
      if (role.isEmpty() || (role.get() != Role.BESIDE && order.contains(role.get()))) {
        return Optional.empty();
      }
      order.add(role.get());
    }
    boolean doubled = order.stream().distinct().count() < cuts.size();
    if (doubled || (!cuts.isEmpty() && cuts.size() < order.size())) {
      return Optional.empty();
    }
    return shape(order)
        .map(
            shape ->
                new CsvLayout(
                    "columns",
                    CsvLayout.Rank.ASKED,
                    shape,
                    CsvLayout.Proof.SAMPLE,
                    Map.of(),
                    List.of(),
                    order,
                    cuts,
                    DatePattern.USUAL,
                    Optional.empty(),
                    false,
                    MarkRule.NONE,
                    false));
  }

  private static Optional<Shape> shape(List<Role> order) {
    boolean split =
        order.contains(Role.YEAR)
            && (order.contains(Role.DAY_OF_YEAR)
                || order.containsAll(List.of(Role.MONTH, Role.DAY)));
    if (!order.contains(Role.DATE) && !split) {
      return Optional.empty();
    }
    boolean extreme = order.contains(Role.LOWEST) || order.contains(Role.HIGHEST);
    boolean reading = order.contains(Role.READING);
    boolean element = order.containsAll(List.of(Role.ELEMENT, Role.VALUE));
    if ((extreme ? 1 : 0) + (reading ? 1 : 0) + (element ? 1 : 0) != 1) {
      return Optional.empty();
    }
    return Optional.of(extreme ? Shape.DAY : reading ? Shape.READING : Shape.ELEMENT);
  }

  /** Finds the first row with a date where one should be; what stands above it are headings. */
  static Optional<HeadingSearch.Found> in(
      CsvText text, CsvLayout layout, Optional<DateRule> given, Problems problems)
      throws UnreadableCsv {
    Optional<HeadingSearch.Found> best = Optional.empty();
    if (!layout.cuts().isEmpty()) {
      List<CsvText.Row> rows = new ArrayList<>();
      text.rows(layout.cuts(), row -> rows.add(row) && rows.size() < ROWS_LOOKED_AT);
      best = at(rows, layout, given, CsvText.POSITIONS);
      tellNone(best, text, layout, problems);
      return best;
    }
    for (char delimiter : new char[] {',', ';', '\t', '|', CsvText.BLANKS}) {
      List<CsvText.Row> rows = new ArrayList<>();
      text.rows(delimiter, row -> rows.add(row) && rows.size() < ROWS_LOOKED_AT);
      Optional<HeadingSearch.Found> here = at(rows, layout, given, delimiter);
      if (here.isPresent()
          && here.get().consistentRows()
              > best.map(HeadingSearch.Found::consistentRows).orElse(0)) {
        best = here;
      }
    }
    tellNone(best, text, layout, problems);
    return best;
  }

  /** The first layout without delimiters whose dates stand in every row that is looked at. */
  static Optional<HeadingSearch.Found> cut(CsvText text, List<CsvLayout> layouts)
      throws UnreadableCsv {
    for (CsvLayout layout : layouts) {
      List<CsvText.Row> rows = new ArrayList<>();
      if (!layout.cuts().isEmpty()) {
        text.rows(layout.cuts(), row -> rows.add(row) && rows.size() < ROWS_LOOKED_AT);
      }
      if (rows.stream().anyMatch(row -> looksLike(row, layout))
          && rows.stream().allMatch(row -> looksLike(row, layout))) {
        return at(rows, layout, Optional.empty(), CsvText.POSITIONS);
      }
    }
    return Optional.empty();
  }

  /** A whole date, a time where one is needed, and figures where temperatures should be. */
  private static boolean looksLike(CsvText.Row row, CsvLayout layout) {
    CsvColumns columns = CsvColumns.inOrder(layout, headings(layout));
    DateCells dates = new DateCells(columns, Optional.empty());
    boolean dated =
        columns.has(Role.DATE)
            ? hasDate(row, layout, Optional.empty())
            : dates.year(row).isPresent() && dates.month(row).isPresent();
    return dated
        && columns.cell(Role.TIME, row).flatMap(TimeOfDay::of).isPresent() == columns.has(Role.TIME)
        && columns.all(layout.shape().wide() ? Role.PART : Role.READING).stream()
            .map(row.cells()::get)
            .allMatch(cell -> NumberCell.missing(cell) || NumberCell.number(cell).isPresent());
  }

  private static void tellNone(
      Optional<HeadingSearch.Found> best, CsvText text, CsvLayout layout, Problems problems) {
    if (best.isEmpty()) {
      Role first = layout.order().contains(Role.DATE) ? Role.DATE : Role.YEAR;
      problems.error("IN-305.order", text.name(), layout.order().indexOf(first) + 1);
    }
  }

  private static List<CsvHeading> headings(CsvLayout layout) {
    return layout.cuts().stream().map(cut -> CsvHeading.named(cut.heading())).toList();
  }

  private static Optional<HeadingSearch.Found> at(
      List<CsvText.Row> rows, CsvLayout layout, Optional<DateRule> given, char delimiter) {
    int first = -1;
    int dated = 0;
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).cells().size() >= layout.order().size()
          && hasDate(rows.get(i), layout, given)) {
        first = first < 0 ? i : first;
        dated++;
      }
    }
    if (first < 0) {
      return Optional.empty();
    }
    if (delimiter == CsvText.POSITIONS) {
      long above = first == 0 ? 0 : rows.get(first - 1).line();
      CsvColumns columns = CsvColumns.inOrder(layout, headings(layout));
      return Optional.of(
          new HeadingSearch.Found(delimiter, above, above, "", List.of(columns), List.of(), dated));
    }
    int width = rows.get(first).cells().size();
    boolean headed = first > 0 && rows.get(first - 1).cells().size() == width;
    List<CsvHeading> headings = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      String above = headed ? rows.get(first - 1).cells().get(i) : "";
      headings.add(
          above.isEmpty() ? CsvHeading.named(Phrase.of("column", i + 1)) : CsvHeading.of(above));
    }
    long line = first == 0 ? 0 : rows.get(first - 1).line();
    CsvColumns columns = CsvColumns.inOrder(layout, headings);
    return Optional.of(
        new HeadingSearch.Found(delimiter, line, line, "", List.of(columns), List.of(), dated));
  }

  private static boolean hasDate(CsvText.Row row, CsvLayout layout, Optional<DateRule> given) {
    int date = layout.order().indexOf(Role.DATE);
    if (date < 0) {
      String year = row.cells().get(layout.order().indexOf(Role.YEAR));
      return year.matches("\\d{4}(?:\\.0)?");
    }
    String cell = row.cells().get(date);
    return given.isPresent()
        ? given.get().read(cell).isPresent()
        : layout.dates().stream().anyMatch(rule -> rule.read(cell).isPresent());
  }
}
