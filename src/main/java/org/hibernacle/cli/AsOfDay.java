package org.hibernacle.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hibernacle.input.EarlierPlan;
import org.hibernacle.input.LogRows;
import org.hibernacle.input.Problems;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.MoveMade;
import org.hibernacle.model.MovePlanned;
import org.hibernacle.model.Season;
import org.hibernacle.planning.InSeason;
import org.hibernacle.planning.Progress;
import picocli.CommandLine.ITypeConverter;

/**
 * The day within a season from which on it is planned.
 *
 * @param day the last one whose temperatures are what happened
 */
record AsOfDay(LocalDate day) {
  /** Reads it from the command line. */
  static final class Converter implements ITypeConverter<AsOfDay> {
    @Override
    public AsOfDay convert(String text) {
      return new AsOfDay(new DayConverter().convert(text));
    }
  }

  /**
   * Why no plan can be made as of this day; empty if one can.
   *
   * @param season year of the season asked for besides
   * @param southern whether the seasons are those of the south
   * @param leaveOneOut whether all winters are to be judged
   */
  Optional<String> wrongUse(Optional<Integer> season, boolean southern, boolean leaveOneOut) {
    Season holds = Season.containing(day, southern);
    if (season.isPresent() && season.get() != holds.year()) {
      return Optional.of(
          "--as-of " + day + " lies in winter " + holds + ", --season names another; leave it out");
    }
    if (leaveOneOut) {
      return Optional.of("--as-of plans one season, --leave-one-out judges all; give one of them");
    }
    LocalDate last = InSeason.lastDay(holds);
    return day.isAfter(last)
        ? Optional.of(
            "--as-of "
                + day
                + ": winter "
                + holds
                + " is planned up to "
                + last
                + "; plan the next one without --as-of")
        : Optional.empty();
  }

  /** What was done by this day, and what the plan before this one had in mind. */
  Progress progress(Inventory inventory, EarlierPlans earlier, Problems problems) {
    Season season = Season.containing(day, inventory.settings().southern());
    List<MoveMade> made =
        earlier
            .withLog(season)
            .map(plan -> LogRows.read(plan, inventory, day, problems))
            .orElse(List.of());
    List<MovePlanned> planned = earlier.known(season).map(EarlierPlan::moves).orElse(List.of());
    return new Progress(day, made, planned, earlier.ticked(season, day));
  }
}
