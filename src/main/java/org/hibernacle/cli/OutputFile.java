package org.hibernacle.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.pdf.CalendarPdf;
import org.hibernacle.report.xlsx.WorkbookWriter;

/**
 * One file that a command writes.
 *
 * @param name without folders
 * @param content what goes into it
 */
record OutputFile(String name, Content content) {
  /** Writes bytes to a stream it is given. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** A report as a workbook. */
  static OutputFile workbook(String name, SeasonReport report) {
    return new OutputFile(name, out -> WorkbookWriter.write(report, out));
  }

  /**
   * A report on paper.
   *
   * @param missing takes the characters that the font lacks
   */
  static OutputFile paper(String name, SeasonReport report, List<String> missing) {
    return new OutputFile(
        name, out -> missing.addAll(CalendarPdf.write(report, out).missingCharacters()));
  }

  /** The whole file; a season's has a few megabytes at most. */
  byte[] bytes() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    content.writeTo(out);
    return out.toByteArray();
  }
}
