package org.hibernacle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.Agenda;
import org.hibernacle.report.AgendaAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.Words;
import org.hibernacle.report.ics.CalendarFile;
import picocli.CommandLine.Option;

/** Files that a plan is written to where they are asked for. */
final class ExtraFiles {
  static final String ICS = "season-plan.ics";

  @Option(
      names = "--ics",
      description =
          "Writes " + ICS + " too: moving days and tasks for the calendar of a phone or computer.")
  private boolean ics;

  /** Where the files asked for will stand. */
  List<Path> targets(OutputFolder folder) {
    return ics ? List.of(folder.target(ICS)) : List.of();
  }

  /** Writes the files asked for beside their targets. */
  void prepare(OutputFolder folder, SeasonPlan plan, RunFacts facts, Words words)
      throws IOException {
    if (ics) {
      Agenda agenda = AgendaAuthor.write(plan, facts, words);
      folder.prepare(ICS, out -> CalendarFile.write(agenda, out));
    }
  }
}
