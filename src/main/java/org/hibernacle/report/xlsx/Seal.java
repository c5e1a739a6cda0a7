package org.hibernacle.report.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.report.Glance;
import org.hibernacle.report.RunFacts;
import org.jspecify.annotations.Nullable;

/**
 * Tells whether anything was written into a plan that the next one does not carry on. A digest of
 * what stands in all cells and notes is part of the plan's record; left out are the log and the
 * ticks, which are carried on, and the day under <em>As of</em>; of formulas only counts how many
 * there are.
 *
 * <p>In which order cells stand plays no part, so that a sorted table is the same. Numbers count to
 * nine figures: office programs write the last ones otherwise.
 */
public final class Seal {
  /** What the line of the record begins with. */
  private static final String LINE = "seal";

  private static final MathContext FIGURES = new MathContext(9);

  private static final Set<String> WITH_TICKS = Set.of("table_moving_days", "table_tasks");

  private final XSSFWorkbook workbook;
  private final List<String> texts = new ArrayList<>();

  private Seal(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /**
   * Whether a workbook holds anything that was not written by the program and would be lost with
   * it. One that has no seal is taken to.
   *
   * @throws IOException if it is no workbook
   */
  public static boolean isBroken(byte[] bytes) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      XSSFSheet record = sheetOf(workbook, WorkbookWriter.RECORD_NAME);
      if (record == null) {
        return true;
      }
      String seal = "";
      Set<String> done = new HashSet<>();
      for (Row row : record) {
        if (text(row, 0).equals(LINE)) {
          seal = text(row, 1);
        } else if (text(row, 1).endsWith(".done")) {
          done.add(text(row, 2));
        }
      }
      return !seal.equals(new Seal(workbook).digest(done));
    }
  }

  /**
   * The line that seals a workbook, which has all but its record.
   *
   * @param done headings of columns with ticks
   */
  static List<String> line(XSSFWorkbook workbook, Set<String> done) {
    return List.of(LINE, new Seal(workbook).digest(done));
  }

  private String digest(Set<String> done) {
    XSSFSheet log = sheetOf(workbook, "table_log");
    XSSFSheet record = sheetOf(workbook, WorkbookWriter.RECORD_NAME);
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      if (sheet != log && sheet != record) {
        boolean ticks = WITH_TICKS.stream().anyMatch(t -> sheetOf(workbook, t) == sheet);
        sheet(sheet, ticks ? done : Set.of());
      }
    }
    texts.sort(null);
    return RunFacts.digest(texts);
  }

  private void sheet(XSSFSheet sheet, Set<String> done) {
    Set<Integer> ticked = new HashSet<>();
    if (sheet.getRow(0) != null) {
      sheet
          .getRow(0)
          .forEach(
              cell -> {
                if (done.contains(text(sheet.getRow(0), cell.getColumnIndex()))) {
                  ticked.add(cell.getColumnIndex());
                }
              });
    }
    CellReference asOf = asOf();
    for (Row row : sheet) {
      for (Cell cell : row) {
        boolean isAsOf =
            sheet.getSheetName().equals(asOf.getSheetName())
                && cell.getRowIndex() == asOf.getRow()
                && cell.getColumnIndex() == asOf.getCol();
        if (!isAsOf && (row.getRowNum() == 0 || !ticked.contains(cell.getColumnIndex()))) {
          value(cell);
        }
      }
    }
    sheet.getCellComments().values().stream()
        .map(comment -> "note " + comment.getString().getString().replaceAll("\\s+", " ").strip())
        .forEach(texts::add);
  }

  private void value(Cell cell) {
    if (cell.getCellType() == CellType.STRING && !cell.getStringCellValue().isBlank()) {
      texts.add("words " + cell.getStringCellValue().replaceAll("\\s+", " ").strip());
    } else if (cell.getCellType() == CellType.NUMERIC) {
      BigDecimal number = new BigDecimal(cell.getNumericCellValue()).round(FIGURES);
      texts.add("number " + number.stripTrailingZeros().toPlainString());
    } else if (cell.getCellType() == CellType.BOOLEAN) {
      texts.add("truth " + cell.getBooleanCellValue());
    } else if (cell.getCellType() == CellType.FORMULA) {
      texts.add(formula(cell.getCellFormula()));
    }
  }

  /** Office programs write formulas in ways of their own, and a plain truth as one. */
  private static String formula(String written) {
    return switch (written) {
      case "TRUE()" -> "truth true";
      case "FALSE()" -> "truth false";
      default -> "formula";
    };
  }

  /** The sheet on which the named cells stand; null where they do not. */
  private static @Nullable XSSFSheet sheetOf(XSSFWorkbook workbook, String name) {
    XSSFName cells = workbook.getName(name);
    try {
      return cells == null
          ? null
          : workbook.getSheet(
              new AreaReference(cells.getRefersToFormula(), workbook.getSpreadsheetVersion())
                  .getFirstCell()
                  .getSheetName());
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  private CellReference asOf() {
    XSSFName name = workbook.getName(Glance.AS_OF);
    try {
      return name == null
          ? new CellReference(-1, -1)
          : new CellReference(name.getRefersToFormula());
    } catch (IllegalArgumentException e) {
      return new CellReference(-1, -1);
    }
  }

  private static String text(Row row, int column) {
    Cell cell = row.getCell(column);
    return cell != null && cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
  }
}
