package org.hibernacle.cli;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hibernacle.input.Problems;
import org.hibernacle.report.HandOut;
import org.hibernacle.report.LabelSheet;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.pdf.CalendarPdf;
import org.hibernacle.report.pdf.HandOutPdf;
import org.hibernacle.report.pdf.LabelSheetPdf;
import org.hibernacle.report.pdf.Missing;
import org.hibernacle.report.pdf.PaperFont;
import org.hibernacle.report.xlsx.WorkbookTemplate;
import org.hibernacle.report.xlsx.WorkbookWriter;

/**
 * Makes files of reports in one look, and remembers what its fonts could not show, what grew too
 * long and what was shortened. Its files may be made at the same time.
 */
final class Look {
  private final WorkbookTemplate template;
  private final Optional<PaperFont> font;
  private final Map<String, List<Missing>> missing = new ConcurrentHashMap<>();
  private final Map<String, Integer> tooLong = new ConcurrentHashMap<>();
  private final Map<String, List<String>> shortened = new ConcurrentHashMap<>();

  Look(WorkbookTemplate template, Optional<PaperFont> font) {
    this.template = template;
    this.font = font;
  }

  /** A report as a workbook. */
  OutputFile workbook(String name, SeasonReport report) {
    return new OutputFile(name, out -> WorkbookWriter.write(report, template, out));
  }

  /** A report on paper. */
  OutputFile paper(String name, SeasonReport report) {
    return new OutputFile(
        name,
        out ->
            missing.put(name, CalendarPdf.write(report, template.palette(), font, out).missing()));
  }

  /** A hand-out, of which the fullest edition that fits is written. */
  OutputFile handOut(String name, List<HandOut> editions) {
    return new OutputFile(
        name,
        out -> {
          CalendarPdf.Result written = HandOutPdf.write(editions, template.palette(), font, out);
          missing.put(name, written.missing());
          if (written.pages() > HandOut.MOST_PAGES) {
            tooLong.put(name, written.pages());
          } else {
            tooLong.remove(name);
          }
        });
  }

  /** Labels of the plants of a report. */
  OutputFile labels(String name, SeasonReport report, LabelSheet sheet) {
    return new OutputFile(
        name,
        out -> {
          LabelSheetPdf.Result written =
              LabelSheetPdf.write(report, sheet, template.palette(), font, out);
          missing.put(name, written.missing());
          shortened.put(name, written.shortened());
        });
  }

  /** The label that the grid holds least of all; empty if it holds every one. */
  Optional<LabelSheetPdf.TooSmall> tooSmall(SeasonReport report, LabelSheet sheet)
      throws IOException {
    return LabelSheetPdf.check(report, sheet, template.palette(), font);
  }

  /** Warnings of what the files written do not show, and of too many pages. */
  Problems warnings() {
    Problems problems = new Problems();
    missing.forEach((name, characters) -> FontOption.warn(name, characters, problems));
    tooLong.forEach((name, pages) -> HandOutOption.warn(name, pages, problems));
    shortened.forEach((name, ids) -> ExtraFiles.warn(name, ids, problems));
    return problems;
  }
}
