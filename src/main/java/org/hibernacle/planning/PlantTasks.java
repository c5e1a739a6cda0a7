package org.hibernacle.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hibernacle.model.Group;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.physiology.Drying;

/** Tasks that follow from what one plant lives through. */
final class PlantTasks {
  /** Warmth that wakes what has rested, °C; common practice, no source. */
  private static final double WAKING_WARMTH_C = 10;

  /** Common practice, no source. */
  private static final int QUARANTINE_DAYS = 14;

  private final Plant plant;
  private final WintersOnFile winters;
  private final PlantPlanner.Found found;
  private final List<Move> moves;

  PlantTasks(Plant plant, WintersOnFile winters, PlantPlanner.Found found, List<Move> moves) {
    this.plant = plant;
    this.winters = winters;
    this.found = found;
    this.moves = moves;
  }

  List<Task> tasks() {
    List<Task> tasks = new ArrayList<>();
    thawOut(tasks);
    fleece(tasks);
    keepDry(tasks);
    wakingAlarm(tasks);
    quarantine(tasks);
    inAndOut(tasks);
    wraps(tasks);
    twoPeople(tasks);
    return tasks;
  }

  /** From the day on which any winter asks for it; the longest run of days frozen. */
  private void thawOut(List<Task> tasks) {
    int longest = 0;
    int earliest = Integer.MAX_VALUE;
    int latest = 0;
    int place = 0;
    for (Lived lived : found.lived()) {
      double[] dryness = Dryness.byNight(plant, winters, lived);
      int run = 0;
      for (int n = 0; n < lived.path().length; n++) {
        run = dryness[n] > 0 ? run + 1 : 0;
        if (dryness[n] >= Drying.THAW_AND_WATER) {
          int night = winters.planNight(lived.winter(), n);
          if (night < earliest) {
            earliest = night;
            place = lived.path()[n];
          }
          latest = Math.max(latest, night);
          longest = Math.max(longest, run);
        }
      }
    }
    if (longest > 0) {
      String name = winters.places().get(place).name();
      tasks.add(task(Task.Kind.THAW_OUT, earliest, latest, name, OptionalDouble.of(longest)));
    }
  }

  private void fleece(List<Task> tasks) {
    int hit = 0;
    int earliest = Integer.MAX_VALUE;
    int latest = 0;
    for (Lived lived : found.lived()) {
      boolean frosted = false;
      for (int n = lived.state().budBreak(); n < lived.path().length; n++) {
        boolean outside = !winters.places().get(lived.path()[n]).roofed();
        if (outside && lived.trace().airMinC()[n] < plant.species().newGrowthLimitC()) {
          frosted = true;
          int woke = winters.planNight(lived.winter(), lived.state().budBreak());
          earliest = Math.min(earliest, woke);
          latest = Math.max(latest, winters.planNight(lived.winter(), n));
        }
      }
      hit += frosted ? 1 : 0;
    }
    if (hit > 0) {
      tasks.add(task(Task.Kind.FLEECE_READY, earliest, latest, "", OptionalDouble.of(hit)));
    }
  }

  private void inAndOut(List<Task> tasks) {
    found
        .shuttle()
        .ifPresent(
            s ->
                tasks.add(
                    new Task(
                        Task.Kind.IN_AND_OUT,
                        s.from(),
                        s.to(),
                        s.refuge().name(),
                        List.of(plant.id()),
                        OptionalDouble.of(s.mostInAWinter()))));
  }

  /** From the day on which rest is complete in the earliest winter, to the end of the stay. */
  private void wakingAlarm(List<Task> tasks) {
    if (!plant.species().group().restsCold()) {
      return;
    }
    int rested =
        found.lived().stream()
            .filter(lived -> lived.state().restEnd() < lived.path().length)
            .mapToInt(lived -> winters.planNight(lived.winter(), lived.state().restEnd()))
            .min()
            .orElse(Integer.MAX_VALUE);
    for (Stay stay : found.path().stays(winters.season(), winters.places())) {
      int from = Math.max(rested, winters.season().index(stay.fromInclusive()));
      int last = winters.season().index(stay.toExclusive().minusDays(1));
      boolean away = stay.place().roofed() && !stay.place().name().equals(plant.home());
      if (away && from <= last) {
        OptionalDouble warnC = OptionalDouble.of(WAKING_WARMTH_C);
        tasks.add(task(Task.Kind.WAKING_ALARM, from, last, stay.place().name(), warnC));
      }
    }
  }

  private void quarantine(List<Task> tasks) {
    Group group = plant.species().group();
    if (group != Group.TROPICAL && group != Group.SUBTROPICAL) {
      return;
    }
    moves.stream()
        .filter(move -> move.kind() == Move.Kind.MOVE_IN)
        .findFirst()
        .ifPresent(
            move ->
                tasks.add(
                    new Task(
                        Task.Kind.QUARANTINE,
                        move.date(),
                        move.date().plusDays(QUARANTINE_DAYS),
                        move.to().name(),
                        List.of(plant.id()),
                        OptionalDouble.empty())));
  }

  private void keepDry(List<Task> tasks) {
    if (!plant.species().keepDry()) {
      return;
    }
    for (Stay stay : found.path().stays(winters.season(), winters.places())) {
      Place place = stay.place();
      if (place.roofed() && !place.name().equals(plant.home())) {
        tasks.add(
            new Task(
                Task.Kind.KEEP_DRY,
                stay.fromInclusive(),
                stay.toExclusive().minusDays(1),
                place.name(),
                List.of(plant.id()),
                OptionalDouble.empty()));
      }
    }
  }

  private void wraps(List<Task> tasks) {
    for (Move move : moves) {
      if (move.kind() == Move.Kind.WRAP) {
        tasks.add(wrap(Task.Kind.WRAP, move, Covers.wrapL(plant, move.to())));
      } else if (move.kind() == Move.Kind.UNWRAP) {
        tasks.add(wrap(Task.Kind.UNWRAP, move, OptionalDouble.empty()));
      }
    }
  }

  private Task wrap(Task.Kind kind, Move move, OptionalDouble litres) {
    String home = plant.home();
    return new Task(kind, move.date(), move.date(), home, List.of(plant.id()), litres);
  }

  private void twoPeople(List<Task> tasks) {
    double massKg = Mass.wetKg(plant.container());
    if (massKg <= Lifting.aloneKg(plant.container())) {
      return;
    }
    for (Move move : moves) {
      if (!move.kind().carries()) {
        continue;
      }
      LocalDate day = move.date();
      tasks.add(
          new Task(
              Task.Kind.TWO_PERSON_LIFT,
              day,
              day,
              "",
              List.of(plant.id()),
              OptionalDouble.of(massKg)));
    }
  }

  private Task task(Task.Kind kind, int from, int to, String place, OptionalDouble amount) {
    LocalDate first = winters.season().day(from);
    LocalDate last = winters.season().day(to);
    return new Task(kind, first, last, place, List.of(plant.id()), amount);
  }
}
