package org.hibernacle.cli;

import java.util.List;
import java.util.Optional;
import org.hibernacle.input.Problems;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Season;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.HandOut;
import org.hibernacle.report.HandOutAuthor;
import org.hibernacle.report.RunFacts;
import org.hibernacle.report.Words;
import picocli.CommandLine.Option;

/** Days for which somebody else looks after the plants. */
final class HandOutOption {
  static final String FILE = "hand-out.pdf";

  @Option(
      names = "--handout",
      paramLabel = "FROM..TO",
      converter = DaysConverter.class,
      description =
          "Also writes hand-out.pdf for whoever looks after the plants from one day of the season"
              + " to another, such as 2026-12-20..2027-01-05.")
  private Optional<DateSpan> days = Optional.empty();

  /** Why a hand-out for these days can not be written from a plan of that season. */
  Optional<String> outside(Season planned) {
    return days.filter(
            span ->
                !planned.contains(span.fromInclusive())
                    || !planned.contains(span.toExclusive().minusDays(1)))
        .map(
            span ->
                "--handout: the days lie outside winter "
                    + planned
                    + ", which runs from "
                    + planned.start()
                    + " to "
                    + planned.endExclusive().minusDays(1)
                    + "; give days of it, or another --season");
  }

  /** Warns of a hand-out whose shortest edition is too long. */
  static void warn(String name, int pages, Problems problems) {
    problems.warning("OU-632", name, pages, HandOut.MOST_PAGES);
  }

  /** The file, if one was asked for. */
  List<OutputFile> files(SeasonPlan plan, RunFacts facts, Words words, Look look) {
    return days.stream()
        .map(span -> look.handOut(FILE, HandOutAuthor.editions(plan, facts, words, span)))
        .toList();
  }
}
