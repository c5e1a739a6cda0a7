package org.hibernacle.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.hibernacle.input.FoundSheet.FoundRow;
import org.hibernacle.model.Place;
import org.jspecify.annotations.Nullable;

/**
 * A table that a season plan wrote, found by the name of its cells or else by its title, so that a
 * keeper may move or rename sheets. Its headings stand in the first row, in the words that the
 * plan's {@link PlanRecord} tells, or in English.
 *
 * @param table which
 * @param found the sheet
 * @param record of the plan
 * @param columns index of each column that is there
 */
record PlanSheet(
    PlanTable table, FoundSheet found, PlanRecord record, Map<PlanColumn, Integer> columns) {
  /** The table, if the workbook has it. */
  static Optional<PlanSheet> find(
      String file, XSSFWorkbook book, PlanTable table, Problems problems) {
    PlanRecord record = PlanRecord.of(book);
    String title = record.word("section." + table.id()).orElse(table.title());
    XSSFName name = book.getName(table.cells());
    Sheet sheet = name == null ? book.getSheet(title) : named(book, name, title);
    if (sheet == null) {
      return Optional.empty();
    }
    FoundSheet found = SheetReader.read(file, sheet, problems);
    List<String> headings =
        found.rows().isEmpty()
            ? List.of()
            : found.rows().get(0).cells().stream().map(cell -> Words.key(cell.text())).toList();
    Map<PlanColumn, Integer> columns = new EnumMap<>(PlanColumn.class);
    for (PlanColumn column : table.columns()) {
      int index = index(headings, record, table, column);
      if (index >= 0) {
        columns.put(column, index);
      }
    }
    return Optional.of(new PlanSheet(table, found, record, columns));
  }

  /** Where the column stands: under the heading that the plan tells, or the English one. */
  private static int index(
      List<String> headings, PlanRecord record, PlanTable table, PlanColumn column) {
    Optional<String> told = record.word(table.id() + "." + column.id());
    if (told.isPresent()) {
      return headings.indexOf(Words.key(told.get()));
    }
    return IntStream.range(0, headings.size())
        .filter(i -> column.titled(headings.get(i)))
        .findFirst()
        .orElse(-1);
  }

  /**
   * The sheet of the named cells; where the name means no cells any more, the one of that title.
   */
  private static @Nullable Sheet named(XSSFWorkbook book, XSSFName name, String title) {
    String formula = name.getRefersToFormula();
    try {
      AreaReference cells =
          new AreaReference(formula == null ? "" : formula, book.getSpreadsheetVersion());
      String sheet = cells.getFirstCell().getSheetName();
      return book.getSheet(sheet == null ? title : sheet);
    } catch (IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException e) {
      return book.getSheet(title); // the library's ways to say that it is no reference
    }
  }

  boolean has(PlanColumn... wanted) {
    return columns.keySet().containsAll(List.of(wanted));
  }

  /** Reports each of the headings that the sheet lacks. */
  boolean require(Problems problems, PlanColumn... wanted) {
    Arrays.stream(wanted)
        .filter(column -> !has(column))
        .forEach(column -> problems.error(Code.PLAN_HEADING, found.where(), heading(column)));
    return has(wanted);
  }

  /** The heading of a column as it stands there, or would. */
  String heading(PlanColumn column) {
    Integer index = columns.get(column);
    return index == null
        ? record.word(table.id() + "." + column.id()).orElse(column.title())
        : found.rows().get(0).cells().get(index).text();
  }

  /** What each column is, from the first on; empty where the plan did not write it. */
  List<String> ids() {
    int width = found.rows().isEmpty() ? 0 : found.rows().get(0).cells().size();
    List<String> ids = new ArrayList<>(Collections.nCopies(width, ""));
    columns.forEach((column, index) -> ids.set(index, column.id()));
    return ids;
  }

  /** The rows below the headings. */
  List<FoundRow> rows() {
    return found.rows().isEmpty() ? List.of() : found.rows().subList(1, found.rows().size());
  }

  /** The cell under a heading; empty where the sheet has no such heading. */
  Optional<FoundCell> cell(FoundRow row, PlanColumn column) {
    return Optional.ofNullable(columns.get(column)).map(row.cells()::get);
  }

  /** What stands there, as text. */
  String text(FoundRow row, PlanColumn column) {
    return cell(row, column).map(FoundCell::text).orElse("");
  }

  /**
   * Ids of the list that stands there. An Id may hold what parts members, and behind it may stand
   * the mass of the pot; members that begin with no known Id are told as they stand.
   */
  List<String> ids(FoundRow row, PlanColumn column, Set<String> known) {
    String joint = record.word("list.joint").filter(word -> !word.isBlank()).orElse(", ");
    List<String> ids = new ArrayList<>();
    String rest = text(row, column).strip();
    while (!rest.isEmpty()) {
      String left = rest;
      Optional<String> id =
          known.stream()
              .filter(i -> !i.isEmpty() && left.startsWith(i))
              .filter(i -> ends(left.substring(i.length()), joint.strip()))
              .max(Comparator.comparing(String::length));
      int end = rest.indexOf(joint, id.map(String::length).orElse(0));
      String member = end < 0 ? rest : rest.substring(0, end);
      ids.add(id.orElse(member.strip()));
      rest = end < 0 ? "" : rest.substring(end + joint.length()).strip();
    }
    ids.removeIf(String::isEmpty);
    return ids;
  }

  private static boolean ends(String behind, String joint) {
    return behind.isEmpty() || behind.startsWith(" ") || behind.startsWith(joint);
  }

  /** The name of the place that stands there, as the inventory has it. */
  String place(FoundRow row, PlanColumn column) {
    return record.place(text(row, column), Place.WRAPPED);
  }

  /** The kind of the move that the row is about, by the name of its constant. */
  Optional<String> moveKind(FoundRow row) {
    String text = text(row, PlanColumn.MOVE);
    return record.constant("move", text).or(() -> Choice.MOVE.find(text));
  }

  /** The day that stands there, if one does. */
  Optional<LocalDate> day(FoundRow row, PlanColumn column) {
    Object value = cell(row, column).map(FoundCell::value).orElse("");
    return value instanceof LocalDate day ? Optional.of(day) : DayText.read(value.toString());
  }

  /** The number that stands there, if one does. */
  OptionalDouble number(FoundRow row, PlanColumn column) {
    return cell(row, column)
        .map(FoundCell::value)
        .filter(Double.class::isInstance)
        .map(value -> OptionalDouble.of((Double) value))
        .orElse(OptionalDouble.empty());
  }

  /** Whether the heading names °F. */
  boolean inFahrenheit(PlanColumn column) {
    return Words.key(heading(column)).endsWith("f");
  }

  /** The words that the plan offers in a column, or the English ones. */
  List<String> offered(String prefix, Choice<?> english) {
    List<String> told = record.words(prefix);
    return told.isEmpty() ? english.words() : told;
  }

  /** What a word offered in a column means, by the plan or else in English. */
  <E extends Enum<E>> Optional<E> choice(
      FoundRow row, PlanColumn column, String prefix, Class<E> constants, Choice<E> english) {
    String text = text(row, column);
    return record
        .constant(prefix, text)
        .flatMap(
            name ->
                Arrays.stream(constants.getEnumConstants())
                    .filter(constant -> constant.name().equals(name))
                    .findFirst())
        .or(() -> english.find(text));
  }
}
