package org.hibernacle.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Phrase;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.Agenda;
import org.hibernacle.report.AgendaAuthor;
import org.hibernacle.report.LabelAuthor;
import org.hibernacle.report.LabelSheet;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.SeasonReport;
import org.hibernacle.report.Words;
import org.hibernacle.report.ics.CalendarFile;
import org.hibernacle.report.pdf.LabelSheetPdf;
import picocli.CommandLine.Option;

/** Files that a plan is written to where they are asked for. */
final class ExtraFiles {
  static final String ICS = "season-plan.ics";
  static final String LABELS = "pot-labels.pdf";

  /** Ids named in a warning. */
  private static final int MOST_TOLD = 5;

  @Option(
      names = "--ics",
      description =
          "Writes " + ICS + " too: moving days and tasks for the calendar of a phone or computer.")
  private boolean ics;

  @Option(
      names = "--labels",
      description =
          "Writes " + LABELS + " too: a label for each pot, in the grid that the settings tell.")
  private boolean labels;

  /** The files asked for; what they can not hold is a problem. */
  List<OutputFile> files(
      SeasonPlan plan,
      RunFacts facts,
      Words words,
      SeasonReport report,
      Look look,
      Problems problems)
      throws IOException {
    List<OutputFile> files = new ArrayList<>();
    if (ics) {
      Agenda agenda = AgendaAuthor.write(plan, facts, words);
      files.add(new OutputFile(ICS, out -> CalendarFile.write(agenda, out)));
    }
    if (labels) {
      LabelSheet sheet = LabelAuthor.write(plan, facts, words);
      look.tooSmall(report, sheet).ifPresent(small -> tooSmall(small, facts, problems));
      files.add(look.labels(LABELS, report, sheet));
    }
    return files;
  }

  /** Warns of labels that do not hold all their words. */
  static void warn(String name, List<String> ids, Problems problems) {
    if (ids.isEmpty()) {
      return;
    }
    problems.warning("OU-662", name, Phrase.listed(ids, MOST_TOLD));
  }

  private static void tooSmall(LabelSheetPdf.TooSmall small, RunFacts facts, Problems problems) {
    boolean narrow = small.tooNarrow();
    Phrase settings = Phrase.of("where.sheet", facts.inputs().get(0).name(), "Settings");
    problems.error(
        narrow ? "OU-661" : "OU-660",
        Phrase.of("where.in", settings, narrow ? "Label columns" : "Label rows"),
        small.availableMm(),
        small.neededMm(),
        small.id());
  }
}
