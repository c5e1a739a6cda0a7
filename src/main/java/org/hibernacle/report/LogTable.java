package org.hibernacle.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hibernacle.model.LogEntry.IfBlank;
import org.hibernacle.model.LogSheet;
import org.hibernacle.model.Outcome;
import org.hibernacle.model.Place;
import org.hibernacle.model.SheetTable;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.report.Section.Entry;

/**
 * What the keeper fills in as the winter goes: real dates and outcomes. What an earlier log holds
 * is carried over by Id, with columns of the keeper's own and rows of plants that are gone.
 */
final class LogTable {
  /** Columns written from the plan, in order. */
  private static final List<String> PLANNED =
      List.of(
          "id",
          "name",
          "planned-move-down",
          "planned-move-in",
          "planned-step-out",
          "planned-return");

  /** Columns that the keeper writes, in order. */
  private static final List<String> KEPT =
      List.of(
          "real-move-down",
          "real-move-in",
          "real-step-out",
          "real-return",
          "if-blank",
          "stood-in",
          "outcome",
          "noticed",
          "remark");

  /** Columns with words to choose from, by which the keys of these words begin. */
  private static final Set<String> CHOICES = Set.of("if-blank", "outcome");

  /** Columns that follow from the others, in order. */
  private static final List<String> FOLLOWING = List.of("days-late", "days-away");

  /** Begins the ids of the keeper's own columns. */
  static final String OWN = "own-";

  private static final String LEFT = "{real-move-down},{real-move-in}";
  private static final String TO_LEAVE = "{planned-move-down},{planned-move-in}";

  private final Material m;
  private final LogSheet earlier;

  private LogTable(Material material) {
    this.m = material;
    this.earlier =
        m.facts()
            .earlierLog()
            .orElse(new LogSheet(new SheetTable("", List.of(), List.of()), List.of()));
  }

  /** Whether it is a column in which the keeper writes. */
  static boolean isKept(String columnId) {
    return KEPT.contains(columnId);
  }

  static Section write(Material m) {
    return new LogTable(m).write();
  }

