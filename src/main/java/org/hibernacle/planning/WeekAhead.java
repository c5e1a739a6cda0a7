package org.hibernacle.planning;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hibernacle.climate.SeasonSoFar;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Settings;

/** Looks at tonight and the week that follows in a plan made within the season. */
final class WeekAhead {
  private static final Set<Rule> HARM =
      EnumSet.of(Rule.ROOT_BALL, Rule.SHOOTS, Rule.CHILLING, Rule.WOKEN_GROWTH, Rule.BALL_FROZEN);

  private final Inventory inventory;
  private final Caution caution;
  private final WintersOnFile winters;
  private final List<Together.Settled> settled;
  private final List<PlantPlan> plans;
  private final int tonight;

  WeekAhead(
      Inventory inventory,
      Caution caution,
      WintersOnFile winters,
      List<Together.Settled> settled,
      List<PlantPlan> plans) {
    this.inventory = inventory;
    this.caution = caution;
    this.winters = winters;
    this.settled = settled;
    this.plans = plans;
    tonight = winters.outlook().tonight();
  }

  /** Empty for a plan made before the season. */
  Optional<InSeason> look() {
    return winters.outlook().soFar().map(this::look);
  }

  private InSeason look(SeasonSoFar soFar) {
    OptionalDouble forecastC =
        soFar.leadDays() == 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                winters.winter(0).stationMinC(winters.winter(0).index(night(0, tonight))));
    List<InSeason.Threat> threatened = new ArrayList<>();
    List<InSeason.Late> late = new ArrayList<>();
    for (int i = 0; i < settled.size(); i++) {
      if (forecastC.isPresent()) {
        threat(i, forecastC.getAsDouble()).ifPresent(threatened::add);
      }
      late(i).ifPresent(late::add);
    }
    return new InSeason(soFar.asOf(), soFar.knownTo(), forecastC, threatened, late);
  }

  /** The day of a winter that stands for a night of the plan. */
  private LocalDate night(int winter, int planNight) {
    return winters.winter(winter).season().sameDay(winters.season().day(planNight));
  }

  private Optional<InSeason.Threat> threat(int i, double forecastC) {
    PlantPlanner.Found found = settled.get(i).found();
    PlantPlan plan = plans.get(i);
    LocalDate today = winters.season().day(tonight);
    Optional<NightTrigger> trigger = plan.nightTrigger(today);
    if (trigger.isEmpty()) {
      return Optional.empty();
    }
    double triggerC = trigger.get().stationC();
    boolean broken = found.lived().stream().anyMatch(lived -> !harm(lived, 1).isEmpty());
    return broken || forecastC < triggerC
        ? Optional.of(
            new InSeason.Threat(plan.plant().id(), trigger.get().place().name(), triggerC))
        : Optional.empty();
  }

  /** What is broken within so many nights from tonight. */
  private List<Lived.Broken> harm(Lived lived, int nights) {
    return lived.violations().stream()
        .filter(b -> HARM.contains(b.violation().rule()))
        .filter(
            b -> {
              int night = winters.planNight(lived.winter(), b.night());
              return night >= tonight && night < tonight + nights;
            })
        .toList();
  }

  private Optional<InSeason.Late> late(int i) {
    PlantPlanner.Found found = settled.get(i).found();
    Set<Integer> excused = found.excused();
    Optional<Violation> danger =
        found.lived().stream()
            .flatMap(
                lived ->
                    harm(lived, InSeason.WEEK_DAYS).stream()
                        .filter(
                            b ->
                                !excused.contains(lived.winter())
                                    || Cost.ticksOfLimit(b.violation()) > 0))
            .min(Comparator.comparingInt(Lived.Broken::night))
            .map(Lived.Broken::violation);
    return danger.map(
        violation -> new InSeason.Late(plans.get(i).plant().id(), violation, rescue(i, found)));
  }

  /** The first move of the plan that the plant would have if every day were a moving day. */
  private Optional<Move> rescue(int i, PlantPlanner.Found found) {
    Settings every = inventory.settings().withMovingDays(EnumSet.allOf(DayOfWeek.class));
    PlantPlanner planner = PlantPlanner.of(plans.get(i).plant(), every, caution, winters);
    PlantPlanner.Found better = planner.search(found.excused(), left(i));
    if (better.cost().brokenTicks() >= found.cost().brokenTicks()) {
      return Optional.empty();
    }
    return new Reasons(planner, winters, every, better)
        .moves().stream().filter(move -> !move.made()).findFirst();
  }

  /** Room and hands that the others leave to a plant. */
  private Openings left(int i) {
    Ledger ledger =
        new Ledger(inventory.places(), winters.season().days(), inventory.settings(), tonight);
    for (int k = 0; k < settled.size(); k++) {
      if (k != i) {
        ledger.take(settled.get(k).planner().load(), settled.get(k).found().path());
      }
    }
    return ledger.left(settled.get(i).planner().load());
  }
}
