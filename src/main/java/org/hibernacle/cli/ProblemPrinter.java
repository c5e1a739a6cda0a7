package org.hibernacle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Diagnostic;

/** Prints everything found wrong, errors first, one line each. */
final class ProblemPrinter {
  private ProblemPrinter() {}

  /** Prints all of them. */
  static void print(Problems problems, PrintWriter err) {
    lines(problems.sorted(), err);
    if (problems.dropped() > 0) {
      err.println("and " + problems.dropped() + " more");
    }
    err.flush();
  }

  /** Prints what needs a look, and counts the notes, which stand in the output too. */
  static void printBriefly(List<Diagnostic> problems, PrintWriter err) {
    List<Diagnostic> notable = notable(problems);
    lines(notable, err);
    int notes = problems.size() - notable.size();
    if (notes > 0) {
      err.println(notes + " notes on defaults and on what was recognised stand in the output.");
    }
    err.flush();
  }

  /** Prints what stopped the run and what else needs a look; defaults matter once it runs. */
  static void printForStop(Problems problems, PrintWriter err) {
    lines(notable(problems.sorted()), err);
    if (problems.dropped() > 0) {
      err.println("and " + problems.dropped() + " more");
    }
    err.flush();
  }

  private static List<Diagnostic> notable(List<Diagnostic> problems) {
    return problems.stream().filter(d -> d.severity() != Diagnostic.Severity.NOTE).toList();
  }

  private static void lines(List<Diagnostic> problems, PrintWriter err) {
    for (Diagnostic problem : problems) {
      err.println(problem.severity().name().toLowerCase(Locale.ROOT) + ": " + problem);
    }
  }
}
