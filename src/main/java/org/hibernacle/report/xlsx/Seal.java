package org.hibernacle.report.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.model.Tick;
import org.hibernacle.report.Glance;
import org.hibernacle.report.RunFacts;
import org.jspecify.annotations.Nullable;

/**
 * Tells whether anything was written into a plan that the next one does not carry on. A digest of
 * what stands in all cells and notes is part of the plan's record; left out are the log and the
 * ticks, which are carried on, the notes on ticks without work, which go on as such, and the day
 * under <em>As of</em>; of formulas only counts how many there are. In the log, its notes and the
 * columns that the program fills are sealed, these row by row: rows of the keeper's own are carried
 * on.
 *
 * <p>In which order cells stand plays no part, so that a sorted table is the same. Numbers count to
 * nine figures: office programs write the last ones otherwise.
 */
public final class Seal {
  /** What the line of the record begins with. */
  private static final String LINE = "seal";

  /** What the line of the log's notes begins with. */
  private static final String LOG_LINE = "seal-log";

  /** What a line begins with that seals the program's columns in a row of the log. */
  private static final String ROW_LINE = "seal-row";

  private static final String LOG = "table_log";
  private static final String NOTES = "table_notes";

  /** Keys of the log's headings over what the program fills. */
  private static final Pattern PLANNED = Pattern.compile("log\\.(?:id|name|planned-.+|days-.+)");

  private static final Pattern WITHOUT_WORK =
      Pattern.compile("\\[" + Pattern.quote(Tick.WITHOUT_WORK) + "]");

  private static final String FORMULA = "formula";

  private static final MathContext FIGURES = new MathContext(9);

  private static final Set<String> WITH_TICKS = Set.of("table_moving_days", "table_tasks");

  /** What a seal says. */
  public enum State {
    /** Nothing would be lost. */
    WHOLE,
    /** Something would be. */
    BROKEN,
    /** There is none, so that it can not be told. */
    NONE
  }

  private final XSSFWorkbook workbook;

  /** Headings of columns with ticks. */
  private final Set<String> done = new HashSet<>();

  /** Headings of the log's columns that the program fills. */
  private final Set<String> planned = new HashSet<>();

  private Seal(XSSFWorkbook workbook, List<List<String>> record) {
    this.workbook = workbook;
    for (List<String> line : record) {
      if (line.size() > 2 && line.get(1).endsWith(".done")) {
        done.add(line.get(2));
      } else if (line.size() > 2 && PLANNED.matcher(line.get(1)).matches()) {
        planned.add(line.get(2));
      }
    }
  }

