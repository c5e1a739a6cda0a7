package org.hibernacle.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hibernacle.report.Cell;
import org.hibernacle.report.Display;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Words;
import org.junit.jupiter.api.Test;

class PaperColumnsTest {
  private final Words words = Words.of(Locale.UK);
  private final Typefaces type;
  private final CellBoxes boxes;
  private final Pages pages;

  PaperColumnsTest() throws IOException {
    type = new Typefaces(Palette.standard(), Optional.empty());
    boxes = new CellBoxes(type, new Display(words));
    Imprint imprint = Imprint.of(PaperReports.season());
    PageFrame frame = new PageFrame(imprint, type, words);
    pages = new Pages(imprint, frame, type, OutputStream.nullOutputStream());
  }

  private PaperColumns columns(Section section) {
    return new PaperColumns(section, type, boxes, pages);
  }

  @Test
  void noColumnIsNarrowerThanItsLongestWord() {
    SeasonReport report = PaperReports.season();
    for (Section section : report.sections()) {
      PaperColumns columns = columns(section);
      for (int place = 0; place < columns.side().size(); place++) {
        int index = columns.side().get(place);
        float width = columns.widths()[place];
        String heading = columns.column(index).heading();
        assertTrue(boxes.widestWord(heading, Style.COLUMN_HEADING) < width, heading);
        for (Section.Row row : section.rows()) {
          Cell cell = row.cells().get(index);
          // The digest of a file has no column of its own width.
          float least = Math.min(boxes.narrowest(cell, columns.weight(place)), 170);
          float free = width;
          for (int next = place + 1;
              next < columns.side().size() && columns.isFree(row, next);
              next++) {
            free += columns.widths()[next];
          }
          assertTrue(least <= free, heading + ": " + boxes.text(cell));
        }
      }
    }
  }

  /** A row of many words next to one with few: an even share would waste lines. */
  @Test
  void widthGoesWhereItMakesRowsLower() {
    String few = "one two three four five six seven eight nine ten eleven twelve";
    String many = String.join(" ", few, few, few, few);
    List<List<Cell>> rows =
        List.of(
            List.of(PaperReports.text(few), PaperReports.text(many)),
            List.of(PaperReports.text(few), PaperReports.text(many)));
    PaperColumns columns =
        columns(PaperReports.section("shares", List.of("Short words", "Long words"), rows));
    float[] widths = columns.widths();
    assertTrue(widths[1] > 1.3 * widths[0], widths[0] + " and " + widths[1]);
    assertEquals(pages.portraitWidth(), widths[0] + widths[1], 0.1);
  }

  @Test
  void theTablesOfAPlanFitOnPortraitPaper() {
    for (String id : List.of("season-plan", "moving-days", "tasks", "places", "notes")) {
      assertTrue(!columns(PaperReports.season().section(id)).landscape(), id);
    }
  }

  @Test
  void whatDoesNotFitSideBySideGoesBelowWithItsHeading() {
    List<String> headings = IntStream.range(0, 24).mapToObj(i -> "Heading" + i).toList();
    List<Cell> cells = new ArrayList<>();
    headings.forEach(heading -> cells.add(PaperReports.text("word" + heading)));
    Section section = PaperReports.section("wide", headings, List.of(cells));
    PaperColumns columns = columns(section);
    assertTrue(columns.landscape());
    List<String> below = columns.below(section.rows().get(0));
    assertEquals(24, columns.side().size() + below.size());
    assertEquals("Heading23: wordHeading23", below.get(below.size() - 1));
  }
}
