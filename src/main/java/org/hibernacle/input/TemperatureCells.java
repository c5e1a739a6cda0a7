package org.hibernacle.input;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.input.MarkRule.Marked;
import org.hibernacle.model.Phrase;

/** Reads the figures of one file and tells those that can not be right. */
final class TemperatureCells {
  private static final double COLDEST_C = -70;
  private static final double WARMEST_C = 60;

  /** More has been measured once, on one mountain (from memory). */
  private static final double DEEPEST_SNOW_CM = 1200;

  private final RecognisedCsv csv;
  private final QualityPolicy quality;
  private final RowTally tally;
  private final Problems problems;

  TemperatureCells(RecognisedCsv csv, QualityPolicy quality, RowTally tally, Problems problems) {
    this.csv = csv;
    this.quality = quality;
    this.tally = tally;
    this.problems = problems;
  }

  /** The temperature of the role's column, °C; empty if there is none, or none that can be used. */
  OptionalDouble airC(CsvText.Row row, Role role) {
    Optional<Integer> column = csv.columns().column(role);
    return column.isEmpty() ? OptionalDouble.empty() : airC(row, role, column.get());
  }

  /** The temperature in that column, °C. */
  OptionalDouble airC(CsvText.Row row, Role role, int column) {
    MarkRule marks = csv.columns().layout().marks();
    Marked marked = marks.of(row.cells().get(column), csv.columns().mark(role, column, row));
    if (NumberCell.missing(marked.value())) {
      tally.missing(role);
      return OptionalDouble.empty();
    }
    if (marks.drops(marked.mark())) {
      tally.marked(marked.mark());
      return OptionalDouble.empty();
    }
    OptionalDouble number = NumberCell.number(marked.value());
    if (number.isEmpty()) {
      error("IN-313", row, column);
      return number;
    }
    TemperatureUnit unit = csv.units().getOrDefault(role, TemperatureUnit.C);
    double airC = unit.toC(number.getAsDouble());
    if (airC >= COLDEST_C && airC <= WARMEST_C) {
      return OptionalDouble.of(airC);
    }
    if (quality.drops()) {
      tellDropped("IN-421.impossible", row, row.cells().get(column), COLDEST_C, WARMEST_C);
    } else if (unit == TemperatureUnit.C) {
      error("IN-314", row, column, COLDEST_C, WARMEST_C);
    } else {
      error("IN-314.unit", row, column, COLDEST_C, WARMEST_C, unit);
    }
    return OptionalDouble.empty();
  }

  /** Tells a lowest above the highest of the same row. */
  void tellCrossed(CsvText.Row row) {
    String lowest = csv.columns().cell(Role.LOWEST, row).orElse("");
    String highest = csv.columns().cell(Role.HIGHEST, row).orElse("");
    if (quality.drops()) {
      tellDropped("IN-421.crossed", row, lowest, highest);
    } else {
      problems.error("IN-315", csv.where(row).where(), lowest, highest);
    }
  }

  /** Tells a figure on a day that no month has, such as 30 February. */
  void expectNothing(CsvText.Row row, int column) {
    if (!NumberCell.missing(row.cells().get(column))) {
      error("IN-310.no-such-day", row, column);
    }
  }

  /** The depth of snow, cm, a trace being none; empty if there is none or if it is wrong. */
  OptionalDouble snowCm(CsvText.Row row) {
    if (csv.snow().isEmpty()) {
      return OptionalDouble.empty();
    }
    return snowCm(row, csv.columns().column(Role.SNOW).orElseThrow(), csv.snow().get());
  }

  /** The depth of snow of a row of one element, which archives keep in mm. */
  OptionalDouble elementSnowCm(CsvText.Row row, Role role, int column) {
    MarkRule marks = csv.columns().layout().marks();
    Marked marked = marks.of(row.cells().get(column), csv.columns().mark(role, column, row));
    return csv.units().get(role) != TemperatureUnit.TENTHS || marks.drops(marked.mark())
        ? OptionalDouble.empty()
        : snowCm(row, column, SnowUnit.MM);
  }

  private OptionalDouble snowCm(CsvText.Row row, int column, SnowUnit unit) {
    String cell = row.cells().get(column);
    if (cell.equalsIgnoreCase("T")) {
      return OptionalDouble.of(0);
    }
    if (NumberCell.missing(cell)) {
      tally.missing(Role.SNOW);
      return OptionalDouble.empty();
    }
    OptionalDouble number = NumberCell.number(cell);
    if (number.isEmpty()) {
      error("IN-313.snow", row, column);
      return number;
    }
    double depthCm = unit.toCm(number.getAsDouble());
    if (depthCm < 0 || depthCm > DEEPEST_SNOW_CM) {
      error("IN-335", row, column, DEEPEST_SNOW_CM, unit);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(depthCm);
  }

  private void tellDropped(String key, CsvText.Row row, Object... found) {
    problems.note(key, csv.where(row).where(), found);
  }

  /** An error whose first argument is the cell. */
  private void error(String key, CsvText.Row row, int column, Object... more) {
    Phrase where =
        Phrase.of(
            "where.heading", csv.where(row).where(), csv.columns().headings().get(column).shown());
    Stream<Object> cell = Stream.of(row.cells().get(column));
    problems.error(key, where, Stream.concat(cell, Stream.of(more)).toArray());
  }
}
