package org.hibernacle.report.xlsx;

import org.apache.poi.xssf.usermodel.XSSFRow;

/**
 * Heights of rows with wrapped words. Programs differ in whether they fit them by themselves, so
 * each row is given the height that its longest cell asks for.
 */
final class Paragraphs {
  /** Height of a line, of the height of its letters. */
  private static final double LINE_PER_LETTER = 1.3;

  private static final double PADDING_PT = 5;
  private static final double LETTERS_PER_DIGIT = 1.1;

  /** Highest row that the file format knows, points. */
  private static final double HIGHEST_PT = 409;

  private Paragraphs() {}

  /**
   * Lines that the text takes in a column.
   *
   * @param text to wrap
   * @param columnWidth in digits; letters of running text are narrower than digits by a tenth or
   *     more, of which half is counted on
   */
  static int lines(String text, double columnWidth) {
    double width = columnWidth * LETTERS_PER_DIGIT;
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      lines++;
      double used = 0;
      for (String word : paragraph.split(" ", -1)) {
        double length = word.length();
        if (used > 0 && used + 1 + length > width) {
          lines++;
          used = 0;
        }
        used += (used > 0 ? 1 : 0) + length;
        while (used > width) {
          lines++;
          used -= width;
        }
      }
    }
    return lines;
  }

  /** Makes the row high enough for that many lines of letters of {@code sizePt}. */
  static void fit(XSSFRow row, int lines, double sizePt) {
    double heightPt = Math.rint(lines * LINE_PER_LETTER * sizePt + PADDING_PT);
    row.setHeightInPoints((float) Math.min(HIGHEST_PT, heightPt));
  }
}
