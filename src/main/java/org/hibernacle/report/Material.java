package org.hibernacle.report;

import java.text.Collator;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernacle.model.AsPlanned;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Species;
import org.hibernacle.planning.InSeason;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.SeasonPlan;
import org.hibernacle.planning.Stay;

/**
 * What every chapter of the report is written from.
 *
 * @param plan to tell
 * @param facts of the run
 * @param words to tell it in
 * @param display of numbers and days
 * @param measures in the keeper's units
 * @param ticks of the plan before
 * @param byId the plants of the plan
 * @param kinds of moves to tell of: wrapping only where something is wrapped
 * @param nextMovingDay the next day on which anything is left to carry
 */
record Material(
    SeasonPlan plan,
    RunFacts facts,
    Words words,
    Display display,
    Measures measures,
    Ticks ticks,
    Map<String, PlantPlan> byId,
    List<Move.Kind> kinds,
    Optional<LocalDate> nextMovingDay) {

  static Material of(SeasonPlan plan, RunFacts facts, Words words) {
    Display display = new Display(words);
    Measures measures = new Measures(display, plan.inventory().settings().units());
    Ticks ticks = Ticks.of(plan, facts.before().map(AsPlanned::ticks).orElse(List.of()));
    Map<String, PlantPlan> byId =
        plan.plants().stream().collect(Collectors.toUnmodifiableMap(p -> p.plant().id(), p -> p));
    boolean wrapped = plan.plants().stream().anyMatch(p -> p.move(Move.Kind.WRAP).isPresent());
    List<Move.Kind> kinds =
        Arrays.stream(Move.Kind.values()).filter(kind -> wrapped || kind.carries()).toList();
    Optional<LocalDate> nextMovingDay =
        plan.movesByDate().stream()
            .filter(pm -> !ticks.isDone(pm) && !pm.move().date().isBefore(asOf(plan)))
            .map(pm -> pm.move().date())
            .findFirst();
    return new Material(plan, facts, words, display, measures, ticks, byId, kinds, nextMovingDay);
  }

  /** The plants A to Z by the name people use, then by Id. */
  List<PlantPlan> byName() {
    Collator alphabet = Collator.getInstance(words.locale());
    return plan.plants().stream()
        .sorted(
            Comparator.comparing((PlantPlan p) -> p.plant().name(), alphabet::compare)
                .thenComparing(p -> p.plant().id()))
        .toList();
  }

  /** The plan of the plant with that Id. */
  PlantPlan plant(String id) {
    return Optional.ofNullable(byId.get(id))
        .orElseThrow(() -> new IllegalArgumentException("no plant " + id));
  }

  /** Where the plant stands in the middle of the winter. */
  Stay winterStay(PlantPlan p) {
    LocalDate midwinter = plan.season().midwinter();
    return p.stays().stream()
        .filter(s -> !midwinter.isBefore(s.fromInclusive()) && midwinter.isBefore(s.toExclusive()))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException(p.plant().id() + " is nowhere at midwinter"));
  }

  /** Whether the inventory says what plants are worth. */
  boolean valued() {
    return plan.plants().stream().anyMatch(p -> p.plant().value().isPresent());
  }

  /**
   * The day that the workbook speaks of: that of the plan, or the season's first where it was made
   * before the season.
   */
  LocalDate asOf() {
    return asOf(plan);
  }

  private static LocalDate asOf(SeasonPlan plan) {
    return plan.inSeason().map(InSeason::asOf).orElse(plan.season().start());
  }

  /** In how many winters on file something breaks along the planned stays. */
  int wintersBroken(PlantPlan p) {
    return (int) p.broken().stream().map(v -> v.winter()).distinct().count();
  }

  /** In how many winters on file the plan of the plant held. */
  String held(PlantPlan p) {
    return inWinters(plan.winters().size() - wintersBroken(p));
  }

  /** {@code 9 of 10 winters}. */
  String inWinters(int some) {
    return words.text("winters.some", some, plan.winters().size());
  }

  /** Whether the root limit in use for the plant is anything weaker than a published figure. */
  static boolean limitIsEstimate(Plant plant) {
    return plant.ownRootLimitC().isEmpty() && plant.rootSpecies().rootLimitIsEstimate();
  }

  /** The word for the root limit, telling where it is an estimate or the keeper's own. */
  String limitWord(Plant plant) {
    return limitWord(words, plant);
  }

  static String limitWord(Words words, Plant plant) {
    if (plant.ownRootLimitC().isPresent()) {
      return words.text("limit.own");
    }
    return words.text(limitIsEstimate(plant) ? "limit.estimate" : "limit.plain");
  }

  /** Whether the plant is poisonous; what was not looked up is never called safe. */
  Cell poison(Species species) {
    String text = words.of("poison", species.toxic());
    return switch (species.toxic()) {
      case YES -> new Cell.Level(StyleRole.CAUTION, text);
      case NO, UNKNOWN -> new Cell.Text(text);
    };
  }

  /** {@code and 4 more}. */
  String list(List<String> names, int most) {
    return list(words, names, most);
  }

  static String list(Words words, List<String> names, int most) {
    if (names.size() <= most) {
      return words.listed(names);
    }
    return words.text("list.more", words.listed(names.subList(0, most)), names.size() - most);
  }
}
