package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hibernacle.climate.WinterSummary;
import org.hibernacle.climate.WinterSummary.Frosts;
import org.hibernacle.planning.TraceTable;

/** What the winters on file were like, and how cold a pot would have got in the coldest. */
final class WinterTables {
  private WinterTables() {}

  /** One row a winter. */
  static Section winters(Material m) {
    Measures measures = m.measures();
    Table table =
        new Table(m.words(), "winters", Table.EVERYWHERE)
            .intro(m.words().text("intro.winters"))
            .column("winter", 11)
            .column("days-on-file", 9)
            .column("days-missing", 9)
            .column("coldest-night", 11, measures.degrees())
            .column("coldest-night-day", 14)
            .column("first-frost", 14)
            .column("last-frost", 14)
            .column("frost-days", 11, measures.threshold(0))
            .column("hard-frost-days", 11, measures.threshold(-5))
            .column("deep-frost-days", 11, measures.threshold(-10))
            .column("frost-run", 11)
            .column("chill", 10);
    for (WinterSummary w : m.plan().winters()) {
      table.row(
          StyleRole.PLAIN,
          List.of(
              new Cell.Text(w.season().toString()),
              Measures.count(w.daysOnFile()),
              Measures.count(w.missingDays()),
              measures.temperatureCell(w.coldestNightC()),
              new Cell.Day(w.coldestNight(), true),
              pastDay(m, frosts(w, 0).flatMap(Frosts::first)),
              pastDay(m, frosts(w, 0).flatMap(Frosts::last)),
              days(w, 0),
              days(w, -5),
              days(w, -10),
              Measures.count(w.longestFrostRunDays()),
              new Cell.Quantity(w.chillPortions(), "", 0)));
    }
    return table.build();
  }

  private static Optional<Frosts> frosts(WinterSummary w, double thresholdC) {
    return w.frosts().stream().filter(f -> f.thresholdC() == thresholdC).findFirst();
  }

  private static Cell days(WinterSummary w, double thresholdC) {
    Optional<Frosts> frosts = frosts(w, thresholdC);
    return frosts.isPresent() ? Measures.count(frosts.get().days()) : new Cell.Gap("");
  }

  private static Cell pastDay(Material m, Optional<LocalDate> day) {
    return day.isPresent()
        ? new Cell.Day(day.get(), true)
        : new Cell.Gap(m.words().text("gap.no-frost"));
  }

  /** One row a day of the coldest winter; the chart's lines are columns of this table. */
  static Section temperatures(Material m) {
    TraceTable traces = m.plan().traces();
    Table table =
        new Table(m.words(), "temperatures", Table.WORKBOOK_ONLY)
            .intro(intro(m))
            .column("day", 14)
            .column("air-min", 11, m.measures().degrees())
            .column("air-max", 11, m.measures().degrees());
    int number = 0;
    for (String place : traces.places()) {
      table.named("ball-" + ++number, ballHeading(m, place), 13, Section.Entry.NONE);
    }
    for (TraceTable.Day day : traces.days()) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Day(day.day(), true));
      cells.add(m.measures().temperatureCell(day.airMinC()));
      cells.add(m.measures().temperatureCell(day.airMaxC()));
      day.rootBallC().forEach(c -> cells.add(m.measures().temperatureCell(c)));
      table.row(StyleRole.PLAIN, cells);
    }
    return table.build();
  }

  /** The lowest air and the root ball in each place, over the coldest winter. */
  static TemperatureChart chart(Material m) {
    TraceTable traces = m.plan().traces();
    List<LocalDate> days = traces.days().stream().map(TraceTable.Day::day).toList();
    List<TemperatureChart.Line> lines = new ArrayList<>();
    lines.add(
        new TemperatureChart.Line(
            m.words().text("column.air-min", m.measures().degrees()),
            traces.days().stream().map(day -> m.measures().degrees(day.airMinC())).toList()));
    for (int i = 0; i < traces.places().size(); i++) {
      int place = i;
      lines.add(
          new TemperatureChart.Line(
              ballHeading(m, traces.places().get(i)),
              traces.days().stream()
                  .map(day -> m.measures().degrees(day.rootBallC().get(place)))
                  .toList()));
    }
    return new TemperatureChart(intro(m), m.measures().degrees(), days, lines);
  }

  private static String intro(Material m) {
    TraceTable traces = m.plan().traces();
    Cell.Quantity pot = (Cell.Quantity) m.measures().volumeCell(traces.potL());
    return m.words()
        .text(
            "chart.title",
            traces.winter().toString(),
            m.display().number(pot.value(), 1) + " " + m.measures().litres());
  }

  private static String ballHeading(Material m, String place) {
    return m.words().text("column.ball-by-place", place, m.measures().degrees());
  }
}
