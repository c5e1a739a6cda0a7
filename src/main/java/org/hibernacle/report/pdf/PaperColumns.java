package org.hibernacle.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Section;
import org.hibernacle.report.Section.Column;
import org.hibernacle.report.Section.Entry;
import org.hibernacle.report.Section.Medium;

/**
 * Which columns of a section stand side by side on paper, how wide, and what goes on lines below
 * the row. No column is narrower than its longest word: what does not fit on landscape paper goes
 * below, with its heading.
 */
final class PaperColumns {
  /** A longer word may be broken, in points. */
  private static final float LONGEST_WORD = 170;

  /** Width of a character of a column's width, in points. */
  private static final float CHARACTER = 5.4f;

  private final Section section;
  private final Typefaces type;
  private final CellBoxes boxes;
  private final List<Integer> side = new ArrayList<>();
  private final List<Integer> below = new ArrayList<>();
  private final boolean landscape;
  private final float[] widths;

  PaperColumns(Section section, Typefaces type, CellBoxes boxes, Pages pages) {
    this.section = section;
    this.type = type;
    this.boxes = boxes;
    for (int i = 0; i < section.columns().size(); i++) {
      Column column = section.columns().get(i);
      if (column.media().contains(Medium.BELOW)) {
        below.add(i);
      } else if (column.media().contains(Medium.PDF) && !isBlank(i)) {
        side.add(i);
      }
    }
    landscape = measure().leastTotal() > pages.portraitWidth();
    float width = landscape ? pages.landscapeWidth() : pages.portraitWidth();
    while (side.size() > 1 && measure().leastTotal() > width) {
      below.add(0, side.remove(side.size() - 1));
    }
    ColumnWidths measured = measure();
    float[] shared = measured.share(width);
    widths =
        measured.leastTotal() < width
            ? WidthSearch.lowest(shared, least(measured), 0, lines()::total)
            : shared;
  }

  private static float[] least(ColumnWidths measured) {
    float[] least = new float[measured.least().size()];
    for (int i = 0; i < least.length; i++) {
      least[i] = measured.least().get(i);
    }
    return least;
  }

  /** Headings and rows in words. */
  private RowLines lines() {
    RowLines lines = new RowLines();
    for (int place = 0; place < side.size(); place++) {
      int index = side.get(place);
      List<float[]> words = new ArrayList<>();
      words.add(boxes.words(column(index).heading(), Style.COLUMN_HEADING));
      for (Section.Row row : section.rows()) {
        words.add(
            runsToTheEnd(row, place)
                ? new float[0]
                : boxes.words(row.cells().get(index), weight(place)));
      }
      lines.add(words);
    }
    return lines;
  }

  /** Whether the words may take the room of all columns to their right, which are free. */
  private boolean runsToTheEnd(Section.Row row, int place) {
    return place + 1 < side.size()
        && row.cells().get(side.get(place)) instanceof Cell.Text
        && IntStream.range(place + 1, side.size()).allMatch(next -> isFree(row, next));
  }

  /** Whether words from the left may run on over that cell. */
  boolean isFree(Section.Row row, int place) {
    return row.cells().get(side.get(place)) instanceof Cell.Gap
        && column(side.get(place)).entry().kind() == Entry.Kind.NONE;
  }

  /** Whether nothing stands in the column and nothing is to be filled in. */
  private boolean isBlank(int column) {
    return section.columns().get(column).entry().kind() == Entry.Kind.NONE
        && !section.rows().isEmpty()
        && section.rows().stream().allMatch(r -> r.cells().get(column) instanceof Cell.Gap);
  }

  boolean landscape() {
    return landscape;
  }

  /** Indexes of the columns side by side. */
  List<Integer> side() {
    return side;
  }

  /** Widths of these, in points. */
  float[] widths() {
    return widths.clone();
  }

  Column column(int index) {
    return section.columns().get(index);
  }

  /** The lines below a row. */
  List<String> below(Section.Row row) {
    List<String> lines = new ArrayList<>();
    for (int index : below) {
      String text = boxes.text(row.cells().get(index));
      if (!text.isEmpty()) {
        boolean own = column(index).media().contains(Medium.BELOW);
        lines.add(own ? text : column(index).heading() + ": " + text);
      }
    }
    return lines;
  }

  boolean isNumeric(int index) {
    return section.rows().stream().anyMatch(r -> r.cells().get(index) instanceof Cell.Quantity);
  }

  /** An Id and the name beside it name their row; elsewhere the first column does. */
  CellBoxes.Weight weight(int place) {
    boolean byId = column(side.get(0)).id().equals("id");
    return place == 0 || (place == 1 && byId) ? CellBoxes.Weight.NAME : CellBoxes.Weight.ORDINARY;
  }

  private ColumnWidths measure() {
    List<Float> least = new ArrayList<>();
    List<Float> best = new ArrayList<>();
    IntStream.range(0, side.size()).forEach(place -> measure(place, least, best));
    return new ColumnWidths(least, best);
  }

  private void measure(int place, List<Float> least, List<Float> best) {
    Column column = column(side.get(place));
    float word = boxes.widestWord(column.heading(), Style.COLUMN_HEADING);
    float line = type.width(column.heading(), Style.COLUMN_HEADING);
    float across =
        CellBoxes.ACROSS + (isNumeric(side.get(place)) ? CellBoxes.AFTER_NUMBER : CellBoxes.ACROSS);
    word += across;
    line += across;
    for (Section.Row row : section.rows()) {
      Cell cell = row.cells().get(side.get(place));
      if (!runsToTheEnd(row, place)) {
        word = Math.max(word, boxes.narrowest(cell, weight(place)));
        line = Math.max(line, boxes.oneLine(cell, weight(place)));
      }
    }
    // One point to spare against rounding.
    float narrowest = Math.min(word, LONGEST_WORD) + 1;
    least.add(narrowest);
    best.add(Math.max(narrowest, Math.min(line + 1, column.width() * CHARACTER)));
  }
}
