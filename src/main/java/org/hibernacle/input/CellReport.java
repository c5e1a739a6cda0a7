package org.hibernacle.input;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.input.FoundCell.State;

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
    String where = sheet.where(cell.address());
    column.ifPresent(c -> reportLength(where, cell, c, problems));
    if (cell.state() == State.FORMULA && !cell.isBlank()) {
      tally.add(
          Code.FORMULA,
          sheet.where(),
          "formulas stand",
          new Tally.Noun("cell", "cells"),
          "their stored results are used and carried on without the formulas");
    } else if (cell.state() == State.ERROR) {
      String found = "the cell shows " + cell.text();
      if (known) {
        problems.error(Code.ERROR_CELL, where, found, "a value");
      } else {
        problems.warning(Code.ERROR_CELL, where, found, "a value", "it is carried on as text");
      }
    } else if (cell.state() == State.FORMULA_WITHOUT_VALUE) {
      String expected = "the workbook opened and saved once in a spreadsheet program";
      String found = "the formula has no stored result";
      if (known) {
        problems.error(Code.FORMULA_WITHOUT_VALUE, where, found, expected);
      } else {
        problems.warning(
            Code.FORMULA_WITHOUT_VALUE,
            where,
            found,
            expected,
            "the formula is carried on as text");
      }
    }
  }

  private static void reportLength(String where, FoundCell cell, Column column, Problems problems) {
    int most = NAMES.contains(column) ? LONGEST_NAME : LONGEST_TEXT;
    int length = cell.text().length();
    if (length > most) {
      problems.error(
          Code.TEXT_TOO_LONG,
          where,
          column.title()
              + " \""
              + FoundCell.shortened(cell.text())
              + "\" has "
              + length
              + " characters",
          "at most " + most);
    }
  }
}
