package org.hibernacle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.input.Problems;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.Agenda;
import org.hibernacle.report.AgendaAuthor;
import org.hibernacle.report.LabelAuthor;
import org.hibernacle.report.LabelSheet;
import org.hibernacle.report.Palette;
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

  /**
   * The files asked for, ready to be written.
   *
   * @param agenda for {@link #ICS}
   * @param sheet for {@link #LABELS}
   */
  record Ready(SeasonReport report, Optional<Agenda> agenda, Optional<LabelSheet> sheet) {
    /** Where the files will stand. */
    List<Path> targets(OutputFolder folder) {
      List<Path> targets = new ArrayList<>();
      agenda.ifPresent(a -> targets.add(folder.target(ICS)));
      sheet.ifPresent(s -> targets.add(folder.target(LABELS)));
      return targets;
    }

    /** Writes the files beside their targets and tells which characters the fonts lack. */
    List<String> prepare(OutputFolder folder, Palette palette) throws IOException {
      List<String> missing = new ArrayList<>();
      if (agenda.isPresent()) {
        folder.prepare(ICS, out -> CalendarFile.write(agenda.get(), out));
      }
      if (sheet.isPresent()) {
        folder.prepare(
            LABELS, out -> missing.addAll(LabelSheetPdf.write(report, sheet.get(), palette, out)));
      }
      return missing;
    }
  }

  /** Tells the plan for the files asked for; what they can not hold is a problem. */
  Ready tell(SeasonPlan plan, RunFacts facts, Words words, SeasonReport report, Problems problems)
      throws IOException {
    Optional<LabelSheet> sheet = Optional.empty();
    if (labels) {
      LabelSheet told = LabelAuthor.write(plan, facts, words);
      LabelSheetPdf.check(report, told).ifPresent(small -> tooSmall(small, facts, problems));
      sheet = Optional.of(told);
    }
    Optional<Agenda> agenda =
        ics ? Optional.of(AgendaAuthor.write(plan, facts, words)) : Optional.empty();
    return new Ready(report, agenda, sheet);
  }

  private static void tooSmall(LabelSheetPdf.TooSmall small, RunFacts facts, Problems problems) {
    boolean narrow = small.tooNarrow();
    problems.error(
        narrow ? "OU-661" : "OU-660",
        facts.inputs().get(0).name()
            + ", sheet Settings, "
            + (narrow ? "Label columns" : "Label rows"),
        String.format(
            Locale.ROOT, "labels %.1f mm %s", small.availableMm(), narrow ? "wide" : "high"),
        String.format(
            Locale.ROOT,
            "%.1f mm or more, which the label of %s takes in letters of 9 points: fewer label %s,"
                + " smaller margins or smaller gaps",
            small.neededMm(),
            small.id(),
            narrow ? "columns" : "rows"));
  }
}
