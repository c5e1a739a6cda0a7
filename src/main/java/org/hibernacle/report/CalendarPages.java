package org.hibernacle.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hibernacle.planning.Move;
import org.hibernacle.planning.SeasonPlan.PlantMove;
import org.hibernacle.planning.Task;

/** The months from the first thing to do to the last, with a short line for each. */
final class CalendarPages {
  /** Ids named in a calendar cell before the rest is counted. */
  private static final int IDS_IN_A_LINE = 5;

  private final Material m;
  private final NavigableMap<LocalDate, List<MonthPage.Line>> lines = new TreeMap<>();

  private CalendarPages(Material material) {
    this.m = material;
  }

  static List<MonthPage> write(Material m) {
    CalendarPages pages = new CalendarPages(m);
    pages.moves();
    m.plan().tasks().forEach(pages::task);
    return pages.months();
  }

  /** Each mark with its meaning. */
  static List<MonthPage.Line> legend(Material m) {
    List<MonthPage.Line> legend = new ArrayList<>();
    for (Move.Kind kind : Move.Kind.values()) {
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
    Map<Trip, List<String>> trips = new LinkedHashMap<>();
    for (PlantMove pm : m.plan().movesByDate()) {
      Trip trip = new Trip(pm.move().date(), pm.move().kind(), pm.move().to().name());
      trips.computeIfAbsent(trip, t -> new ArrayList<>()).add(pm.plan().plant().id());
    }
    trips.forEach(
        (trip, ids) ->
            add(
                trip.date(),
                new MonthPage.Line(
                    MoveTable.role(trip.kind()),
                    m.words().of("mark", trip.kind()),
                    m.words().text("calendar.trip", m.ids(ids, IDS_IN_A_LINE), trip.to()))));
  }

  private void task(Task task) {
    String text = m.words().of("task.short", task.kind());
    String line =
        task.place().isEmpty() ? text : m.words().text("calendar.task", text, task.place());
    add(task.from(), new MonthPage.Line(StyleRole.TASK, m.words().text("mark.TASK"), line));
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
