package org.hibernacle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.hibernacle.report.SeasonReport;

/** A report's overview on the screen, and the files written. */
final class Summary {
  private Summary() {}

  static void print(SeasonReport report, List<Path> written, PrintWriter out) {
    out.println(report.title() + ", " + report.subtitle());
    int width = report.overview().stream().mapToInt(f -> f.label().length()).max().orElse(0);
    for (SeasonReport.Fact fact : report.overview()) {
      out.println(
          "  " + fact.label() + " ".repeat(width - fact.label().length() + 2) + fact.text());
    }
    written.forEach(path -> out.println("Wrote " + path));
    out.flush();
  }

  /** The files that a dry run leaves out. */
  static void wouldWrite(List<Path> targets, PrintWriter out) {
    targets.forEach(path -> out.println("Would write " + path));
    out.flush();
  }
}
