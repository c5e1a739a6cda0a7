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
    for (String word : given.split(",", -1)) {
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
    for (char delimiter : new char[] {',', ';', '\t', '|', CsvText.BLANKS}) {
      List<CsvText.Row> rows = new ArrayList<>();
      text.rows(delimiter, row -> rows.add(row) && rows.size() < 100);
      Optional<HeadingSearch.Found> here = at(rows, layout, given, delimiter);
      if (here.isPresent()
          && here.get().consistentRows()
              > best.map(HeadingSearch.Found::consistentRows).orElse(0)) {
        best = here;
      }
    }
    if (best.isEmpty()) {
      Role first = layout.order().contains(Role.DATE) ? Role.DATE : Role.YEAR;
      problems.error("IN-305.order", text.name(), layout.order().indexOf(first) + 1);
    }
    return best;
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
    int width = rows.get(first).cells().size();
    boolean headed = first > 0 && rows.get(first - 1).cells().size() == width;
    List<CsvHeading> headings = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      String above = headed ? rows.get(first - 1).cells().get(i) : "";
      headings.add(CsvHeading.of(above.isEmpty() ? Phrase.of("column", i + 1).toString() : above));
    }
    long line = first == 0 ? 0 : rows.get(first - 1).line();
    CsvColumns columns = CsvColumns.inOrder(layout, headings);
    return Optional.of(new HeadingSearch.Found(delimiter, line, line, "", List.of(columns), dated));
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
