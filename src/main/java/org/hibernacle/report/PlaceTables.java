package org.hibernacle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hibernacle.planning.PlaceForecast;
import org.hibernacle.planning.PlaceForecast.Week;
import org.hibernacle.thermal.ModelError;

/** How full each place gets, and how cold. */
final class PlaceTables {
  /** More room than that is taken for more; an area in any unit. */
  private static final String HAIR = "0.000000001";

  /** All of the room, percent. */
  private static final double FULL = 100;

  private PlaceTables() {}

  /** One row a place. */
  static Section places(Material m) {
    Table table =
        new Table(m.words(), "places", Table.EVERYWHERE)
            .intro(m.words().text("intro.places"))
            .column("place", 18)
            .column("place-kind", 18)
            .entry("room", 11, Section.Entry.TRIAL, m.measures().squareMetres())
            .column("used", 12, m.measures().squareMetres())
            .formula(
                "room-left", 12, "IF({room}=\"\",\"\",{room}-{used})", m.measures().squareMetres())
            .numbers()
            .workbookFormula(
                "room-share", 10, "IF({room}=\"\",\"\",IF({room}=0,0,100*{used}/{room}))")
            .numbers()
            .column("pots", 10)
            .formula("overfull", 14, overfull(m.words()))
            .marked("{overfull}<>\"\"", StyleRole.DANGER, "")
            .column("coldest", 12, m.measures().degrees())
            .column("coldest-day", 15)
            .column("warm-days", 14, m.measures().threshold(5));
    boolean logged = m.plan().places().stream().anyMatch(p -> p.modelError().isPresent());
    if (logged) {
      errorColumns(table, m.measures().degreesApart(), false);
    }
    for (PlaceForecast forecast : m.plan().places()) {
      StyleRole role = forecast.overfull() ? StyleRole.DANGER : StyleRole.PLAIN;
      OptionalDouble roomM2 = forecast.place().floorM2();
      List<Cell> cells =
          List.of(
              new Cell.Text(forecast.place().name()),
              new Cell.Text(m.words().of("place", forecast.place().kind())),
              roomM2.isPresent() ? m.measures().areaCell(roomM2.getAsDouble()) : new Cell.Gap(),
              m.measures().areaCell(forecast.peakM2()),
              roomM2.isPresent()
                  ? m.measures().areaCell(roomM2.getAsDouble() - forecast.peakM2())
                  : new Cell.Text(""),
              roomM2.isPresent()
                  ? new Cell.Quantity(share(forecast.peakM2(), roomM2.getAsDouble()), "", 0)
                  : new Cell.Text(""),
              Measures.count(forecast.weeks().stream().mapToInt(Week::pots).max().orElse(0)),
              overfull(m, forecast),
              m.measures().temperatureCell(forecast.coldestC()),
              new Cell.Day(forecast.coldestDay(), true),
              Measures.count(forecast.medianDaysAbove5C()));
      List<Cell> more = logged ? modelError(m.measures(), forecast.modelError()) : List.of();
      table.row(role, Stream.concat(cells.stream(), more.stream()).toList());
    }
    return table.build();
  }

  /** The columns of {@link #modelError}; the first two on paper as well, if wanted. */
  static void errorColumns(Table table, String kelvins, boolean onPaper) {
    if (onPaper) {
      table.column("logger-hours", 12).column("model-mean", 14, kelvins);
    } else {
      table.workbookColumn("logger-hours", 12).workbookColumn("model-mean", 14, kelvins);
    }
    table
        .workbookColumn("model-rms", 14, kelvins)
        .workbookColumn("model-largest", 14, kelvins)
        .workbookColumn("model-largest-day", 15);
  }

  /** How far the model was from a place's logger; blank where it has none. */
  static List<Cell> modelError(Measures measures, Optional<ModelError> found) {
    return found
        .map(
            error ->
                List.of(
                    Measures.count(error.hours()),
                    measures.differenceCell(error.meanK()),
                    measures.differenceCell(error.rmsK()),
                    measures.differenceCell(error.largestK()),
                    new Cell.Day(error.largestOn(), true)))
        .orElse(Collections.nCopies(5, new Cell.Gap()));
  }

  private static Cell overfull(Material m, PlaceForecast forecast) {
    if (forecast.overfull()) {
      return new Cell.Level(StyleRole.DANGER, m.words().text("overfull.yes"));
    }
    return new Cell.Text("");
  }

  private static String overfull(Words words) {
    return "IF(AND({room}<>\"\",{used}>{room}+"
        + HAIR
        + "),"
        + Table.quoted(words.text("overfull.yes"))
        + ",\"\")";
  }

