package org.hibernacle.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** What is printed in place of the summary; one of them at most. */
final class AnswerOptions {
  @Option(
      names = "--explain",
      paramLabel = "ID",
      description =
          "Prints one plant's whole season instead: places thought of, every winter on file, what"
              + " other dates would do. Writes nothing.")
  private Optional<String> explain = Optional.empty();

  @Option(
      names = "--leave-one-out",
      description =
          "Judges the planner instead: plans from all winters on file but one, lives the plan"
              + " through that one, for each. Writes nothing; takes as many plans as winters.")
  private boolean leaveOneOut;

  @Option(
      names = "--json",
      description = "Prints the summary for scripts, as JSON, or the problems if it stops.")
  private boolean json;

  /** Id of the plant to explain. */
  Optional<String> explain() {
    return explain;
  }

  boolean leaveOneOut() {
    return leaveOneOut;
  }

  boolean json() {
    return json;
  }

  /** Whether files are written beside what is printed. */
  boolean writes() {
    return explain.isEmpty() && !leaveOneOut;
  }
}
