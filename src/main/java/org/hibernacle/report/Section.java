package org.hibernacle.report;

import java.util.List;
import java.util.Set;

/**
 * A table with its words. Both writers draw any section.
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

  /** Where a section appears. */
  public enum Medium {
    WORKBOOK,
    PDF
  }

  /**
   * One column.
   *
   * @param id stable
   * @param heading with its unit
   * @param help shown as a note on the heading; may be empty
   * @param width in characters
   * @param media where the column appears
   */
  public record Column(String id, String heading, String help, int width, Set<Medium> media) {
    public Column {
      media = Set.copyOf(media);
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
}
