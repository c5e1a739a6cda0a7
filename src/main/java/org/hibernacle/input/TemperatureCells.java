package org.hibernacle.input;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.input.MarkRule.Marked;

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
      error("IN-313", row, column, "a number such as -3.5");
      return number;
    }
    TemperatureUnit unit = csv.units().getOrDefault(role, TemperatureUnit.C);
    double airC = unit.toC(number.getAsDouble());
    if (airC >= COLDEST_C && airC <= WARMEST_C) {
      return OptionalDouble.of(airC);
    }
    String expected = "air of " + COLDEST_C + " to " + WARMEST_C + " °C";
    String read = unit == TemperatureUnit.C ? "" : ", read as " + unit;
    if (quality.drops()) {
      tellDropped(row, "\"" + row.cells().get(column) + "\" where " + expected + " is possible");
    } else {
      error("IN-314", row, column, expected + read + "; --suspect drop leaves such values out");
    }
    return OptionalDouble.empty();
  }

  /** Tells a lowest above the highest of the same row. */
  void tellCrossed(CsvText.Row row) {
    String found =
        "a lowest of "
            + csv.columns().cell(Role.LOWEST, row).orElse("")
            + " above a highest of "
            + csv.columns().cell(Role.HIGHEST, row).orElse("");
    if (quality.drops()) {
      tellDropped(row, found);
    } else {
      problems.error(
          "IN-315",
          csv.where(row).toString(),
          found,
          "the lowest not above the highest; --suspect drop leaves such days out");
    }
  }

  /** Tells a figure on a day that no month has, such as 30 February. */
  void expectNothing(CsvText.Row row, int column) {
    if (!NumberCell.missing(row.cells().get(column))) {
      error("IN-310", row, column, "an empty cell, since there is no such day");
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
      error("IN-313", row, column, "a depth such as 12");
      return number;
    }
    double depthCm = unit.toCm(number.getAsDouble());
    if (depthCm < 0 || depthCm > DEEPEST_SNOW_CM) {
      error("IN-335", row, column, "snow of 0 to 1200 cm, read as " + unit);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(depthCm);
  }

  private void tellDropped(CsvText.Row row, String found) {
    problems.note("IN-421", csv.where(row).toString(), found, "not used, as --suspect drop asks");
  }

  private void error(String code, CsvText.Row row, int column, String expected) {
    String where = csv.where(row) + ", \"" + csv.columns().headings().get(column).written() + "\"";
    problems.error(code, where, "\"" + row.cells().get(column) + "\"", expected);
  }
}
