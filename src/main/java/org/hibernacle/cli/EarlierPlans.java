package org.hibernacle.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.input.EarlierPlan;
import org.hibernacle.input.Problems;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Plant;
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
        .filter(plan -> new EarlierLog(plan.log()).isFilledIn() && !isOf(plan, season))
        .isPresent();
  }

  /** Whether the folder holds a plan of another winter with ticks. */
  boolean wouldLoseTicks(Season season) {
    return inFolder.filter(plan -> !plan.ticks().isEmpty() && !isOf(plan, season)).isPresent();
  }

  /** Tells which ticks belong to nothing in the new plan. */
  void tellTicksWithoutWork(SeasonPlan plan, Problems problems) {
    asPlanned(plan.season()).stream()
        .flatMap(before -> Ticks.withoutWork(plan, before).stream())
        .forEach(problems::add);
  }

  /** Tells Ids with entries or ticks that stood for a plant of another name and species. */
  void tellOtherPlants(SeasonPlan plan, Problems problems) {
    Map<String, Plant> plants =
        plan.inventory().plants().stream().collect(Collectors.toMap(Plant::id, p -> p));
    of(plan.season(), given, inFolder)
        .flatMap(earlier -> earlier.marked().stream())
        .distinct()
        .forEach(
            then -> {
              Plant now = plants.get(then.id());
              if (now != null
                  && !now.name().equals(then.name())
                  && !now.species().taxon().equals(then.taxon())) {
                problems.warning(
                    "PL-461",
                    Phrase.of("where.season-plan"),
                    then.id(),
                    then.name(),
                    then.taxon(),
                    now.name());
              }
            });
  }

  /** Ids of plants with a ticked move that was planned up to that day. */
  Set<String> ticked(Season season, LocalDate day) {
    return asPlanned(season).stream()
        .flatMap(before -> before.ticks().stream())
        .filter(tick -> tick.moving() && !tick.from().isAfter(day))
        .flatMap(tick -> tick.plantIds().stream())
        .collect(Collectors.toSet());
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
    return Stream.of(first, second).flatMap(Optional::stream).filter(plan -> isOf(plan, season));
  }

  /** By what the plan tells, or else by the dates of its log. */
  private static boolean isOf(EarlierPlan plan, Season season) {
    return plan.seasonStart()
        .map(season::contains)
        .orElseGet(() -> new EarlierLog(plan.log()).isOf(season));
  }
}
