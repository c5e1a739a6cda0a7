package org.hibernacle.input;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.jspecify.annotations.Nullable;

/**
 * A table that a season plan wrote, found by the name of its cells or else by its title, so that a
 * keeper may move or rename sheets. Its headings stand in the first row.
 *
 * @param found the sheet
 * @param columns index of each heading, by its key
 */
record PlanSheet(FoundSheet found, Map<String, Integer> columns) {
  /**
   * The table, if the workbook has it.
   *
   * @param id of the section that wrote it, such as {@code moving-days}
   * @param title of the sheet
   */
  static Optional<PlanSheet> find(
      String file, XSSFWorkbook book, String id, String title, Problems problems) {
    XSSFName name = book.getName("table_" + id.replace('-', '_'));
    Sheet sheet = name == null ? book.getSheet(title) : named(book, name, title);
    if (sheet == null) {
      return Optional.empty();
    }
    FoundSheet found = SheetReader.read(file, sheet, problems);
    Map<String, Integer> columns = new HashMap<>();
    if (!found.rows().isEmpty()) {
      List<FoundCell> headings = found.rows().get(0).cells();
      for (int i = 0; i < headings.size(); i++) {
        columns.putIfAbsent(Words.key(headings.get(i).text()), i);
      }
    }
    return Optional.of(new PlanSheet(found, columns));
  }

  /**
   * The sheet of the named cells; where the name means no cells any more, the one of that title.
   */
  private static @Nullable Sheet named(XSSFWorkbook book, XSSFName name, String title) {
    try {
      AreaReference cells =
          new AreaReference(name.getRefersToFormula(), book.getSpreadsheetVersion());
      return book.getSheet(cells.getFirstCell().getSheetName());
    } catch (IllegalArgumentException e) {
      return book.getSheet(title);
    }
  }

  /** Reports each of the headings that the sheet lacks. */
  boolean require(Problems problems, String... headings) {
    List<String> missing =
        Arrays.stream(headings).filter(h -> !columns.containsKey(Words.key(h))).toList();
    missing.forEach(h -> problems.error(Code.PLAN_HEADING, found.where(), h));
    return missing.isEmpty();
  }

  /** The rows below the headings. */
  List<FoundRow> rows() {
    return found.rows().isEmpty() ? List.of() : found.rows().subList(1, found.rows().size());
  }

  /** The cell under a heading; empty where the sheet has no such heading. */
  Optional<FoundCell> cell(FoundRow row, String heading) {
    return Optional.ofNullable(columns.get(Words.key(heading))).map(row.cells()::get);
  }

  /** What stands there, as text. */
  String text(FoundRow row, String heading) {
    return cell(row, heading).map(FoundCell::text).orElse("");
  }

  /** The day that stands there, if one does. */
  Optional<LocalDate> day(FoundRow row, String heading) {
    Object value = cell(row, heading).map(FoundCell::value).orElse("");
    return value instanceof LocalDate day ? Optional.of(day) : DayText.read(value.toString());
  }

  /** The number in the first column whose heading begins so. */
  OptionalDouble number(FoundRow row, String headingStart) {
    return columns.entrySet().stream()
        .filter(e -> e.getKey().startsWith(Words.key(headingStart)))
        .map(e -> row.cells().get(e.getValue()).value())
        .filter(Double.class::isInstance)
        .mapToDouble(Double.class::cast)
        .findFirst();
  }

  /** Whether a heading that begins so names °F. */
  boolean inFahrenheit(String headingStart) {
    String key = Words.key(headingStart);
    return columns.keySet().stream().anyMatch(k -> k.startsWith(key) && k.endsWith("f"));
  }
}
