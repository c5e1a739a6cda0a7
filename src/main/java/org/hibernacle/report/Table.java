package org.hibernacle.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Entry;
import org.hibernacle.report.Section.Lead;
import org.hibernacle.report.Section.Live;
import org.hibernacle.report.Section.Mark;
import org.hibernacle.report.Section.Medium;
import org.hibernacle.report.Section.Row;

/**
 * Puts a section together: columns from left to right, then rows. A heading is the text of {@code
 * column.ID}, its help that of {@code help.ID} if there is one.
 */
final class Table {
  static final Set<Medium> EVERYWHERE = EnumSet.of(Medium.WORKBOOK, Medium.PDF);
  static final Set<Medium> WORKBOOK_ONLY = EnumSet.of(Medium.WORKBOOK);

  /** Longest text that a formula of a workbook may quote, with room for what is doubled. */
  static final int LONGEST_QUOTED = 120;

  private final Words words;
  private final String id;
  private final Set<Medium> media;
  private final List<String> intro = new ArrayList<>();
  private final List<Column> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  Table(Words words, String id, Set<Medium> media) {
    this.words = words;
    this.id = id;
    this.media = media;
  }

  /** A line above the table. */
  Table intro(String text) {
    intro.add(text);
    return this;
  }

  /** A column to be read, {@code arguments} being those of its heading. */
  Table column(String columnId, int width, Object... arguments) {
    return column(columnId, width, StyleRole.PLAIN, arguments);
  }

  /** A column whose filled cells have the look of {@code role}. */
  Table column(String columnId, int width, StyleRole role, Object... arguments) {
    String heading = words.text("column." + columnId, arguments);
    return add(columnId, heading, width, EVERYWHERE, role, Entry.NONE, Live.NONE);
  }

  /** A column for which only the workbook has room. */
  Table workbookColumn(String columnId, int width, Object... arguments) {
    String heading = words.text("column." + columnId, arguments);
    return add(columnId, heading, width, WORKBOOK_ONLY, StyleRole.PLAIN, Entry.NONE, Live.NONE);
  }

  /** Words that paper sets below the row. */
  Table wordsColumn(String columnId, int width) {
    String heading = words.text("column." + columnId);
    Set<Medium> belowOnPaper = EnumSet.of(Medium.WORKBOOK, Medium.BELOW);
    return add(columnId, heading, width, belowOnPaper, StyleRole.PLAIN, Entry.NONE, Live.NONE);
  }

  /** What other columns hold in the workbook, in one line below the row on paper. */
  Table paperLine(String columnId) {
    return add(columnId, "", 0, EnumSet.of(Medium.BELOW), StyleRole.PLAIN, Entry.NONE, Live.NONE);
  }

  /** A column that the keeper fills in. */
  Table entry(String columnId, int width, Entry entry, Object... arguments) {
    String heading = words.text("column." + columnId, arguments);
    return add(columnId, heading, width, EVERYWHERE, StyleRole.PLAIN, entry, Live.NONE);
  }

  /** A column that follows from others, as {@code {room}-{used}}. */
  Table formula(String columnId, int width, String formula, Object... arguments) {
    String heading = words.text("column." + columnId, arguments);
    return add(
        columnId,
        heading,
        width,
        EVERYWHERE,
        StyleRole.PLAIN,
        Entry.NONE,
        Live.NONE.saying(formula));
  }

  /** A column whose heading is a name from the inventory. */
  Table named(String columnId, String heading, int width, Entry entry) {
    return add(columnId, heading, width, EVERYWHERE, StyleRole.PLAIN, entry, Live.NONE);
  }

  private Table add(
      String columnId,
      String heading,
      int width,
      Set<Medium> columnMedia,
      StyleRole role,
      Entry entry,
      Live live) {
    String helpKey = "help." + columnId;
    String help = words.has(helpKey) ? words.text(helpKey) : "";
    columns.add(new Column(columnId, heading, help, width, columnMedia, role, entry, live, false));
    return this;
  }

  /** A column that follows from others, for which only the workbook has room. */
  Table workbookFormula(String columnId, int width, String formula, Object... arguments) {
    String heading = words.text("column." + columnId, arguments);
    Live live = Live.NONE.saying(formula);
    return add(columnId, heading, width, WORKBOOK_ONLY, StyleRole.PLAIN, Entry.NONE, live);
  }

  /** The same under a heading of its own. */
  Table namedFormula(String columnId, String heading, int width, String formula) {
    Live live = Live.NONE.saying(formula);
    return add(columnId, heading, width, WORKBOOK_ONLY, StyleRole.PLAIN, Entry.NONE, live);
  }

  /** Has the last column take on a look while a condition holds. */
  Table marked(String condition, StyleRole role, String sign) {
    return live(live -> live.marked(new Mark(condition, role, sign)));
  }

  /** Has the last column lead to the row of another section that is about the same. */
  Table leads(String section, String about) {
    return live(live -> live.leading(new Lead(section, about)));
  }

  /** Text within a formula; braces are spelt out, since they stand for columns. */
  static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"").replace("{", "\"&CHAR(123)&\"") + "\"";
  }

  /** Tells of the last column that it is for numbers, even if all its cells are blank. */
  Table numbers() {
    return last(UnaryOperator.identity(), true);
  }

  private Table live(UnaryOperator<Live> change) {
    return last(change, columns.get(columns.size() - 1).numeric());
  }

  private Table last(UnaryOperator<Live> change, boolean numeric) {
    Column last = columns.remove(columns.size() - 1);
    columns.add(
        new Column(
            last.id(),
            last.heading(),
            last.help(),
            last.width(),
            last.media(),
            last.role(),
            last.entry(),
            change.apply(last.live()),
            numeric));
    return this;
  }

  Table row(StyleRole role, List<Cell> cells) {
    return row(role, cells, List.of());
  }

  /** A row that others lead to by the Ids it is about. */
  Table row(StyleRole role, List<Cell> cells, List<String> about) {
    rows.add(new Row(role, cells, about));
    return this;
  }

  Section build() {
    String title = words.text("section." + id);
    return new Section(id, title, media, intro, columns, rows);
  }
}
