package org.hibernacle.report;

import java.util.List;

/**
 * Labels to be put on pots, a sheet of paper at a time.
 *
 * @param title of the file
 * @param grid in which they stand
 * @param labels by name, one a pot
 */
public record LabelSheet(String title, Grid grid, List<Label> labels) {
  public LabelSheet {
    labels = List.copyOf(labels);
  }

  /**
   * Equal labels side by side, from the upper left.
   *
   * @param rows from top to bottom
   * @param columns from left to right
   * @param topMm margin above the first row, mm
   * @param leftMm margin left of the first column, mm
   * @param widthMm of one label, mm
   * @param heightMm of one label, mm
   * @param downMm gap between rows, mm
   * @param acrossMm gap between columns, mm
   */
  public record Grid(
      int rows,
      int columns,
      double topMm,
      double leftMm,
      double widthMm,
      double heightMm,
      double downMm,
      double acrossMm) {
    /** Labels on one sheet. */
    public int perSheet() {
      return rows * columns;
    }
  }

  /**
   * What one label says.
   *
   * @param id of the plant, with the number of the pot where its row has several
   * @param name may be shortened
   * @param place where it stands in midwinter; may be shortened
   * @param dates one line a move
   * @param night the forecast below which to act; empty if there is none
   */
  public record Label(String id, String name, String place, List<String> dates, String night) {
    public Label {
      dates = List.copyOf(dates);
    }
  }
}