  /**
   * Whether a workbook holds anything that was not written by the program and would be lost with
   * it.
   *
   * @throws IOException if it is no workbook
   */
  public static State of(byte[] bytes) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      return of(workbook);
    }
  }

  static State of(XSSFWorkbook workbook) {
    XSSFSheet sheet = sheetOf(workbook, WorkbookWriter.RECORD_NAME);
    if (sheet == null) {
      return State.NONE;
    }
    List<List<String>> record = new ArrayList<>();
    for (Row row : sheet) {
      record.add(List.of(text(row, 0), text(row, 1), text(row, 2)));
    }
    if (record.stream().noneMatch(line -> line.get(0).equals(LINE))) {
      return State.NONE;
    }
    try {
      return new Seal(workbook, record).holds(record) ? State.WHOLE : State.BROKEN;
    } catch (RuntimeException e) {
      return State.BROKEN; // the library's ways to say that it can not read a cell
    }
  }

  /**
   * The lines that seal a workbook, which has all but its record.
   *
   * @param record the other lines of it, which tell the headings
   */
  static List<List<String>> lines(XSSFWorkbook workbook, List<List<String>> record) {
    Seal seal = new Seal(workbook, record);
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of(LINE, seal.digest()));
    XSSFSheet log = sheetOf(workbook, LOG);
    if (log != null) {
      lines.add(List.of(LOG_LINE, RunFacts.digest(notes(log))));
      seal.logRows(log).forEach(row -> lines.add(List.of(ROW_LINE, row.id, row.digest)));
    }
    return lines;
  }

  private boolean holds(List<List<String>> record) {
    Set<String> ids = new HashSet<>();
    for (List<String> line : record) {
      if (line.get(0).equals(ROW_LINE)) {
        ids.add(line.get(1));
      }
    }
    XSSFSheet log = sheetOf(workbook, LOG);
    boolean logHolds =
        log == null
            || logRows(log).stream()
                .filter(row -> ids.contains(row.id))
                .allMatch(row -> record.contains(List.of(ROW_LINE, row.id, row.digest)));
    String notes = log == null ? "" : RunFacts.digest(notes(log));
    return logHolds
        && record.stream()
            .filter(line -> line.get(0).equals(LINE) || line.get(0).equals(LOG_LINE))
            .allMatch(line -> line.get(1).equals(line.get(0).equals(LINE) ? digest() : notes));
  }

  private record LogRow(String id, String digest) {}

  /** What stands in the program's columns of the log; rows with nothing but an Id are no rows. */
  private List<LogRow> logRows(XSSFSheet log) {
    Set<Integer> columns = columns(log, planned::contains);
    List<LogRow> rows = new ArrayList<>();
    for (Row row : log) {
      List<String> texts = new ArrayList<>();
      for (int column : new TreeSet<>(columns)) {
        Cell cell = row.getCell(column);
        texts.add(cell == null ? "" : value(cell));
      }
      boolean empty = texts.stream().skip(1).allMatch(t -> t.isEmpty() || t.equals(FORMULA));
      if (row.getRowNum() > 0 && !empty) {
        String id = texts.get(0);
        texts.sort(null);
        rows.add(new LogRow(id, RunFacts.digest(texts)));
      }
    }
    return rows;
  }

  private String digest() {
    XSSFSheet log = sheetOf(workbook, LOG);
    XSSFSheet record = sheetOf(workbook, WorkbookWriter.RECORD_NAME);
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      if (sheet != log && sheet != record) {
        sheet(sheet, texts);
      }
    }
    texts.removeIf(String::isEmpty);
    texts.sort(null);
    return RunFacts.digest(texts);
  }

  private void sheet(XSSFSheet sheet, List<String> texts) {
    boolean ticks = WITH_TICKS.stream().anyMatch(t -> sheetOf(workbook, t) == sheet);
    Set<Integer> ticked = ticks ? columns(sheet, done::contains) : Set.of();
    Set<Integer> told =
        sheetOf(workbook, NOTES) == sheet ? columns(sheet, text -> !text.isEmpty()) : Set.of();
    CellReference asOf = asOf();
    for (Row row : sheet) {
      boolean goesOn = told.stream().anyMatch(i -> WITHOUT_WORK.matcher(text(row, i)).find());
      for (Cell cell : row) {
        boolean isAsOf =
            sheet.getSheetName().equals(asOf.getSheetName())
                && cell.getRowIndex() == asOf.getRow()
                && cell.getColumnIndex() == asOf.getCol();
        boolean isTick = row.getRowNum() > 0 && ticked.contains(cell.getColumnIndex());
        if (!isAsOf && !isTick && !(goesOn && told.contains(cell.getColumnIndex()))) {
          texts.add(value(cell));
        }
      }
    }
    texts.addAll(notes(sheet));
  }

  private static List<String> notes(XSSFSheet sheet) {
    return sheet.getCellComments().values().stream()
        .map(comment -> "note " + comment.getString().getString().replaceAll("\\s+", " ").strip())
        .sorted()
        .toList();
  }

  /** The columns with such headings. */
  private static Set<Integer> columns(XSSFSheet sheet, Predicate<String> heading) {
    Set<Integer> columns = new HashSet<>();
    if (sheet.getRow(0) != null) {
      for (Cell cell : sheet.getRow(0)) {
        if (heading.test(text(sheet.getRow(0), cell.getColumnIndex()))) {
          columns.add(cell.getColumnIndex());
        }
      }
    }
    return columns;
  }

  /** What stands there; empty if nothing does. */
  private static String value(Cell cell) {
    return switch (cell.getCellType()) {
      case STRING ->
          cell.getStringCellValue().isBlank()
              ? ""
              : "words " + cell.getStringCellValue().replaceAll("\\s+", " ").strip();
      case NUMERIC ->
          "number "
              + new BigDecimal(cell.getNumericCellValue())
                  .round(FIGURES)
                  .stripTrailingZeros()
                  .toPlainString();
      case BOOLEAN -> "truth " + cell.getBooleanCellValue();
      case FORMULA -> formula(cell.getCellFormula());
      default -> "";
    };
  }

  /** Office programs write formulas in ways of their own, and a plain truth as one. */
  private static String formula(String written) {
    return switch (written) {
      case "TRUE()" -> "truth true";
      case "FALSE()" -> "truth false";
      default -> FORMULA;
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
