package org.hibernacle.input;

import org.hibernacle.model.LabelGrid;
import org.hibernacle.model.Settings.Paper;

/**
 * Reads how pot labels stand on their sheet. Nothing is needed and no default is noted: only who
 * prints labels has to know.
 */
final class LabelGridRows {
  /** Less than this holds no word. */
  private static final double LEAST_CM = 1;

  private static final int MOST = 40;
  private static final double WIDEST_CM = 15;

  private LabelGridRows() {}

  static LabelGrid read(Row row, Paper paper) {
    LabelGrid usual = LabelGrid.USUAL;
    LabelGrid grid =
        new LabelGrid(
            row.whole(Column.LABEL_ROWS, 1, MOST).orElse(usual.rows()),
            row.whole(Column.LABEL_COLUMNS, 1, MOST).orElse(usual.columns()),
            cm(row, Column.LABEL_MARGIN_TOP, usual.topCm()),
            cm(row, Column.LABEL_MARGIN_BOTTOM, usual.bottomCm()),
            cm(row, Column.LABEL_MARGIN_LEFT, usual.leftCm()),
            cm(row, Column.LABEL_MARGIN_RIGHT, usual.rightCm()),
            cm(row, Column.LABEL_GAP_DOWN, usual.downCm()),
            cm(row, Column.LABEL_GAP_ACROSS, usual.acrossCm()));
    boolean wide =
        wideEnough(
            row,
            grid.labelWidthCm(paper),
            "IN-380.wide",
            Column.LABEL_COLUMNS,
            Column.LABEL_MARGIN_LEFT,
            Column.LABEL_MARGIN_RIGHT,
            Column.LABEL_GAP_ACROSS);
    boolean high =
        wideEnough(
            row,
            grid.labelHeightCm(paper),
            "IN-380.high",
            Column.LABEL_ROWS,
            Column.LABEL_MARGIN_TOP,
            Column.LABEL_MARGIN_BOTTOM,
            Column.LABEL_GAP_DOWN);
    return wide && high ? grid : usual;
  }

  private static double cm(Row row, Column column, double usual) {
    return row.number(column, 0, WIDEST_CM).orElse(usual);
  }

  /** Reports the first setting given of those that decide how wide or high a label is. */
  private static boolean wideEnough(Row row, double cm, String key, Column... deciding) {
    if (cm >= LEAST_CM || row.failed(deciding)) {
      return true;
    }
    for (Column column : deciding) {
      if (!row.isBlank(column)) {
        row.error(key, column, cm);
        return false;
      }
    }
    return true;
  }
}
