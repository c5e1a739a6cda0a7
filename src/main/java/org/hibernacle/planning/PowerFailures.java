package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hibernacle.climate.Winter;
import org.hibernacle.model.Place;
import org.hibernacle.physiology.PlantState;
import org.hibernacle.thermal.PowerFailure;
import org.hibernacle.thermal.ThermalClass;

/** Which plants are lost if a heater fails in the coldest night on file. */
final class PowerFailures {
  /** How long the heat is away: a night; own choice. */
  static final int HOURS = 12;

  private final WintersOnFile winters;
  private final List<Together.Settled> settled;

  PowerFailures(WintersOnFile winters, List<Together.Settled> settled) {
    this.winters = winters;
    this.settled = settled;
  }

  /** One task a heated place in which plants would be lost. */
  List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    for (int p = 0; p < winters.places().size(); p++) {
      if (winters.places().get(p).lowestHeldC().isPresent()) {
        place(p, tasks);
      }
    }
    return tasks;
  }

  private void place(int p, List<Task> tasks) {
    int w = coldestWinter();
    int night = coldestNight(winters.winter(w));
    PowerFailure failure = new PowerFailure(winters.simulator(w), p, night, HOURS);
    List<String> lost = new ArrayList<>();
    List<Integer> days = new ArrayList<>();
    for (Together.Settled plant : settled) {
      int[] path = plant.found().path().placeByNight();
      if (path[winters.planNight(w, night)] == p && isLost(plant, w, night, failure)) {
        lost.add(plant.planner().plant().id());
        boolean resident = plant.planner().home() == p;
        IntStream.range(0, path.length)
            .filter(n -> path[n] == p && (!resident || isCold(n)))
            .forEach(days::add);
      }
    }
    if (days.isEmpty()) {
      return;
    }
    Place place = winters.places().get(p);
    LocalDate from = winters.season().day(Collections.min(days));
    LocalDate to = winters.season().day(Collections.max(days));
    OptionalDouble airC = OptionalDouble.of(failure.lowestAirC());
    tasks.add(new Task(Task.Kind.POWER_FAILURE, from, to, place.name(), lost, airC));
  }

  /** Whether heat keeps alive what lives in the place all year: October to April. */
  private boolean isCold(int night) {
    LocalDate day = winters.season().day(night);
    return !day.isBefore(winters.season().coreStart())
        && day.isBefore(winters.season().coreEndExclusive());
  }

  private boolean isLost(Together.Settled plant, int w, int night, PowerFailure failure) {
    PlantState state = plant.found().lived().get(w).state();
    double edgeC = failure.lowestEdgeC(ThermalClass.of(plant.planner().plant().container()));
    boolean growing = night >= state.budBreak();
    double shootLimitC =
        growing ? plant.planner().plant().species().newGrowthLimitC() : state.shootLimitC()[night];
    return edgeC < state.rootLimitC()[night] || failure.lowestAirC() < shootLimitC;
  }

  private int coldestWinter() {
    int coldest = 0;
    for (int w = 1; w < winters.count(); w++) {
      if (lowestC(winters.winter(w)) < lowestC(winters.winter(coldest))) {
        coldest = w;
      }
    }
    return coldest;
  }

  private static double lowestC(Winter winter) {
    return IntStream.range(0, winter.airC().length)
        .mapToDouble(h -> winter.airC()[h])
        .min()
        .orElseThrow();
  }

  private static int coldestNight(Winter winter) {
    int coldest = 12;
    for (int hour = 12; hour < winter.airC().length - 36; hour++) {
      if (winter.airC()[hour] < winter.airC()[coldest]) {
        coldest = hour;
      }
    }
    return (coldest - 12) / 24;
  }
}
