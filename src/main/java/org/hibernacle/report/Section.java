package org.hibernacle.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table with its words. Both writers draw any section. Rows that begin alike form a group.
 *
 * @param id stable, also the name of its defined names in the workbook
 * @param title shown, and the sheet's name
 * @param media where it appears
 * @param intro lines above the table
 * @param columns in order
 * @param rows in order
 */
public record Section(
    String id,
    String title,
    Set<Medium> media,
    List<String> intro,
    List<Column> columns,
    List<Row> rows) {

  /** Where a section or a column appears. */
  public enum Medium {
    WORKBOOK,
    PDF,
    /** Of a column: on paper, on lines of its own below the row. */
    BELOW
  }

  /**
   * One column. Those at the right end that only the workbook shows are not printed from it.
   *
   * @param id stable
   * @param heading with its unit
   * @param help shown as a note on the heading; may be empty
   * @param width in characters
   * @param media where the column appears
   * @param role look of its filled cells, so that a kind of date is found at a glance
   * @param entry what the keeper writes there
   * @param live what its cells do by themselves in the workbook
   * @param numeric whether it is for numbers, even if all its cells are blank
   */
  public record Column(
      String id,
      String heading,
      String help,
      int width,
      Set<Medium> media,
      StyleRole role,
      Entry entry,
      Live live,
      boolean numeric) {
    public Column {
      media = Set.copyOf(media);
    }

    /** A column that is only read. */
    public Column(String id, String heading, String help, int width, Set<Medium> media) {
      this(id, heading, help, width, media, StyleRole.PLAIN, Entry.NONE, Live.NONE, false);
    }
  }

  /**
   * What the cells of a column do by themselves in the workbook.
   *
   * @param formula what a filled cell says, restated so that it follows when the keeper edits
   *     others; empty for none. {@code {room}} is the cell of that column in the same row, {@code
   *     {places:room}} the whole column of another section
   * @param marks looks that depend on what stands in the row
   * @param lead where a click on the cell leads
   */
  public record Live(String formula, List<Mark> marks, Optional<Lead> lead) {
    /** Nothing. */
    public static final Live NONE = new Live("", List.of(), Optional.empty());

    public Live {
      marks = List.copyOf(marks);
    }

    /** The same with a formula. */
    public Live saying(String other) {
      return new Live(other, marks, lead);
    }

    /** The same with one more mark. */
    public Live marked(Mark mark) {
      return new Live(formula, Stream.concat(marks.stream(), Stream.of(mark)).toList(), lead);
    }

    /** The same with a lead. */
    public Live leading(Lead other) {
      return new Live(formula, marks, Optional.of(other));
    }
  }

  /**
   * A look that a cell takes on while a condition holds.
   *
   * @param condition in the manner of {@link Live#formula}
   * @param role the look
   * @param sign set behind a number, so that it is told apart without colour; empty where the cell
   *     has words that tell it
   */
  public record Mark(String condition, StyleRole role, String sign) {}

  /**
   * From a row to one that is about the same thing.
   *
   * @param section id of the section with the other row
   * @param about what is added to the first thing that this row is about, see {@link Row#about}
   */
  public record Lead(String section, String about) {}

  /**
   * What the keeper writes into a column.
   *
   * @param kind of entry
   * @param choices offered, for {@link Kind#CHOICE} only
   */
  public record Entry(Kind kind, List<String> choices) {
    /** Nothing: the column is only read. */
    public static final Entry NONE = new Entry(Kind.NONE, List.of());

    /** A date. */
    public static final Entry DATE = new Entry(Kind.DATE, List.of());

    /** Any words. */
    public static final Entry WORDS = new Entry(Kind.WORDS, List.of());

    /** A tick when it is done. */
    public static final Entry TICK = new Entry(Kind.TICK, List.of());

    /** A figure of the inventory that is there already; the keeper may try others. */
    public static final Entry TRIAL = new Entry(Kind.TRIAL, List.of());

    /** Kind of entry. */
    public enum Kind {
      NONE,
      DATE,
      WORDS,
      TICK,
      CHOICE,
      /** A number that is there already and may be changed, zero or more. */
      TRIAL
    }

    public Entry {
      choices = List.copyOf(choices);
    }

    /** One of a few words. */
    public static Entry choice(List<String> choices) {
      return new Entry(Kind.CHOICE, choices);
    }
  }

  /**
   * One row.
   *
   * @param role of the whole row
   * @param cells as many as there are columns
   * @param about Ids of plants and moves that the row is about, the chief one first; other rows
   *     lead here by them
   */
  public record Row(StyleRole role, List<Cell> cells, List<String> about) {
    public Row {
      cells = List.copyOf(cells);
      about = List.copyOf(about);
    }

    /** A row that nothing leads to. */
    public Row(StyleRole role, List<Cell> cells) {
      this(role, cells, List.of());
    }
  }

  public Section {
    media = Set.copyOf(media);
    intro = List.copyOf(intro);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      if (row.cells().size() != columns.size()) {
        throw new IllegalArgumentException(
            id + ": a row of " + row.cells().size() + " cells for " + columns.size() + " columns");
      }
    }
  }

  /** Whether the row begins with the same cell as the one above it. */
  public boolean continuesGroup(int row) {
    return row > 0 && first(row).equals(first(row - 1));
  }

  /** Whether any rows form a group. */
  public boolean isGrouped() {
    return IntStream.range(0, rows.size()).anyMatch(this::continuesGroup);
  }

  private Cell first(int row) {
    return rows.get(row).cells().get(0);
  }
}
