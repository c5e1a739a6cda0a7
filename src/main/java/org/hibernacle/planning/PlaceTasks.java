package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.model.Foliage;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.Place;
import org.hibernacle.model.Place.Cover;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.model.Season;
import org.hibernacle.thermal.PlaceBase;

/** Tasks that follow from which places are in use, and when. */
final class PlaceTasks {
  private static final int CLEAN_UP_DAYS_BEFORE = 14;
  private static final double VENT_ABOVE_C = 5;

  /** So many pots shelter each other. */
  private static final int HUDDLE_POTS = 3;

  private final Inventory inventory;
  private final WintersOnFile winters;
  private final List<PlantPlan> plans;

  PlaceTasks(Inventory inventory, WintersOnFile winters, List<PlantPlan> plans) {
    this.inventory = inventory;
    this.winters = winters;
    this.plans = plans;
  }

  /** A plant's stay away from its home. */
  private record Visit(PlantPlan plan, Stay stay) {}

  List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    // Leaves fall and moss is picked before those move that rest in the cold.
    plans.stream()
        .filter(p -> p.plant().species().group().restsCold())
        .flatMap(p -> p.moves().stream().map(Move::date))
        .min(Comparator.naturalOrder())
        .ifPresent(
            first -> {
              LocalDate from = later(first.minusDays(CLEAN_UP_DAYS_BEFORE), season().start());
              tasks.add(task(Task.Kind.CLEAN_UP, from, first, "", OptionalDouble.empty()));
            });
    for (Place place : inventory.places()) {
      List<Visit> visits = visits(place);
      if (!visits.isEmpty() && place.wrapOf().isEmpty()) {
        tasks(place, visits, tasks);
      }
    }
    return tasks;
  }

  private void tasks(Place place, List<Visit> visits, List<Task> tasks) {
    LocalDate first =
        visits.stream().map(v -> v.stay().fromInclusive()).min(Comparator.naturalOrder()).get();
    LocalDate last =
        visits.stream().map(v -> v.stay().toExclusive()).max(Comparator.naturalOrder()).get();
    OptionalDouble none = OptionalDouble.empty();
    if (place.cover() == Cover.MULCH) {
      LocalDate on = later(first, PlaceBase.coverOn(place, season()));
      LocalDate off = earlier(last, PlaceBase.coverOff(season()));
      OptionalDouble litres = OptionalDouble.of(mulchL(place, visits));
      tasks.add(task(Task.Kind.MULCH_ON, on, on, place.name(), litres));
      tasks.add(task(Task.Kind.MULCH_OFF, off, off, place.name(), none));
      tasks.add(task(Task.Kind.RODENT_GUARD, on, on, place.name(), none));
    }
    if (place.cover() == Cover.FLEECE) {
      LocalDate on = later(first, PlaceBase.coverOn(place, season()));
      LocalDate off = earlier(last, PlaceBase.coverOff(season()));
      tasks.add(task(Task.Kind.FLEECE_ON, on, on, place.name(), none));
      tasks.add(task(Task.Kind.FLEECE_OFF, off, off, place.name(), none));
    }
    int pots = visits.stream().mapToInt(v -> v.plan().plant().count()).sum();
    if (place.kind() == PlaceKind.GROUND && place.cover() != Cover.MULCH && pots >= HUDDLE_POTS) {
      tasks.add(task(Task.Kind.HUDDLE, first, last.minusDays(1), place.name(), none));
    }
    if (place.kind() == PlaceKind.COLD_STORE) {
      tasks.add(task(Task.Kind.RODENT_GUARD, first, first, place.name(), none));
    }
    if (place.roofed()) {
      // In the warm plants go on growing and want more than a weekly look.
      if (place.kind() != PlaceKind.WARM_ROOM) {
        tasks.add(task(Task.Kind.WATER_STORE, first, last.minusDays(1), place.name(), none));
      }
      ventFrom(place)
          .filter(day -> day.isBefore(last))
          .ifPresent(
              day ->
                  tasks.add(
                      task(
                          Task.Kind.VENT_STORE,
                          later(day, first),
                          last.minusDays(1),
                          place.name(),
                          none)));
      boolean leaves =
          visits.stream().anyMatch(v -> v.plan().plant().species().foliage() != Foliage.DECIDUOUS);
      if (leaves) {
        tasks.add(task(Task.Kind.PEST_LOOK, first, last.minusDays(1), place.name(), none));
      }
    }
  }

  /** Mulch over the floor taken, less the pots themselves, L. */
  private static double mulchL(Place place, List<Visit> visits) {
    double litres = 0;
    for (Visit visit : visits) {
      var plant = visit.plan().plant();
      double bedL = plant.floorM2() * place.coverDepthCm() / 100 * 1000;
      litres += Math.max(0, bedL - plant.count() * plant.container().volumeL());
    }
    return litres;
  }

  /** First day after midwinter on which the place usually (median winter) passes 5 °C. */
  private Optional<LocalDate> ventFrom(Place place) {
    if (place.kind() != PlaceKind.COLD_STORE && place.kind() != PlaceKind.GLASSHOUSE) {
      return Optional.empty();
    }
    int index = winters.places().indexOf(place);
    int midwinter = season().index(season().midwinter());
    List<Integer> firsts = new ArrayList<>();
    for (int w = 0; w < winters.count(); w++) {
      double[] weekMeanC = winters.nights(w, index).weekMeanC();
      for (int n = 0; n < weekMeanC.length; n++) {
        int night = winters.planNight(w, n);
        if (night > midwinter && weekMeanC[n] > VENT_ABOVE_C) {
          firsts.add(night);
          break;
        }
      }
    }
    firsts.sort(Comparator.naturalOrder());
    return firsts.isEmpty()
        ? Optional.empty()
        : Optional.of(season().day(firsts.get((firsts.size() - 1) / 2)));
  }

  private List<Visit> visits(Place place) {
    return plans.stream()
        .filter(p -> !p.plant().home().equals(place.name()))
        .flatMap(
            p ->
                p.stays().stream()
                    .filter(s -> s.place().name().equals(place.name()))
                    .map(s -> new Visit(p, s)))
        .toList();
  }

  private Season season() {
    return winters.season();
  }

  private static Task task(
      Task.Kind kind, LocalDate from, LocalDate to, String place, OptionalDouble amount) {
    return new Task(kind, from, later(from, to), place, List.of(), amount);
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }
}
