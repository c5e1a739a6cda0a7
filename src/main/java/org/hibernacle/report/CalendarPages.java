package org.hibernacle.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.hibernacle.model.Plant;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;

/** The months from the first thing to do to the last, with a short line for each. */
final class CalendarPages {
  private final Material m;
  private final NavigableMap<LocalDate, List<MonthPage.Line>> lines = new TreeMap<>();

  private CalendarPages(Material material) {
    this.m = material;
  }

  static List<MonthPage> write(Material m) {
    CalendarPages pages = new CalendarPages(m);
    pages.moves();
    pages.tasks();
    pages.lines.values().forEach(day -> day.sort(Comparator.comparing(MonthPage.Line::role)));
    return pages.months();
  }

  /** Each mark with its meaning. */
  static List<MonthPage.Line> legend(Material m) {
    List<MonthPage.Line> legend = new ArrayList<>();
    for (Move.Kind kind : m.kinds()) {
      String mark = m.words().of("mark", kind);
      legend.add(new MonthPage.Line(MoveTable.role(kind), mark, m.words().of("legend", kind)));
    }
    legend.add(
        new MonthPage.Line(
            StyleRole.TASK, m.words().text("mark.TASK"), m.words().text("legend.TASK")));
    return legend;
  }

  /** What pots that go the same way on the same day have in common. */
  private record Trip(LocalDate date, Move.Kind kind, String to) {}

  private void moves() {
    Map<Trip, List<Plant>> trips = new LinkedHashMap<>();
    for (PlantMove pm : m.plan().movesByDate()) {
      Trip trip = new Trip(pm.move().date(), pm.move().kind(), pm.move().to().name());
      trips.computeIfAbsent(trip, t -> new ArrayList<>()).add(pm.plan().plant());
    }
    trips.forEach(
        (trip, plants) ->
            add(
                trip.date(),
                new MonthPage.Line(
                    MoveTable.role(trip.kind()),
                    m.words().of("mark", trip.kind()),
                    trip(trip, plants, p -> p.id() + " " + p.name()),
                    trip(trip, plants, Plant::id))));
  }

  private String trip(Trip trip, List<Plant> plants, Function<Plant, String> name) {
    String names = m.words().listed(plants.stream().map(name).toList());
    return m.words().text("calendar.trip", m.words().place(trip.to()), names);
  }

  /** One line a place, with all there is to do from that day on. */
  private void tasks() {
    Map<LocalDate, Map<String, List<Task>>> byPlace = new TreeMap<>();
    for (Task task : m.plan().tasks()) {
      byPlace
          .computeIfAbsent(task.from(), d -> new TreeMap<>())
          .computeIfAbsent(task.place(), p -> new ArrayList<>())
          .add(task);
    }
    byPlace.forEach(
        (date, places) -> places.forEach((place, tasks) -> add(date, line(place, tasks))));
  }

  private MonthPage.Line line(String place, List<Task> tasks) {
    String text = m.words().listed(tasks.stream().map(this::brief).toList());
    String line =
        place.isEmpty() ? text : m.words().text("calendar.task", m.words().place(place), text);
    return new MonthPage.Line(StyleRole.TASK, m.words().text("mark.TASK"), line);
  }

  private String brief(Task task) {
    String ids = m.words().listed(task.plantIds());
    return m.words().text("task.short." + task.kind().name(), ids);
  }

  private void add(LocalDate date, MonthPage.Line line) {
    lines.computeIfAbsent(date, d -> new ArrayList<>()).add(line);
  }

  private List<MonthPage> months() {
    List<MonthPage> pages = new ArrayList<>();
    if (lines.isEmpty()) {
      return pages;
    }
    YearMonth last = YearMonth.from(lines.lastKey());
    for (YearMonth month = YearMonth.from(lines.firstKey());
        !month.isAfter(last);
        month = month.plusMonths(1)) {
      List<MonthPage.DayEntry> entries =
          lines.subMap(month.atDay(1), true, month.atEndOfMonth(), true).entrySet().stream()
              .map(e -> new MonthPage.DayEntry(e.getKey(), e.getValue()))
              .toList();
      pages.add(new MonthPage(month, m.display().month(month), entries));
    }
    return pages;
  }
}
