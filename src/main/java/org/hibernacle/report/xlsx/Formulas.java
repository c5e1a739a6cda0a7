package org.hibernacle.report.xlsx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Formulas of the report, put in once all sheets stand, since they may speak of any of them. A
 * column of another section goes by a defined name of its own, so that a formula can be read.
 */
final class Formulas {
  private static final Pattern REFERENCE = Pattern.compile("\\{(?:([a-z0-9-]+):)?([a-z0-9-]*)}");

  /** A formula and the value it has now. */
  private record Waiting(XSSFCell cell, String formula, UnaryOperator<String> ownRow) {}

  private final Set<String> defined = new HashSet<>();
  private final XSSFWorkbook workbook;
  private final Map<String, String> columns = new HashMap<>();
  private final List<Waiting> waiting = new ArrayList<>();
  private final List<Runnable> last = new ArrayList<>();

  Formulas(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /**
   * Remembers a column of a section.
   *
   * @param sheet its name
   * @param cells below the heading
   */
  void column(String sectionId, String columnId, String sheet, CellRangeAddress cells) {
    columns.put(name(sectionId, columnId), cells.formatAsString(sheet, true));
  }

  /**
   * Gives a cell that has its value a formula too, later.
   *
   * @param ownRow address of a column's cell in the same row
   */
  void put(XSSFCell cell, String formula, UnaryOperator<String> ownRow) {
    waiting.add(new Waiting(cell, formula, ownRow));
  }

  /** Does something once all columns are known. */
  void later(Runnable task) {
    last.add(task);
  }

  /** The formula in the letters of a workbook. */
  String written(String formula, UnaryOperator<String> ownRow) {
    return REFERENCE
        .matcher(formula)
        .replaceAll(
            found -> {
              String section = found.group(1);
              String text =
                  section == null ? ownRow.apply(found.group(2)) : named(section, found.group(2));
              return Matcher.quoteReplacement(text);
            });
  }

  private String named(String sectionId, String columnId) {
    String name = name(sectionId, columnId);
    String cells = columns.get(name);
    if (cells == null) {
      throw new IllegalArgumentException("no column " + columnId + " in " + sectionId);
    }
    if (defined.add(name)) {
      define(workbook, name, cells);
    }
    return name;
  }

  private static String name(String sectionId, String columnId) {
    return sectionId.replace('-', '_') + "_" + columnId.replace('-', '_');
  }

  /** Removes a name, which a template may have brought along, for the workbook and its sheets. */
  static void forget(XSSFWorkbook workbook, String name) {
    workbook.getAllNames().stream()
        .filter(defined -> defined.getNameName().equalsIgnoreCase(name))
        .toList()
        .forEach(workbook::removeName);
  }

  static void define(XSSFWorkbook workbook, String name, String cells) {
    forget(workbook, name);
    XSSFName defined = workbook.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(cells);
  }

  /** Puts everything in. The values stay, for programs that do not calculate. */
  void finish() {
    for (Waiting w : waiting) {
      String formula = written(w.formula(), w.ownRow());
      switch (w.cell().getCellType()) {
        case NUMERIC -> {
          double value = w.cell().getNumericCellValue();
          w.cell().setCellFormula(formula);
          w.cell().setCellValue(value);
        }
        default -> {
          String value = w.cell().getStringCellValue();
          w.cell().setCellFormula(formula);
          w.cell().setCellValue(value);
        }
      }
    }
    last.forEach(Runnable::run);
  }
}
