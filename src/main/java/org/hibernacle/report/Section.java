package org.hibernacle.report;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

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
   * @param formula the cell's number restated in column ids, {@code {room}-{used}}, so that the
   *     workbook follows when the keeper edits one of them; empty for none
   */
  public record Column(
      String id,
      String heading,
      String help,
      int width,
      Set<Medium> media,
      StyleRole role,
      Entry entry,
      String formula) {
    public Column {
      media = Set.copyOf(media);
    }

    /** A column that is only read. */
    public Column(String id, String heading, String help, int width, Set<Medium> media) {
      this(id, heading, help, width, media, StyleRole.PLAIN, Entry.NONE, "");
    }
  }

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

    /** Kind of entry. */
    public enum Kind {
      NONE,
      DATE,
      WORDS,
      TICK,
      CHOICE
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
   */
  public record Row(StyleRole role, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
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
