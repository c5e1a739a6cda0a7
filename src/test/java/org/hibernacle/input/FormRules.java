package org.hibernacle.input;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.hibernacle.input.FormField.Entry;
import org.hibernacle.model.Settings.Units;

/** Drop-downs and ranges, so that a spreadsheet program objects before the reader has to. */
final class FormRules {
  private final XSSFSheet sheet;
  private final Units units;
  private final DataValidationHelper helper;

  FormRules(XSSFSheet sheet, Units units) {
    this.sheet = sheet;
    this.units = units;
    this.helper = sheet.getDataValidationHelper();
  }

  void add(FormField field, CellRangeAddress cells) {
    if (field.entry() instanceof Entry.Words words) {
      add(
          cells,
          helper.createFormulaListConstraint(words.list()),
          words.only(),
          "a word of the list");
    } else if (field.entry() instanceof Entry.Range range) {
      String low = bound(field, range.low());
      String high = bound(field, range.high());
      DataValidationConstraint constraint =
          range.whole()
              ? helper.createIntegerConstraint(OperatorType.BETWEEN, low, high)
              : helper.createDecimalConstraint(OperatorType.BETWEEN, low, high);
      add(cells, constraint, true, "a number from " + low + " to " + high);
    } else if (field.entry() instanceof Entry.Date) {
      // Serial numbers of 1 January 1950 and 31 December 2199 in the calendar from 1900.
      DataValidationConstraint constraint =
          helper.createDateConstraint(OperatorType.BETWEEN, "18264", "109574", "");
      add(cells, constraint, true, "a date");
    }
  }

  private String bound(FormField field, double ours) {
    double bound = field.unit(units).map(unit -> unit.fromOurs(ours)).orElse(ours);
    return FoundCell.plain(Math.round(bound * 100) / 100.0);
  }

  private void add(
      CellRangeAddress cells, DataValidationConstraint constraint, boolean strict, String wanted) {
    DataValidation rule =
        helper.createValidation(
            constraint,
            new CellRangeAddressList(
                cells.getFirstRow(),
                cells.getLastRow(),
                cells.getFirstColumn(),
                cells.getLastColumn()));
    rule.setEmptyCellAllowed(true);
    rule.setShowErrorBox(strict);
    rule.setSuppressDropDownArrow(true);
    rule.createErrorBox("Not understood", "This cell takes " + wanted + ".");
    sheet.addValidationData(rule);
  }
}
