package org.hibernacle.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.input.EarlierPlan;
import org.hibernacle.input.Problems;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.Season;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.report.EarlierLog;
import org.hibernacle.report.Ticks;

/**
 * Season plans written before this run: the one in the output folder, which is about to be
 * replaced, and the one given as inventory.
 *
 * @param inFolder the one that is about to be replaced
 * @param given the one given as inventory; empty if the inventory is none
 */
record EarlierPlans(Optional<EarlierPlan> inFolder, Optional<EarlierPlan> given) {
  /**
   * Reads both.
   *
   * @param replaced workbook in the output folder, there or not; what is wrong with it is put into
   *     {@code problems}
   */
  static EarlierPlans read(Path replaced, Path inventory, Problems problems) {
    return new EarlierPlans(
        Files.isRegularFile(replaced) ? EarlierPlan.read(replaced, problems) : Optional.empty(),
        Files.isRegularFile(inventory)
            ? EarlierPlan.read(inventory, new Problems())
            : Optional.empty());
  }

  /** Whether the folder holds the filled-in log of another winter. */
  boolean wouldLoseALog(Season season) {
    return inFolder
        .map(plan -> new EarlierLog(plan.log()))
        .filter(log -> log.isFilledIn() && !log.isOf(season))
        .isPresent();
  }

  /** Whether the folder holds a plan of another winter with ticks. */
  boolean wouldLoseTicks(Season season) {
    return inFolder
        .filter(plan -> !plan.ticks().isEmpty() && !new EarlierLog(plan.log()).isOf(season))
        .isPresent();
  }

  /** Tells which ticks belong to nothing in the new plan. */
  void tellTicksWithoutWork(SeasonPlan plan, Problems problems) {
    asPlanned(plan.season()).stream()
        .flatMap(before -> Ticks.withoutWork(plan, before).stream())
        .forEach(tick -> problems.note(tick.key(), tick.place(), tick.arguments().toArray()));
  }

  /** The plan of that season whose log is carried on: a filled-in one, or else any. */
  Optional<EarlierPlan> withLog(Season season) {
    return of(season, inFolder, given)
        .sorted(Comparator.comparing(plan -> !new EarlierLog(plan.log()).isFilledIn()))
        .findFirst();
  }

  /** The plan of that season that the keeper knows. */
  Optional<EarlierPlan> known(Season season) {
    return of(season, given, inFolder).findFirst();
  }

  /**
   * What the keeper knows as planned, with what was ticked in either plan; empty if there is none.
   */
  Optional<AsPlanned> asPlanned(Season season) {
    return of(season, given, inFolder).map(EarlierPlan::asPlanned).reduce(AsPlanned::with);
  }

  private static Stream<EarlierPlan> of(
      Season season, Optional<EarlierPlan> first, Optional<EarlierPlan> second) {
    return Stream.of(first, second)
        .flatMap(Optional::stream)
        .filter(plan -> new EarlierLog(plan.log()).isOf(season));
  }
}
