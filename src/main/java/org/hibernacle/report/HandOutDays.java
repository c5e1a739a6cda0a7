package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hibernacle.model.DateSpan;
import org.hibernacle.model.Place;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;
import org.hibernacle.report.HandOut.Item;
import org.hibernacle.report.HandOut.Kind;

/** Day by day: what to carry and what else to do, with boxes to tick. */
final class HandOutDays {
  private static final int WEEK_DAYS = 7;

  private final Material m;
  private final DateSpan days;
  private final Brevity brevity;
  private final NavigableMap<LocalDate, List<Item>> byDay = new TreeMap<>();

  HandOutDays(Material material, DateSpan days, Brevity brevity) {
    this.m = material;
    this.days = days;
    this.brevity = brevity;
  }

  /** Whether any day of the task is among these. */
  static boolean overlaps(Task task, DateSpan days) {
    return task.from().isBefore(days.toExclusive()) && !task.to().isBefore(days.fromInclusive());
  }

  List<Item> items() {
    moves();
    tasks();
    List<Item> items = new ArrayList<>();
    int left = byDay.values().stream().mapToInt(List::size).sum();
    int room = brevity.things();
    for (Map.Entry<LocalDate, List<Item>> day : byDay.entrySet()) {
      if (day.getValue().size() > room) {
        String date = m.display().day(day.getKey());
        items.add(point(m.words().text("handout.days.left-out", left, date)));
        return items;
      }
      items.add(new Item(Kind.LEAD, m.display().longDay(day.getKey()), ""));
      items.addAll(day.getValue());
      left -= day.getValue().size();
      room -= day.getValue().size();
    }
    items.add(point(m.words().text(byDay.isEmpty() ? "handout.days.none" : "handout.days.other")));
    return items;
  }

  private static Item point(String text) {
    return new Item(Kind.POINT, "", text);
  }

  private void add(LocalDate day, String label, String text) {
    byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(new Item(Kind.TICK, label, text));
  }

  /** What is carried together. */
  private record Trip(LocalDate date, Move.Kind kind, Place.Cover wrap, String from, String to) {}

  private void moves() {
    Map<Trip, List<PlantMove>> trips = new LinkedHashMap<>();
    for (PlantMove pm : m.plan().movesByDate()) {
      Move move = pm.move();
      if (days.contains(move.date()) && !m.ticks().isDone(pm)) {
        Trip trip =
            new Trip(
                move.date(),
                move.kind(),
                move.kind() == Move.Kind.WRAP ? move.to().cover() : Place.Cover.NONE,
                move.from().wrapOf().orElse(move.from().name()),
                move.to().wrapOf().orElse(move.to().name()));
        trips.computeIfAbsent(trip, t -> new ArrayList<>()).add(pm);
      }
    }
    trips.forEach(this::trip);
  }

  private void trip(Trip trip, List<PlantMove> moves) {
    List<Plant> plants = moves.stream().map(pm -> pm.plan().plant()).toList();
    String key =
        trip.kind().carries()
            ? "carry"
            : trip.kind() + (trip.wrap() == Place.Cover.MULCH ? ".MULCH" : "");
    String label =
        m.words()
            .text(
                "handout.move." + key,
                plants.stream().mapToInt(Plant::count).sum(),
                trip.from(),
                trip.to());
    String text = brevity.names(m.words(), plants);
    List<PlantMove> heavy = moves.stream().filter(MoveTable::heavy).toList();
    add(
        trip.date(),
        label,
        heavy.isEmpty() ? text : m.words().text("handout.move.two", text, masses(heavy)));
  }

  private String masses(List<PlantMove> heavy) {
    if (brevity == Brevity.FULL) {
      return heavy.stream()
          .map(
              pm ->
                  m.words()
                      .text(
                          "task.plant-mass",
                          pm.plan().plant().id(),
                          m.measures().mass(pm.plan().estimatedMassKg())))
          .collect(Collectors.joining(", "));
    }
    return brevity.names(m.words(), heavy.stream().map(pm -> pm.plan().plant()).toList());
  }

  /**
   * What is to be done alike in several places.
   *
   * @param until last day; empty where it comes again every week
   */
  private record Work(LocalDate day, Task.Kind kind, Optional<LocalDate> until) {}

  private void tasks() {
    Map<Work, List<Task>> works = new LinkedHashMap<>();
    for (Task task : m.plan().tasks()) {
      if (overlaps(task, days) && toldHere(task.kind())) {
        Optional<LocalDate> until = isWeekly(task) ? Optional.empty() : Optional.of(task.to());
        dates(task)
            .map(day -> new Work(day, task.kind(), until))
            .forEach(work -> works.computeIfAbsent(work, w -> new ArrayList<>()).add(task));
      }
    }
    Set<Task.Kind> told = EnumSet.noneOf(Task.Kind.class);
    works.forEach((work, tasks) -> work(work, tasks, told.add(work.kind())));
  }

  private static boolean isWeekly(Task task) {
    return task.kind() == Task.Kind.WATER_STORE;
  }

  /** Lifts and wraps stand with their moves, the others have a part of their own. */
  private static boolean toldHere(Task.Kind kind) {
    return kind != Task.Kind.TWO_PERSON_LIFT
        && kind != Task.Kind.POWER_FAILURE
        && kind != Task.Kind.WRAP
        && kind != Task.Kind.UNWRAP
        && kind != Task.Kind.IN_AND_OUT;
  }

  /** Weekly work comes every week, other work on its first day among these. */
  private Stream<LocalDate> dates(Task task) {
    LocalDate first =
        task.from().isBefore(days.fromInclusive()) ? days.fromInclusive() : task.from();
    if (!isWeekly(task)) {
      return Stream.of(first);
    }
    return Stream.iterate(
        first,
        day -> days.contains(day) && !day.isAfter(task.to()),
        day -> day.plusDays(WEEK_DAYS));
  }

  /**
   * The first of a kind in a whole sentence, if there is room, the others in short; how to water
   * has a part of its own.
   */
  private void work(Work work, List<Task> tasks, boolean first) {
    String places =
        tasks.stream()
            .map(Task::place)
            .filter(place -> !place.isEmpty())
            .distinct()
            .collect(Collectors.joining(", "));
    List<Plant> plants =
        tasks.stream()
            .flatMap(t -> t.plantIds().stream())
            .distinct()
            .map(id -> m.plant(id).plant())
            .toList();
    String text =
        brevity == Brevity.FULL && first && work.until().isPresent()
            ? new TaskTable(m).sentence(tasks.get(0))
            : m.words().text("task.short." + work.kind().name(), "");
    if (work.kind() == Task.Kind.WAKING_ALARM) {
      String warm = m.measures().temperature(tasks.get(0).amount().orElseThrow());
      text = m.words().text("handout.task.plants", text, warm);
    }
    if (!plants.isEmpty()) {
      text = m.words().text("handout.task.plants", text, brevity.names(m.words(), plants));
    }
    Optional<LocalDate> goesOnTo = work.until().filter(to -> to.isAfter(work.day()));
    if (goesOnTo.isPresent()) {
      text = m.words().text("handout.until", text, m.display().day(goesOnTo.get()));
    }
    add(work.day(), places.isEmpty() ? "" : m.words().text("handout.task.at", places), text);
  }
}
