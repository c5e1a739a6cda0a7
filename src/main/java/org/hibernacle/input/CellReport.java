package org.hibernacle.input;

import org.hibernacle.input.FoundCell.State;

/** Says what is wrong with a cell before anyone reads it. */
final class CellReport {
  private CellReport() {}

  /**
   * Reports formulas and error values. In a column the program does not know they are carried on as
   * text, which is only worth a warning.
   */
  static void report(
      FoundSheet sheet, FoundCell cell, boolean known, Problems problems, Tally tally) {
    String where = sheet.where(cell.address());
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
}
