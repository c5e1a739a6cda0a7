package org.hibernacle.input;

import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Gaps;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.TemperatureSeries;

/** Carries out what is to be done about days that are missing or hard to believe. */
public final class Quality {
  private Quality() {}

  /** The days of a series that are hard to believe, each with its reason, in English. */
  public static List<String> doubts(TemperatureSeries series) {
    return QualityCheck.of(series.days()).stream()
        .map(doubt -> Phrase.of("doubt", doubt.when(), doubt.rule(), doubt.found()).toString())
        .toList();
  }

  /** Settles doubts, then gaps, and tells everything that is done, with file, line and reason. */
  static void settle(ReadSeries read, QualityPolicy policy, Problems problems) {
    for (Suspicion doubt : QualityCheck.of(read.days())) {
      tell(doubt, read, policy, problems);
      if (policy.drops()) {
        doubt.days().forEach(read::drop);
      }
    }
    if (policy.gaps() != QualityPolicy.Gaps.LEAVE && !read.days().isEmpty()) {
      LocalDate first = read.days().firstKey();
      LocalDate last = read.days().lastKey();
      TreeSet<LocalDate> joined = new TreeSet<>();
      Gaps.within(read.days(), first, last)
          .forEach(gap -> settle(gap, read, policy, joined, problems));
    }
  }

  private static void tell(
      Suspicion doubt, ReadSeries read, QualityPolicy policy, Problems problems) {
    Phrase where = read.where(doubt.days().get(0));
    Object[] found = {doubt.when(), doubt.found(), doubt.rule()};
    switch (policy.suspect()) {
      case REFUSE -> problems.error("IN-420.refused", where, found);
      case KEEP -> problems.warning("IN-420.kept", where, found);
      case DROP -> problems.note("IN-421.doubt", where, found);
    }
  }

  private static void settle(
      DateSpan gap,
      ReadSeries read,
      QualityPolicy policy,
      NavigableSet<LocalDate> joined,
      Problems problems) {
    int days = Gaps.days(gap);
    int ofTheYear = days + joined.tailSet(gap.toExclusive().minusYears(1)).size();
    LocalDate last = gap.toExclusive().minusDays(1);
    Phrase missing =
        days == 1
            ? Phrase.of("day-missing", gap.fromInclusive())
            : Phrase.of("days-missing", gap.fromInclusive(), last);
    Phrase where = read.where(gap.fromInclusive());
    if (policy.gaps() == QualityPolicy.Gaps.REFUSE) {
      problems.error("IN-422", where, missing);
    } else if (days > policy.joinDays()) {
      problems.warning("IN-423", where, missing, policy.joinDays());
    } else if (ofTheYear > QualityPolicy.MOST_JOINED_DAYS) {
      problems.warning("IN-423.year", where, missing, QualityPolicy.MOST_JOINED_DAYS);
    } else {
      Gaps.bridge(read.days(), gap);
      gap.fromInclusive().datesUntil(gap.toExclusive()).forEach(joined::add);
      problems.note("IN-424", where, missing);
    }
  }
}
