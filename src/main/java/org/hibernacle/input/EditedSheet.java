package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.hibernacle.input.Quantity.Unit;
import org.hibernacle.model.SheetTable;

/** A sheet of an inventory that is being changed, with its columns known by what they mean. */
final class EditedSheet {
  /** A cell of which nothing is known. */
  static final Object BLANK = "";

  private final InventorySheet kind;
  private final String name;
  private final List<String> headings;
  private final List<List<Object>> rows = new ArrayList<>();

  EditedSheet(InventorySheet kind, SheetTable table) {
    this.kind = kind;
    this.name = table.name();
    this.headings = new ArrayList<>(table.headings());
    table.rows().forEach(row -> rows.add(new ArrayList<>(row)));
  }

  SheetTable table() {
    return new SheetTable(name, headings, rows);
  }

  List<String> headings() {
    return List.copyOf(headings);
  }

  /** Each row can be changed. */
  List<List<Object>> rows() {
    return rows;
  }

  /** Where that column stands. */
  OptionalInt index(Column column) {
    return IntStream.range(0, headings.size())
        .filter(
            i ->
                Headings.meaning(kind, headings.get(i))
                    .filter(m -> m.column() == column)
                    .isPresent())
        .findFirst();
  }

  /** Where that column stands; it is added at the right end if it is missing. */
  int indexOrAdd(Column column) {
    OptionalInt index = index(column);
    return index.isPresent() ? index.getAsInt() : insert(headings.size(), column.heading());
  }

  /** Adds a blank column and tells its index. */
  int insert(int index, String heading) {
    headings.add(index, heading);
    rows.forEach(row -> row.add(index, BLANK));
    return index;
  }

  /** Takes a column out, if it is there. */
  void drop(Column column) {
    index(column)
        .ifPresent(
            i -> {
              headings.remove(i);
              rows.forEach(row -> row.remove(i));
            });
  }

  /** The unit of a column that is there. */
  Unit unit(int index) {
    Headings.Meaning meaning = Headings.meaning(kind, headings.get(index)).orElseThrow();
    return meaning.unit().orElse(meaning.column().quantity().ours());
  }

  /** What stands in a row under a column, as text. */
  String text(List<Object> row, Column column) {
    OptionalInt index = index(column);
    return index.isEmpty() ? "" : text(row.get(index.getAsInt()));
  }

  static String text(Object value) {
    return value instanceof Double number ? FoundCell.plain(number) : value.toString();
  }

  /** Adds a blank row and hands it out. */
  List<Object> addRow() {
    List<Object> row = new ArrayList<>();
    headings.forEach(h -> row.add(BLANK));
    rows.add(row);
    return row;
  }

  /** Takes rows out and hands them on. */
  List<List<Object>> remove(Predicate<List<Object>> which) {
    List<List<Object>> removed = rows.stream().filter(which).toList();
    rows.removeIf(which);
    return removed;
  }
}