  private static double share(double usedM2, double roomM2) {
    return roomM2 == 0 ? 0 : 100 * usedM2 / roomM2;
  }

  /** One row a week, one column a place: floor in use, marked where it is more than there is. */
  static Section occupancy(Material m) {
    Table table =
        new Table(m.words(), "occupancy", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.occupancy", m.measures().squareMetres()))
            .column("week", 15);
    SortedSet<LocalDate> starts = new TreeSet<>();
    List<PlaceForecast> places = m.plan().places();
    for (int i = 0; i < places.size(); i++) {
      table.named(used(i), usedHeading(m, places.get(i)), 13, Section.Entry.NONE).numbers();
      if (isBounded(places.get(i))) {
        String above = "{" + used(i) + "}>" + room(places.get(i)) + "+" + HAIR;
        table.marked("AND(ISNUMBER({" + used(i) + "})," + above + ")", StyleRole.DANGER, " !");
      }
      places.get(i).weeks().forEach(week -> starts.add(week.start()));
    }
    for (int i = 0; i < places.size(); i++) {
      if (isBounded(places.get(i))) {
        String room = room(places.get(i));
        String formula = "IF(" + room + "=0,0,100*{" + used(i) + "}/" + room + ")";
        String name = places.get(i).place().name();
        table.namedFormula(share(i), m.words().text("column.share", name), 12, formula);
      }
    }
    if (places.stream().anyMatch(PlaceTables::isBounded)) {
      table.workbookColumn("full", 10);
    }
    for (LocalDate start : starts) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Day(start));
      places.forEach(forecast -> cells.add(used(m, forecast, start)));
      places.stream()
          .filter(PlaceTables::isBounded)
          .map(f -> share(usedM2(f, start), f.place().floorM2().orElseThrow()))
          .forEach(percent -> cells.add(new Cell.Quantity(percent, "", 0)));
      if (places.stream().anyMatch(PlaceTables::isBounded)) {
        cells.add(new Cell.Quantity(FULL, "", 0));
      }
      table.row(StyleRole.PLAIN, cells);
    }
    return table.build();
  }

  /** The places that have an end to their room, week by week, against that room. */
  static Optional<SheetChart> chart(Material m) {
    List<SheetChart.Line> lines = new ArrayList<>();
    for (int i = 0; i < m.plan().places().size(); i++) {
      if (isBounded(m.plan().places().get(i))) {
        lines.add(new SheetChart.Line(share(i), false));
      }
    }
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    lines.add(new SheetChart.Line("full", true));
    return Optional.of(
        new SheetChart(
            "occupancy",
            m.words().text("chart.occupancy"),
            m.words().text("column.week"),
            m.words().text("chart.occupancy.axis"),
            25,
            false,
            lines));
  }

  /** Whether the room is known; a name that no formula holds is not followed either. */
  private static boolean isBounded(PlaceForecast forecast) {
    return forecast.place().floorM2().isPresent()
        && forecast.place().name().length() <= Table.LONGEST_QUOTED;
  }

  private static String used(int place) {
    return "place-" + (place + 1);
  }

  private static String share(int place) {
    return "share-" + (place + 1);
  }

  /** The room of a place, wherever its row stands after sorting. */
  private static String room(PlaceForecast forecast) {
    String name = Table.quoted(forecast.place().name());
    return "SUMPRODUCT(--({places:place}=" + name + "),{places:room})";
  }

  private static String usedHeading(Material m, PlaceForecast forecast) {
    String name = forecast.place().name();
    OptionalDouble roomM2 = forecast.place().floorM2();
    return roomM2.isPresent()
        ? m.words().text("column.used-of", name, m.measures().area(roomM2.getAsDouble()))
        : m.words().text("column.used-by-place", name, m.measures().squareMetres());
  }

  /** Blank while the place is empty. */
  private static Cell used(Material m, PlaceForecast forecast, LocalDate start) {
    double usedM2 = usedM2(forecast, start);
    if (usedM2 == 0) {
      return new Cell.Gap();
    }
    boolean over = usedM2 > forecast.place().floorM2().orElse(Double.MAX_VALUE) + 1e-9;
    return m.measures().areaCell(usedM2, over ? StyleRole.DANGER : StyleRole.PLAIN);
  }

  private static double usedM2(PlaceForecast forecast, LocalDate start) {
    return forecast.weeks().stream()
        .filter(week -> week.start().equals(start))
        .mapToDouble(Week::usedM2)
        .sum();
  }
}
