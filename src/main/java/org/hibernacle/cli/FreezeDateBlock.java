package org.hibernacle.cli;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hibernacle.climate.FreezeDates;
import org.hibernacle.climate.FreezeDates.Basis;
import org.hibernacle.climate.FreezeDates.ByChance;
import org.hibernacle.climate.FreezeDates.Dates;
import org.hibernacle.climate.PlottingPosition;
import org.hibernacle.model.Season;

/** First and last frosts by chance as lines of text. */
final class FreezeDateBlock {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private FreezeDateBlock() {}

  static List<String> lines(List<FreezeDates> frosts, PlottingPosition position, boolean southern) {
    List<String> lines = new ArrayList<>();
    lines.add("Frost dates over the winters on file, " + name(position) + " positions");
    for (FreezeDates dates : frosts) {
      String limit = "at or below " + WinterBlock.threshold(dates.thresholdC()) + " °C";
      lines.add(WinterBlock.line(limit, "in " + dates.withFrost() + " of " + winters(dates)));
      if (dates.withFrost() > 0) {
        lines.add(WinterBlock.line("  first", words(dates.first())));
        lines.add(WinterBlock.line("  last", words(dates.last())));
      }
    }
    Season any = new Season(2000, southern);
    lines.add("  Early, typical, late: by then the first frost has come in 1, 5, 9 of 10 winters,");
    lines.add(
        "  and in 9, 5, 1 of 10 another one is still to come. Counted are winters with every");
    lines.add(
        "  day on file from "
            + DAY.format(FreezeDates.watchedFrom(any))
            + " to the first frost and from the last one to "
            + DAY.format(FreezeDates.watchedToExclusive(any).minusDays(1))
            + ".");
    if (frosts.stream().anyMatch(FreezeDateBlock::tooFew)) {
      lines.add("  Too few winters: the date lies beyond the frosts on file; " + need(position));
    }
    return lines;
  }

  private static String winters(FreezeDates dates) {
    return dates.winters() + (dates.winters() == 1 ? " winter" : " winters");
  }

  private static String words(Dates dates) {
    return "early "
        + words(dates.early())
        + ", typical "
        + words(dates.typical())
        + ", late "
        + words(dates.late());
  }

  private static String words(ByChance date) {
    return switch (date.basis()) {
      case ON_FILE -> date.day().map(DAY::format).orElseThrow();
      case NONE_BY_THAT_CHANCE -> "none by that chance";
      case TOO_FEW_WINTERS -> "too few winters";
    };
  }

  private static boolean tooFew(FreezeDates dates) {
    return List.of(dates.first(), dates.last()).stream()
        .flatMap(d -> List.of(d.early(), d.typical(), d.late()).stream())
        .anyMatch(date -> date.basis() == Basis.TOO_FEW_WINTERS);
  }

  /** How many winters a date of 1 in 10 needs at least. */
  private static String need(PlottingPosition position) {
    int winters = 1;
    while (!position.reaches(winters, 0.1)) {
      winters++;
    }
    return "1 in 10 needs at least " + winters + " with such a frost.";
  }

  private static String name(PlottingPosition position) {
    return switch (position) {
      case WEIBULL -> "Weibull";
      case HAZEN -> "Hazen";
    };
  }
}
