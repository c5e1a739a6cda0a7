package org.hibernacle.input;

import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.SheetTable;

/**
 * A sheet as it was found: its rows without the blank ones.
 *
 * @param file name of the file, for messages
 * @param name of the sheet
 * @param rows in order, none blank, all of one length
 */
record FoundSheet(String file, String name, List<FoundRow> rows) {
  /**
   * One row.
   *
   * @param number as the spreadsheet program shows it, from 1
   * @param cells from column A on
   */
  record FoundRow(int number, List<FoundCell> cells) {
    FoundRow {
      cells = List.copyOf(cells);
    }
  }

  FoundSheet {
    rows = List.copyOf(rows);
  }

  /** {@code inventory.xlsx, sheet Plants}. */
  Phrase where() {
    return Phrase.of("where.sheet", file, name);
  }

  /** {@code inventory.xlsx, sheet Plants, C7}. */
  Phrase where(String address) {
    return Phrase.of("where.in", where(), address);
  }

  /** {@code inventory.xlsx, sheet Plants, row 7}. */
  Phrase where(FoundRow row) {
    return Phrase.of("where.in", where(), Phrase.of("row", row.number()));
  }

  /** The sheet for carrying along, with the row at that index as headings. */
  SheetTable table(int headingIndex) {
    if (rows.isEmpty()) {
      return new SheetTable(name, List.of(), List.of());
    }
    List<String> headings = rows.get(headingIndex).cells().stream().map(FoundCell::text).toList();
    List<List<Object>> values =
        IntStream.range(headingIndex + 1, rows.size())
            .mapToObj(i -> rows.get(i).cells().stream().map(FoundCell::carried).toList())
            .toList();
    return new SheetTable(name, headings, values);
  }
}
