package org.hibernacle.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.Phrase;

/**
 * Cells merged over several rows of one column. Only the first holds the value, but to the eye it
 * stands in each of the rows, so it is read there too. Cells merged over columns stay blank.
 */
final class MergedCells {
  /** Most merged areas that are looked at. */
  private static final int MOST_AREAS = 20_000;

  private MergedCells() {}

  /** The rows with the values of merged cells filled in; a row gains no cell it had not. */
  static List<FoundRow> filled(Sheet sheet, List<FoundRow> rows, Phrase where, Tally tally) {
    List<CellRangeAddress> down = down(sheet);
    if (down.isEmpty()) {
      return rows;
    }
    Map<Integer, FoundRow> byNumber = new HashMap<>();
    rows.forEach(row -> byNumber.put(row.number(), row));
    Map<String, FoundCell> values = new HashMap<>();
    for (CellRangeAddress area : down) {
      FoundRow first = byNumber.get(area.getFirstRow() + 1);
      int column = area.getFirstColumn();
      if (first == null || column >= first.cells().size() || first.cells().get(column).isBlank()) {
        continue;
      }
      FoundCell value = first.cells().get(column);
      for (FoundRow row : rows) {
        if (row.number() > first.number() && row.number() <= area.getLastRow() + 1) {
          values.put(row.cells().get(column).address(), value);
        }
      }
    }
    values.keySet().forEach(address -> tally.add(Code.MERGED, where, Tally.Noun.CELL));
    return rows.stream().map(row -> filled(row, values)).toList();
  }

  private static List<CellRangeAddress> down(Sheet sheet) {
    if (sheet.getNumMergedRegions() > MOST_AREAS) {
      return List.of();
    }
    return sheet.getMergedRegions().stream()
        .filter(a -> a.getFirstColumn() == a.getLastColumn() && a.getLastRow() > a.getFirstRow())
        .toList();
  }

  private static FoundRow filled(FoundRow row, Map<String, FoundCell> values) {
    List<FoundCell> cells = new ArrayList<>();
    for (FoundCell cell : row.cells()) {
      FoundCell value = cell.isBlank() ? values.get(cell.address()) : null;
      cells.add(value == null ? cell : new FoundCell(cell.address(), value.value(), value.state()));
    }
    return new FoundRow(row.number(), cells);
  }
}
