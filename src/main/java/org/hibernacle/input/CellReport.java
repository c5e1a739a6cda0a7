package org.hibernacle.input;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.input.FoundCell.State;
import org.hibernacle.model.Phrase;

/** Says what is wrong with a cell before anyone reads it. */
final class CellReport {
  /** Columns whose texts name something, and are printed in narrow places. */
  private static final Set<Column> NAMES =
      EnumSet.of(
          Column.ID,
          Column.LABEL,
          Column.PLANT_SPECIES,
          Column.CULTIVAR,
          Column.HOME,
          Column.STAY_IN,
          Column.ROOTSTOCK,
          Column.PLACE,
          Column.TAXON,
          Column.SITE);

  /** Most characters of a name. */
  static final int LONGEST_NAME = 100;

  /** Most characters of any other text that is read. */
  static final int LONGEST_TEXT = 2000;

  private CellReport() {}

  /**
   * Reports formulas and error values. In a column the program does not know they are carried on as
   * text, which is only worth a warning.
   *
   * @param column that the cell stands under; empty if the program does not know it
   */
  static void report(
      FoundSheet sheet, FoundCell cell, Optional<Column> column, Problems problems, Tally tally) {
    boolean known = column.isPresent();
    Phrase where = sheet.where(cell.address());
    column.ifPresent(c -> reportLength(where, cell, c, problems));
    if (cell.state() == State.FORMULA && !cell.isBlank()) {
      tally.add(Code.FORMULA, sheet.where(), Tally.Noun.CELL);
    } else if (cell.state() == State.ERROR) {
      if (known) {
        problems.error(Code.ERROR_CELL, where, cell.value());
      } else {
        problems.warning("IN-123.carried", where, cell.value());
      }
    } else if (cell.state() == State.FORMULA_WITHOUT_VALUE) {
      if (known) {
        problems.error(Code.FORMULA_WITHOUT_VALUE, where);
      } else {
        problems.warning("IN-124.carried", where);
      }
    }
  }

  private static void reportLength(Phrase where, FoundCell cell, Column column, Problems problems) {
    int most = NAMES.contains(column) ? LONGEST_NAME : LONGEST_TEXT;
    int length = cell.text().length();
    if (length > most) {
      problems.error(
          "IN-445.named", where, column.title(), FoundCell.shortened(cell.text()), length, most);
    }
  }
}
