package org.hibernacle.model;

import org.hibernacle.model.Settings.Paper;

/**
 * How pot labels stand on a sheet of paper, in portrait: all of one size, which follows from what
 * the margins and gaps leave.
 *
 * @param rows from top to bottom, 1 or more
 * @param columns from left to right, 1 or more
 * @param topCm margin of the paper, cm (0 or more)
 * @param bottomCm margin
 * @param leftCm margin
 * @param rightCm margin
 * @param downCm gap between two rows, cm (0 or more)
 * @param acrossCm gap between two columns, cm (0 or more)
 */
public record LabelGrid(
    int rows,
    int columns,
    double topCm,
    double bottomCm,
    double leftCm,
    double rightCm,
    double downCm,
    double acrossCm) {
  /** Fits A4 and Letter, on plain paper to be cut. */
  public static final LabelGrid USUAL = new LabelGrid(5, 3, 1, 1, 1, 1, 0.4, 0.4);

  public LabelGrid {
    if (rows < 1 || columns < 1) {
      throw new IllegalArgumentException("a grid has a row and a column at least");
    }
  }

  /** Width of one label, cm; zero or less where margins and gaps leave nothing. */
  public double labelWidthCm(Paper paper) {
    double paperCm = paper == Paper.LETTER ? 21.59 : 21.0;
    return (paperCm - leftCm - rightCm - (columns - 1) * acrossCm) / columns;
  }

  /** Height of one label, cm; zero or less where margins and gaps leave nothing. */
  public double labelHeightCm(Paper paper) {
    double paperCm = paper == Paper.LETTER ? 27.94 : 29.7;
    return (paperCm - topCm - bottomCm - (rows - 1) * downCm) / rows;
  }
}
