package org.hibernacle.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.model.Diagnostic;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Season;

/**
 * The whole plan: one set of fixed dates, lived through every winter on file.
 *
 * @param season planned
 * @param inventory it is for
 * @param caution kept in hand
 * @param winters used, oldest first; never empty
 * @param plants one entry a plant, in the order of the inventory
 * @param places one entry a place, in the order of the inventory
 * @param tasks by date
 * @param traces for the chart
 * @param notes assumptions and problems met while planning
 * @param inSeason tonight and this week; empty for a plan made before the season
 * @param help for those that are lost or gave way
 */
public record SeasonPlan(
    Season season,
    Inventory inventory,
    Caution caution,
    List<WinterSummary> winters,
    List<PlantPlan> plants,
    List<PlaceForecast> places,
    List<Task> tasks,
    TraceTable traces,
    List<Diagnostic> notes,
    Optional<InSeason> inSeason,
    Help help) {
  public SeasonPlan {
    winters = List.copyOf(winters);
    plants = List.copyOf(plants);
    places = List.copyOf(places);
    tasks = List.copyOf(tasks);
    notes = List.copyOf(notes);
    if (winters.isEmpty()) {
      throw new IllegalArgumentException("a plan needs at least one winter");
    }
  }

  /** A plan made before its season in which nobody needs help. */
  public SeasonPlan(
      Season season,
      Inventory inventory,
      Caution caution,
      List<WinterSummary> winters,
      List<PlantPlan> plants,
      List<PlaceForecast> places,
      List<Task> tasks,
      TraceTable traces,
      List<Diagnostic> notes) {
    this(
        season,
        inventory,
        caution,
        winters,
        plants,
        places,
        tasks,
        traces,
        notes,
        Optional.empty(),
        Help.NOT_NEEDED);
  }

  /** Every move with its plant, by date, then Id. */
  public List<PlantMove> movesByDate() {
    return plants.stream()
        .flatMap(p -> p.moves().stream().map(m -> new PlantMove(p, m)))
        .sorted(
            Comparator.comparing((PlantMove pm) -> pm.move().date())
                .thenComparing(pm -> pm.plan().plant().id()))
        .toList();
  }

  /** Plants that no stays on offer protect. */
  public Stream<PlantPlan> unprotected() {
    return plants.stream().filter(p -> p.verdict() == PlantPlan.Verdict.UNPROTECTED);
  }

  /**
   * A move and whose it is.
   *
   * @param plan of the plant
   * @param move of that plan
   */
  public record PlantMove(PlantPlan plan, Move move) {}
}
