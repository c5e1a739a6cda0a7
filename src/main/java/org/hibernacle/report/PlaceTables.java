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
  private PlaceTables() {}

  /** One row a place. */
  static Section places(Material m) {
    Table table =
        new Table(m.words(), "places", Table.EVERYWHERE)
            .intro(m.words().text("intro.places"))
            .column("place", 18)
            .column("place-kind", 18)
            .column("room", 11, m.measures().squareMetres())
            .column("used", 12, m.measures().squareMetres())
            .formula("room-left", 12, "{room}-{used}", m.measures().squareMetres())
            .column("pots", 10)
            .column("overfull", 14)
            .column("coldest", 12, m.measures().degrees())
            .column("coldest-day", 14)
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
                  : new Cell.Gap(),
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
        .workbookColumn("model-largest-day", 14);
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
    return new Cell.Gap();
  }

  /** One row a week, one column a place: floor in use, marked where it is more than there is. */
  static Section occupancy(Material m) {
    Table table =
        new Table(m.words(), "occupancy", Table.WORKBOOK_ONLY)
            .intro(m.words().text("intro.occupancy", m.measures().squareMetres()))
            .column("week", 14);
    SortedSet<LocalDate> starts = new TreeSet<>();
    int number = 0;
    for (PlaceForecast forecast : m.plan().places()) {
      table.named("place-" + ++number, usedHeading(m, forecast), 16, Section.Entry.NONE);
      forecast.weeks().forEach(week -> starts.add(week.start()));
    }
    for (LocalDate start : starts) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Cell.Day(start));
      m.plan().places().forEach(forecast -> cells.add(used(m, forecast, start)));
      table.row(StyleRole.PLAIN, cells);
    }
    return table.build();
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
    double usedM2 =
        forecast.weeks().stream()
            .filter(week -> week.start().equals(start))
            .mapToDouble(Week::usedM2)
            .sum();
    if (usedM2 == 0) {
      return new Cell.Gap();
    }
    boolean over = usedM2 > forecast.place().floorM2().orElse(Double.MAX_VALUE) + 1e-9;
    return m.measures().areaCell(usedM2, over ? StyleRole.DANGER : StyleRole.PLAIN);
  }
}
