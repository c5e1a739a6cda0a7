package org.hibernacle.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hibernacle.input.Quality;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Gaps;
import org.hibernacle.model.TemperatureSeries;

/** Which days a series lacks, and which are hard to believe, as lines of text. */
final class SeriesBlock {
  private SeriesBlock() {}

  static List<String> lines(TemperatureSeries series) {
    LocalDate first = series.days().firstKey();
    LocalDate last = series.days().lastKey();
    List<String> lines = new ArrayList<>();
    lines.add("Days on file, " + first + " to " + last);
    List<DateSpan> gaps = Gaps.within(series.days(), first, last);
    lines.add(WinterBlock.line("gaps", gaps.isEmpty() ? "none" : words(gaps)));
    List<String> doubts = Quality.doubts(series);
    lines.add(WinterBlock.line("hard to believe", doubts.isEmpty() ? "none" : doubts.get(0)));
    doubts.stream().skip(1).forEach(doubt -> lines.add(WinterBlock.line("", doubt)));
    return lines;
  }

  private static String words(List<DateSpan> gaps) {
    return String.join(", ", gaps.stream().map(SeriesBlock::words).toList());
  }

  private static String words(DateSpan gap) {
    LocalDate last = gap.toExclusive().minusDays(1);
    return Gaps.days(gap) == 1 ? last.toString() : gap.fromInclusive() + " to " + last;
  }
}
