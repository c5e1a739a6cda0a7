package org.hibernacle.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.hibernacle.report.Display;
import org.hibernacle.report.Palette;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Section;
import org.hibernacle.report.Words;

/**
 * The report on paper: overview, plants, months, places, the other sections.
 *
 * <p>Equal reports give equal bytes, whatever the machine's language, zone and clock.
 */
public final class CalendarPdf {
  /** Stands before the months; all other sections stand behind them. */
  private static final String PLANTS = "season-plan";

  /**
   * What came of the writing.
   *
   * @param missing characters of the report that the fonts lack; a mark is printed in their place
   * @param pages of the file
   */
  public record Result(List<Missing> missing, int pages) {
    public Result {
      missing = List.copyOf(missing);
    }
  }

  private CalendarPdf() {}

  /**
   * Writes the report. Nothing reaches {@code out} unless the whole file could be laid out; the
   * stream stays open.
   *
   * @param palette colours of all pages
   */
  public static Result write(SeasonReport report, Palette palette, OutputStream out)
      throws IOException {
    return write(report, palette, Optional.empty(), out);
  }

  /**
   * The same with a font of the keeper's.
   *
   * @param font for characters that the program's own fonts lack
   */
  public static Result write(
      SeasonReport report, Palette palette, Optional<PaperFont> font, OutputStream out)
      throws IOException {
    Typefaces type = new Typefaces(palette, font);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    int pages = layOut(report, type, file);
    file.writeTo(out);
    return new Result(type.missing(), pages);
  }

  private static int layOut(SeasonReport report, Typefaces type, OutputStream out) {
    Words words = Words.of(report.language());
    Imprint imprint = Imprint.of(report);
    Pages paper = new Pages(imprint, new PageFrame(imprint, type, words), type, out);
    CellBoxes boxes = new CellBoxes(type, new Display(words));
    new FrontPage(paper, type, words).add(report);
    for (Section section : forPaper(report, true)) {
      new SectionTable(paper, type, boxes, section).add();
    }
    report.paper().strips().ifPresent(strips -> new StripTable(paper, type, words).add(strips));
    new MonthPages(paper, type, words, report).add();
    new PlaceSheets(paper, type, boxes, words).add(report.paper().places());
    for (Section section : forPaper(report, false)) {
      new SectionTable(paper, type, boxes, section).add();
    }
    return paper.close();
  }

  private static List<Section> forPaper(SeasonReport report, boolean plants) {
    return report.sections().stream()
        .filter(s -> s.media().contains(Section.Medium.PDF))
        .filter(s -> s.id().equals(PLANTS) == plants)
        .toList();
  }
}
