package org.hibernacle.input;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.Phrase;

/**
 * First look at the rows of one file: which stations are there, how dates are written, and between
 * which figures the temperatures lie.
 */
final class CsvSurvey implements Predicate<CsvText.Row> {
  /** More stations than any file has; a column of something else has been taken for them. */
  static final int MOST_STATIONS = 10_000;

  private final RecognisedCsv csv;
  private final Set<String> stations = new TreeSet<>();
  private final DateSurvey dates;
  private final Set<Role> temperatures = EnumSet.noneOf(Role.class);
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;

  CsvSurvey(RecognisedCsv csv) {
    this.csv = csv;
    this.dates = new DateSurvey(csv.columns().layout().dates());
    for (Role role : csv.columns().candidates().keySet()) {
      if (role.isTemperature()) {
        temperatures.add(role);
      }
    }
  }

  @Override
  public boolean test(CsvText.Row row) {
    if (!csv.fits(row) || csv.isTheHeadings(row)) {
      return true;
    }
    CsvColumns columns = csv.columns();
    Optional<String> station = columns.cell(Role.STATION, row).filter(name -> !name.isEmpty());
    if (stations.size() <= MOST_STATIONS) {
      station.ifPresent(stations::add);
    }
    columns.cell(Role.DATE, row).ifPresent(cell -> dates.add(cell, station.orElse("")));
    for (Role role : temperatures) {
      for (int column : columns.all(role)) {
        if (column < row.cells().size()) {
          widen(row.cells().get(column));
        }
      }
    }
    return true;
  }

  private void widen(String cell) {
    OptionalDouble number = csv.columns().layout().marks().number(cell);
    if (number.isPresent() && !NumberCell.missing(cell)) {
      lowest = Math.min(lowest, number.getAsDouble());
      highest = Math.max(highest, number.getAsDouble());
    }
  }

  Set<String> stations() {
    return stations;
  }

  /** Lowest and highest; empty if there is no figure. */
  List<Object> range() {
    return lowest > highest ? List.of() : List.of(lowest, highest);
  }

  /** How dates are read; empty if that was reported as open. */
  Optional<DateCells> decide(Optional<DateRule> given, Problems problems) {
    if (!csv.columns().has(Role.DATE)) {
      return Optional.of(new DateCells(csv.columns(), Optional.empty()));
    }
    Phrase where = Phrase.of("where.heading", csv.name(), csv.columns().heading(Role.DATE).shown());
    return given
        .or(() -> dates.decide(where, problems))
        .map(rule -> new DateCells(csv.columns(), Optional.of(DayMemory.of(rule))));
  }
}
