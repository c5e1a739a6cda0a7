package org.hibernacle.report.xlsx;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The patterns of an opened template, and its sheets once the report is written. */
final class Patterns {
  private final XSSFWorkbook workbook;
  private final Map<Anchor, Pattern> patterns = new HashMap<>();
  private final Map<Anchor, CellReference> cells = new HashMap<>();
  private final Set<XSSFSheet> used = new LinkedHashSet<>();
  private final Map<XSSFSheet, String> extras = new LinkedHashMap<>();

  /** Takes the anchors out of the workbook and frees the names of all its sheets for a while. */
  Patterns(XSSFWorkbook workbook) {
    this.workbook = workbook;
    for (Anchor anchor : Anchor.all()) {
      String formula = workbook.getName(anchor.name()).getRefersToFormula();
      CellReference cell = WorkbookTemplate.cells(workbook, formula).getFirstCell();
      cells.put(anchor, cell);
      patterns.put(anchor, new Pattern(workbook.getSheet(cell.getSheetName()), cell.getRow()));
      workbook.removeName(workbook.getName(anchor.name()));
    }
    patterns.values().forEach(pattern -> used.add(pattern.sheet()));
    used.add(workbook.getSheet(RoleSheet.NAME));
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      if (!used.contains(sheet)) {
        extras.put(sheet, sheet.getSheetName());
      }
      workbook.setSheetName(i, "#" + i);
    }
    // A sheet that was copied out of a plan brings the marks of a plan along.
    Formulas.forget(workbook, WorkbookWriter.REPORT_SHEET_NAME);
  }

  /** The first sheet, which is filled as it stands. */
  XSSFSheet overview() {
    return of(Anchor.FACT).sheet();
  }

  Pattern of(Anchor anchor) {
    Pattern pattern = patterns.get(anchor);
    if (pattern == null) {
      throw new IllegalArgumentException("no anchor " + anchor);
    }
    return pattern;
  }

  /** Where the anchor lay. */
  CellReference cell(Anchor anchor) {
    return cells.getOrDefault(anchor, new CellReference(0, 0));
  }

  /** The pattern of a section's rows. */
  Pattern ofSection(String sectionId) {
    return of(Anchor.ofSection(sectionId).orElse(Anchor.TABLE));
  }

  /** Sheets that the keeper put into the template. */
  List<XSSFSheet> extras() {
    return List.copyOf(extras.keySet());
  }

  /**
   * Removes the pattern sheets but for the overview, and puts the keeper's own at the end. Where
   * one is called like a sheet of the report or the inventory, it is the one to be numbered.
   */
  void finish(SheetNames names) {
    for (XSSFSheet sheet : used) {
      if (!sheet.equals(overview())) {
        workbook.removeSheetAt(workbook.getSheetIndex(sheet));
      }
    }
    workbook.setSheetOrder(overview().getSheetName(), 0);
    for (Map.Entry<XSSFSheet, String> own : extras.entrySet()) {
      XSSFSheet extra = own.getKey();
      workbook.setSheetName(workbook.getSheetIndex(extra), names.unique(own.getValue()));
      workbook.setSheetOrder(extra.getSheetName(), workbook.getNumberOfSheets() - 1);
    }
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      workbook.getSheetAt(i).setSelected(i == 0);
    }
    workbook.setActiveSheet(0);
    workbook.setFirstVisibleTab(0);
  }
}
