package org.hibernacle.input;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.hibernacle.input.FoundSheet.FoundRow;

/** Turns a sheet of the spreadsheet library into plain values. */
final class SheetReader {
  /** Rows and columns of the largest sheet that is read; a collection has hundreds of rows. */
  static final int MOST_ROWS = 20_000;

  static final int MOST_COLUMNS = 256;

  /** Most cells, blank ones within the width included. */
  static final int MOST_CELLS = 1_000_000;

  private final FoundSheet empty;
  private final Sheet sheet;
  private final Problems problems;
  private final Tally tally;
  private final CellReader cells;
  private final List<FoundRow> found = new ArrayList<>();
  private int width;

  private SheetReader(String file, Sheet sheet, Problems problems) {
    this.empty = new FoundSheet(file, sheet.getSheetName(), List.of());
    this.sheet = sheet;
    this.problems = problems;
    this.tally = new Tally(problems);
    this.cells = new CellReader(empty.where(), tally);
  }

  /** Reads all rows that hold anything; a sheet that is too large is reported and comes empty. */
  static FoundSheet read(String file, Sheet sheet, Problems problems) {
    return new SheetReader(file, sheet, problems).read();
  }

  private FoundSheet read() {
    for (Row row : sheet) {
      if (!add(row)) {
        return empty;
      }
    }
    if ((long) width * found.size() > MOST_CELLS) {
      tooLarge("IN-441.rows", found.size(), width);
      return empty;
    }
    List<FoundRow> rows = found.stream().map(row -> new FoundRow(row.number(), fit(row))).toList();
    rows = MergedCells.filled(sheet, rows, empty.where(), tally);
    reportHidden();
    cells.report(empty, rows, problems);
    tally.close();
    return new FoundSheet(empty.file(), empty.name(), rows);
  }

  /** Keeps the row if anything stands in it; no if it lies too far out. */
  private boolean add(Row row) {
    List<FoundCell> read = new ArrayList<>();
    int number = row.getRowNum() + 1;
    for (Cell cell : row) {
      int column = cell.getColumnIndex();
      FoundCell value = cells.read(cell, address(number, column));
      if (value.isBlank()) {
        continue;
      }
      if (number > MOST_ROWS || column >= MOST_COLUMNS) {
        return tooLarge("IN-441.cell", value.address());
      }
      fill(read, number, column);
      read.add(value);
    }
    if (!read.isEmpty()) {
      found.add(new FoundRow(number, read));
      width = Math.max(width, read.size());
    }
    return true;
  }

  private static void fill(List<FoundCell> cells, int number, int toExclusive) {
    while (cells.size() < toExclusive) {
      cells.add(FoundCell.typed(address(number, cells.size()), ""));
    }
  }

  private boolean tooLarge(String key, Object... what) {
    List<Object> arguments = new ArrayList<>(List.of(MOST_ROWS, MOST_COLUMNS));
    arguments.addAll(List.of(what));
    problems.error(key, empty.where(), arguments.toArray());
    return false;
  }

  private List<FoundCell> fit(FoundRow row) {
    List<FoundCell> fitted = new ArrayList<>(row.cells());
    fill(fitted, row.number(), width);
    return fitted;
  }

  /**
   * What is folded away in an outline is not hidden: a mark at the edge of the sheet tells of it.
   */
  private void reportHidden() {
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    if (sheet.getWorkbook().isSheetHidden(index) || sheet.getWorkbook().isSheetVeryHidden(index)) {
      problems.note("IN-442.sheet", empty.where());
    }
    for (FoundRow row : found) {
      Row here = sheet.getRow(row.number() - 1);
      if (here.getZeroHeight() && here.getOutlineLevel() == 0) {
        tally.add(Code.HIDDEN, empty.where(), Tally.Noun.ROW);
      }
    }
    for (int column = 0; column < width; column++) {
      if (sheet.isColumnHidden(column) && sheet.getColumnOutlineLevel(column) == 0) {
        tally.add(Code.HIDDEN, empty.where(), Tally.Noun.COLUMN);
      }
    }
  }

  private static String address(int rowNumber, int column) {
    return CellReference.convertNumToColString(column) + rowNumber;
  }
}
