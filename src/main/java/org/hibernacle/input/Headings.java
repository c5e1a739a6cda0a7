package org.hibernacle.input;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.input.Quantity.Unit;
import org.hibernacle.model.Phrase;

/** Recognises headings: a column's name or one of its other spellings, with or without a unit. */
final class Headings {
  /**
   * A column that was found.
   *
   * @param index from 0 for column A
   * @param written the heading as it stands there
   * @param unit of the numbers below
   * @param unitGiven whether the heading named it
   */
  record Heading(int index, String written, Unit unit, boolean unitGiven) {}

  /**
   * What one heading means.
   *
   * @param column which
   * @param unit named in the heading, if any
   */
  record Meaning(Column column, Optional<Unit> unit) {}

  /** Longest unit in words: {@code degrees Fahrenheit}, {@code sq ft}. */
  private static final int UNIT_WORDS = 2;

  private Headings() {}

  /** What the heading means on that sheet; empty if the program does not know it. */
  static Optional<Meaning> meaning(InventorySheet sheet, String heading) {
    Words words = Words.of(heading);
    for (Column column : sheet.columns()) {
      if (column.spelled(words.key())) {
        return Optional.of(new Meaning(column, Optional.empty()));
      }
    }
    for (int split = words.size() - 1; split >= Math.max(1, words.size() - UNIT_WORDS); split--) {
      String unit = words.key(split, words.size());
      for (Column column : sheet.columns()) {
        Optional<Unit> spelled = column.quantity().spelled(unit);
        if (spelled.isPresent() && column.spelled(words.key(0, split))) {
          return Optional.of(new Meaning(column, spelled));
        }
      }
    }
    return Optional.empty();
  }

  /** How many cells of the row are headings of that sheet. */
  static long recognised(InventorySheet sheet, FoundRow row) {
    return row.cells().stream().filter(c -> meaning(sheet, c.text()).isPresent()).count();
  }

  /** Reads the heading row, reporting columns that are there twice or that are not known. */
  static Map<Column, Heading> read(
      InventorySheet sheet, FoundSheet found, int headingIndex, Problems problems) {
    Map<Column, Heading> headings = new EnumMap<>(Column.class);
    if (found.rows().isEmpty()) {
      return headings;
    }
    List<FoundCell> cells = found.rows().get(headingIndex).cells();
    List<Phrase> unitless = new ArrayList<>();
    for (int index = 0; index < cells.size(); index++) {
      FoundCell cell = cells.get(index);
      Optional<Meaning> meaning = meaning(sheet, cell.text());
      if (meaning.isEmpty()) {
        reportUnknown(sheet, found, cell, problems);
        continue;
      }
      Column column = meaning.get().column();
      Heading heading =
          new Heading(
              index,
              cell.text(),
              meaning.get().unit().orElse(column.quantity().ours()),
              meaning.get().unit().isPresent());
      Heading first = headings.putIfAbsent(column, heading);
      if (first != null) {
        problems.error(
            "IN-112.columns",
            found.where(cell.address()),
            cell.text(),
            first.written(),
            column.title());
      } else if (column.quantity().needsUnit() && !heading.unitGiven()) {
        unitless.add(Phrase.of("in-unit", cell.text(), column.quantity().ours().symbol()));
      }
    }
    if (!unitless.isEmpty()) {
      problems.note("IN-115.headings", found.where(), unitless);
    }
    return headings;
  }

  private static void reportUnknown(
      InventorySheet sheet, FoundSheet found, FoundCell cell, Problems problems) {
    if (cell.text().isEmpty()) {
      return;
    }
    List<String> nearest =
        Nearest.of(cell.text(), sheet.columns().stream().map(Column::heading).toList(), 1);
    Phrase where = found.where(cell.address());
    String shown = FoundCell.shortened(cell.text());
    if (nearest.isEmpty()) {
      problems.note(Code.UNKNOWN_COLUMN, where, shown);
    } else {
      problems.warning("IN-113.nearest", where, shown, nearest.get(0));
    }
  }
}
