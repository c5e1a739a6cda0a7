package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.hibernacle.model.Place;
import org.hibernacle.model.PlaceKind;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlantPlan;
import org.hibernacle.planning.TraceTable;

/**
 * How cold a pot would have got in the coldest winter on file, day by day: the table, and the chart
 * drawn from some of its columns.
 */
final class TemperatureTable {
  /** The three months round midsummer tell nothing about winter: September to May in the north. */
  private static final int MONTHS_EACH_SIDE_OF_MIDWINTER = 4;

  private static final int MOST_PLACES = 5;

  /** Of each kind of place the first one gets a line; a warm room has nothing to tell. */
  private static final List<Predicate<Place>> KINDS =
      List.of(
          place -> place.kind() == PlaceKind.BENCH,
          place -> place.kind() == PlaceKind.GROUND && place.cover() != Place.Cover.MULCH,
          place -> place.kind() == PlaceKind.GROUND && place.cover() == Place.Cover.MULCH,
          place -> place.kind() == PlaceKind.COLD_STORE,
          place -> place.kind() == PlaceKind.GLASSHOUSE,
          place -> place.kind() == PlaceKind.FROST_FREE_ROOM);

  private final Material m;
  private final TraceTable traces;
  private final List<TraceTable.Day> days;

  TemperatureTable(Material material) {
    this.m = material;
    this.traces = m.plan().traces();
    int midwinter = m.plan().season().midwinter().getMonthValue();
    this.days =
        traces.days().stream()
            .filter(d -> monthsApart(d.day(), midwinter) <= MONTHS_EACH_SIDE_OF_MIDWINTER)
            .toList();
  }

  private static int monthsApart(LocalDate day, int month) {
    return Math.abs(Math.floorMod(day.getMonthValue() - month + 6, 12) - 6);
  }

  /** One row a day. */
  Section table() {
    Table table =
        new Table(m.words(), "temperatures", Table.WORKBOOK_ONLY)
            .intro(title())
            .column("day", 15)
            .column("air-min", 12, m.measures().degrees())
            .column("air-max", 12, m.measures().degrees());
    int number = 0;
    for (String place : traces.places()) {
      table.named("ball-" + ++number, heading(place), 15, Section.Entry.NONE);
    }
    table
        .workbookColumn("limit-tender", 13, m.measures().degrees())
        .workbookColumn("limit-hardy", 13, m.measures().degrees());
    DoubleSummaryStatistics limits = rootLimitsC();
    for (TraceTable.Day day : days) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Day(day.day(), true));
      cells.add(m.measures().temperatureCell(day.airMinC()));
      cells.add(m.measures().temperatureCell(day.airMaxC()));
      day.rootBallC().forEach(c -> cells.add(m.measures().temperatureCell(c)));
      cells.add(m.measures().temperatureCell(limits.getMax()));
      cells.add(m.measures().temperatureCell(limits.getMin()));
      table.row(StyleRole.PLAIN, cells);
    }
    return table.build();
  }

  /** What the roots here bear in midwinter: the tenderest and the hardiest of them. */
  private DoubleSummaryStatistics rootLimitsC() {
    return m.plan().plants().stream()
        .map(PlantPlan::plant)
        .mapToDouble(p -> p.ownRootLimitC().orElse(p.rootSpecies().rootLimitC()))
        .summaryStatistics();
  }

  /** The same lines as {@link #chart}, drawn by the workbook, and what roots bear. */
  SheetChart sheetChart() {
    List<SheetChart.Line> lines = new ArrayList<>();
    lines.add(new SheetChart.Line("air-min", false));
    for (String place : drawn()) {
      lines.add(new SheetChart.Line("ball-" + (traces.places().indexOf(place) + 1), false));
    }
    lines.add(new SheetChart.Line("limit-tender", true));
    lines.add(new SheetChart.Line("limit-hardy", true));
    return new SheetChart(
        "temperatures",
        title(),
        m.words().text("column.day"),
        m.words().text("chart.temperatures.axis", m.measures().degrees()),
        5,
        true,
        lines);
  }

  /** The lowest air, and the root ball in places that differ. */
  TemperatureChart chart() {
    List<TemperatureChart.Line> lines = new ArrayList<>();
    String air = m.words().text("column.air-min", m.measures().degrees());
    lines.add(line(air, TraceTable.Day::airMinC));
    for (String place : drawn()) {
      int index = traces.places().indexOf(place);
      lines.add(line(heading(place), day -> day.rootBallC().get(index)));
    }
    List<LocalDate> dates = days.stream().map(TraceTable.Day::day).toList();
    return new TemperatureChart(title(), m.measures().degrees(), dates, lines);
  }

  private TemperatureChart.Line line(String name, Function<TraceTable.Day, Double> celsius) {
    return new TemperatureChart.Line(
        name, days.stream().map(celsius).map(m.measures()::degrees).toList());
  }

  private List<String> drawn() {
    Map<String, Place> known =
        m.plan().places().stream()
            .map(PlaceForecast::place)
            .collect(Collectors.toMap(Place::name, Function.identity()));
    return KINDS.stream()
        .flatMap(
            kind ->
                traces.places().stream()
                    .filter(known::containsKey)
                    .filter(name -> kind.test(known.get(name)))
                    .limit(1))
        .limit(MOST_PLACES)
        .toList();
  }

  private String title() {
    return m.words()
        .text("chart.title", traces.winter().toString(), m.measures().volume(traces.potL()));
  }

  private String heading(String place) {
    return m.words().text("column.ball-by-place", place, m.measures().degrees());
  }
}
