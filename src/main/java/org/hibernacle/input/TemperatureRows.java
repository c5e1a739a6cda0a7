package org.hibernacle.input;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.DailyExtremes;

/** Reads the values of one recognised file into the series, checking each row. */
final class TemperatureRows implements Predicate<CsvText.Row> {
  private static final double COLDEST_C = -70;
  private static final double WARMEST_C = 60;

  /** More has been measured once, on one mountain (from memory). */
  private static final double DEEPEST_SNOW_CM = 1200;

  private final RecognisedCsv csv;
  private final DateRule dates;
  private final Optional<String> station;
  private final SeriesBuilder series;
  private final Problems problems;
  private final RowTally tally = new RowTally();

  TemperatureRows(
      RecognisedCsv csv,
      DateRule dates,
      Optional<String> station,
      SeriesBuilder series,
      Problems problems) {
    this.csv = csv;
    this.dates = dates;
    this.station = station;
    this.series = series;
    this.problems = problems;
  }

  @Override
  public boolean test(CsvText.Row row) {
    if (!csv.fits(row)) {
      problems.error(
          "IN-312",
          csv.where(row),
          row.cells().size() + " cells",
          csv.columns().headings().size()
              + " as in the heading; a decimal comma needs another"
              + " delimiter or quotes");
    } else if (!csv.isOf(station, row)) {
      tally.otherStation();
    } else {
      stamp(row).ifPresent(stamp -> read(row, stamp));
    }
    return true;
  }

  /** Tells what was recognised and what happened to the rows. */
  void tell() {
    tally.tell(csv, dates, problems);
  }

  private Optional<Stamp> stamp(CsvText.Row row) {
    String date = csv.columns().cell(Role.DATE, row).orElseThrow();
    Optional<Stamp> stamp = dates.read(date);
    if (stamp.isEmpty()) {
      error("IN-310", row, Role.DATE, "a date written " + dates.shown());
      return stamp;
    }
    if (csv.columns().layout().daily() || stamp.get().secondOfDay().isPresent()) {
      return stamp;
    }
    Optional<String> time = csv.columns().cell(Role.TIME, row);
    if (time.isEmpty()) {
      error("IN-310", row, Role.DATE, "a date with its time, such as 2025-01-14 06:30");
      return Optional.empty();
    }
    Stamp timed = stamp.get().at(TimeOfDay.second(time.get()));
    if (timed.secondOfDay().isEmpty()) {
      error("IN-310", row, Role.TIME, "a time such as 06:30 or 6:30 AM");
      return Optional.empty();
    }
    return Optional.of(timed);
  }

  private void read(CsvText.Row row, Stamp stamp) {
    tally.row(stamp.day(), csv.where(row));
    if (namesZone(row, Role.DATE) || namesZone(row, Role.TIME)) {
      tally.zone();
    }
    if (csv.columns().layout().daily()) {
      readDay(row, stamp.day());
    } else {
      readReading(row, stamp);
    }
  }

  private void readDay(CsvText.Row row, LocalDate day) {
    OptionalDouble minC = airC(row, Role.LOWEST);
    OptionalDouble maxC = airC(row, Role.HIGHEST);
    OptionalDouble snowCm =
        csv.snow().map(unit -> snowCm(row, unit)).orElse(OptionalDouble.empty());
    if (minC.isEmpty() || maxC.isEmpty()) {
      return;
    }
    if (minC.getAsDouble() > maxC.getAsDouble()) {
      problems.error(
          "IN-315",
          csv.where(row),
          "a lowest of "
              + cell(row, Role.LOWEST)
              + " above a highest of "
              + cell(row, Role.HIGHEST),
          "the lowest not above the highest");
      return;
    }
    DailyExtremes extremes = new DailyExtremes(minC.getAsDouble(), maxC.getAsDouble());
    tally.used(day, series.add(day, extremes, csv.where(row)));
    snowCm.ifPresent(cm -> series.addSnow(day, cm, csv.where(row)));
  }

  private void readReading(CsvText.Row row, Stamp stamp) {
    OptionalDouble airC = airC(row, Role.READING);
    if (airC.isEmpty()) {
      return;
    }
    int second = stamp.secondOfDay().orElseThrow();
    boolean again = series.add(stamp.day(), second, airC.getAsDouble(), csv.where(row));
    tally.used(stamp.day(), again);
  }

  /** The temperature, °C; empty if there is none (counted) or if it is wrong (reported). */
  private OptionalDouble airC(CsvText.Row row, Role role) {
    String cell = cell(row, role);
    if (NumberCell.missing(cell)) {
      tally.missing(role);
      return OptionalDouble.empty();
    }
    OptionalDouble number = NumberCell.number(cell);
    if (number.isEmpty()) {
      error("IN-313", row, role, "a number such as -3.5");
      return number;
    }
    TemperatureUnit unit = csv.units().getOrDefault(role, TemperatureUnit.C);
    double airC = unit.toC(number.getAsDouble());
    if (airC < COLDEST_C || airC > WARMEST_C) {
      String expected = "air of " + COLDEST_C + " to " + WARMEST_C + " °C";
      error("IN-314", row, role, unit == TemperatureUnit.C ? expected : expected + ", read as °F");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(airC);
  }

  /** The depth of snow, cm, a trace being none; empty if there is none or if it is wrong. */
  private OptionalDouble snowCm(CsvText.Row row, SnowUnit unit) {
    String cell = cell(row, Role.SNOW);
    if (cell.equalsIgnoreCase("T")) {
      return OptionalDouble.of(0);
    }
    if (NumberCell.missing(cell)) {
      tally.missing(Role.SNOW);
      return OptionalDouble.empty();
    }
    OptionalDouble number = NumberCell.number(cell);
    if (number.isEmpty()) {
      error("IN-313", row, Role.SNOW, "a depth such as 12");
      return number;
    }
    double depthCm = unit.toCm(number.getAsDouble());
    if (depthCm < 0 || depthCm > DEEPEST_SNOW_CM) {
      error("IN-335", row, Role.SNOW, "snow of 0 to 1200 cm, read as " + unit);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(depthCm);
  }

  private boolean namesZone(CsvText.Row row, Role role) {
    return csv.columns().cell(role, row).map(TimeOfDay::namesZone).orElse(false);
  }

  private String cell(CsvText.Row row, Role role) {
    return csv.columns().cell(role, row).orElseThrow();
  }

  private void error(String code, CsvText.Row row, Role role, String expected) {
    String where = csv.where(row) + ", \"" + csv.columns().heading(role).written() + "\"";
    problems.error(code, where, "\"" + cell(row, role) + "\"", expected);
  }
}
