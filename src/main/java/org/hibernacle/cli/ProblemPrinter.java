package org.hibernacle.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Diagnostic;

/** Prints everything found wrong, errors first, one line each. */
final class ProblemPrinter {
  private ProblemPrinter() {}

  static void print(Problems problems, PrintWriter err) {
    for (Diagnostic problem : problems.sorted()) {
      err.println(problem.severity().name().toLowerCase(Locale.ROOT) + ": " + problem);
    }
    if (problems.dropped() > 0) {
      err.println("and " + problems.dropped() + " more");
    }
    err.flush();
  }
}