  private Section write() {
    List<String> outcomes =
        Arrays.stream(Outcome.values()).map(o -> m.words().of("outcome", o)).toList();
    List<String> ifBlank =
        Arrays.stream(IfBlank.values()).map(b -> m.words().of("if-blank", b)).toList();
    List<String> places = m.plan().inventory().places().stream().map(Place::name).toList();
    Table table =
        new Table(m.words(), "log", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.log"))
            .column("id", 8)
            .leads("season-plan", "")
            .column("name", 20)
            .column("planned-move-down", 15, StyleRole.MOVE_DOWN)
            .leads("moving-days", MoveTable.about("", Move.Kind.MOVE_DOWN))
            .column("planned-move-in", 17, StyleRole.MOVE_IN)
            .leads("moving-days", MoveTable.about("", Move.Kind.MOVE_IN))
            .column("planned-step-out", 17, StyleRole.STEP_OUT)
            .leads("moving-days", MoveTable.about("", Move.Kind.STEP_OUT))
            .column("planned-return", 15, StyleRole.RETURN)
            .leads("moving-days", MoveTable.about("", Move.Kind.RETURN))
            .entry("real-move-down", 15, Entry.DATE)
            .entry("real-move-in", 15, Entry.DATE)
            .entry("real-step-out", 15, Entry.DATE)
            .entry("real-return", 15, Entry.DATE)
            .entry("if-blank", 13, Entry.choice(ifBlank))
            .entry("stood-in", 14, Entry.choice(places))
            .entry("outcome", 15, Entry.choice(outcomes))
            .entry("noticed", 15, Entry.DATE)
            .entry("remark", 24, Entry.WORDS);
    int number = 0;
    for (String heading : ownHeadings()) {
      table.named(OWN + ++number, heading, 16, Entry.WORDS);
    }
    table
        .formula(
            "days-late",
            9,
            "IF(OR(COUNT("
                + LEFT
                + ")=0,COUNT("
                + TO_LEAVE
                + ")=0),\"\","
                + "MIN("
                + LEFT
                + ")-MIN("
                + TO_LEAVE
                + "))")
        .numbers()
        .marked("AND(ISNUMBER({days-late}),{days-late}>0)", StyleRole.CAUTION, " !")
        .formula(
            "days-away",
            9,
            "IF(COUNT("
                + LEFT
                + ")=0,\"\",MAX(0,"
                + "IF(COUNT({real-return})=0,"
                + Glance.AS_OF
                + ",{real-return})"
                + "-MIN("
                + LEFT
                + ")))")
        .numbers();
    Map<String, List<List<Object>>> rowsById = rowsById();
    for (PlantPlan p : m.byName()) {
      List<List<Object>> rows = rowsById.remove(p.plant().id());
      if (rows == null) {
        table.row(StyleRole.PLAIN, cells(planned(p), List.of()), List.of(p.plant().id()));
      } else {
        rows.forEach(
            row -> table.row(StyleRole.PLAIN, cells(planned(p), row), List.of(p.plant().id())));
      }
    }
    for (List<List<Object>> rows : rowsById.values()) {
      rows.forEach(row -> table.row(StyleRole.SUBTLE, cells(noLongerPlanned(row), row)));
    }
    return table.build();
  }

  private Map<String, List<List<Object>>> rowsById() {
    Map<String, List<List<Object>>> rowsById = new LinkedHashMap<>();
    for (List<Object> row : earlier.table().rows()) {
      String id = m.display().text(cell("id", row));
      if (row.stream().anyMatch(value -> !value.equals(""))) {
        rowsById.computeIfAbsent(id, k -> new ArrayList<>()).add(row);
      }
    }
    return rowsById;
  }

  private List<Cell> planned(PlantPlan p) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell.Text(p.plant().id()));
    cells.add(new Cell.Text(p.plant().name()));
    Arrays.stream(Move.Kind.values())
        .filter(Move.Kind::carries)
        .map(kind -> p.move(kind).<Cell>map(mv -> new Cell.Day(mv.date())).orElse(new Cell.Gap()))
        .forEach(cells::add);
    return cells;
  }

  private List<Cell> noLongerPlanned(List<Object> row) {
    return PLANNED.stream().map(id -> cell(id, row)).toList();
  }

  private List<Cell> cells(List<Cell> planned, List<Object> earlierRow) {
    List<Cell> cells = new ArrayList<>(planned);
    KEPT.forEach(id -> cells.add(cell(id, earlierRow)));
    earlier
        .own()
        .forEach(i -> cells.add(earlierRow.isEmpty() ? new Cell.Gap() : cell(earlierRow.get(i))));
    cells.addAll(following(cells));
    return cells;
  }

  /** What the columns that follow say of the days entered. */
  private List<Cell> following(List<Cell> cells) {
    Optional<LocalDate> toLeave = first(cells, PLANNED.indexOf("planned-move-down"));
    Optional<LocalDate> left = first(cells, PLANNED.size() + KEPT.indexOf("real-move-down"));
    Cell back = cells.get(PLANNED.size() + KEPT.indexOf("real-return"));
    LocalDate until = back instanceof Cell.Day day ? day.date() : m.asOf();
    return List.of(
        left.isPresent() && toLeave.isPresent()
            ? Measures.count(ChronoUnit.DAYS.between(toLeave.get(), left.get()))
            : new Cell.Text(""),
        left.isPresent()
            ? Measures.count(Math.max(0, ChronoUnit.DAYS.between(left.get(), until)))
            : new Cell.Text(""));
  }

  /** The earlier of a move-down and of the move-in beside it. */
  private static Optional<LocalDate> first(List<Cell> cells, int moveDown) {
    return cells.subList(moveDown, moveDown + 2).stream()
        .filter(Cell.Day.class::isInstance)
        .map(cell -> ((Cell.Day) cell).date())
        .min(Comparator.naturalOrder());
  }

  /** Headings of the keeper's own columns; where one is like another heading, it is numbered. */
  private List<String> ownHeadings() {
    Set<String> taken = new HashSet<>();
    Stream.of(PLANNED, KEPT, FOLLOWING)
        .flatMap(List::stream)
        .forEach(id -> taken.add(m.words().text("column." + id).toLowerCase(Locale.ROOT)));
    List<String> headings = new ArrayList<>();
    for (int column : earlier.own()) {
      String found = earlier.table().headings().get(column).strip();
      String heading = found;
      for (int i = 2; !heading.isEmpty() && !taken.add(heading.toLowerCase(Locale.ROOT)); i++) {
        heading = m.words().text("workbook.sheet-again", found, i);
      }
      headings.add(heading);
    }
    return headings;
  }

  /** What an earlier row has in a column, in the words of this plan. */
  private Cell cell(String id, List<Object> row) {
    Object value = row.isEmpty() ? "" : earlier.value(row, id);
    String key = id + "." + value;
    boolean constant = CHOICES.contains(id) && m.words().has(key);
    return constant ? new Cell.Text(m.words().text(key)) : cell(value);
  }

  private Cell cell(Object value) {
    if (value instanceof LocalDate date) {
      return new Cell.Day(date);
    } else if (value instanceof Double number) {
      int decimals = number == Math.rint(number) ? 0 : 2;
      return new Cell.Quantity(number, "", decimals);
    }
    String text = value.toString();
    return text.isEmpty() ? new Cell.Gap() : new Cell.Text(text);
  }
}
