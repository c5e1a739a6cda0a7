package org.hibernacle.input;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.input.CsvLayout.Shape;
import org.hibernacle.model.Phrase;

/** Reads the values of one recognised file into the series, checking each row. */
final class TemperatureRows implements Predicate<CsvText.Row> {
  private final RecognisedCsv csv;
  private final DateCells dates;
  private final Optional<String> station;
  private final Optional<ZoneId> zone;
  private final SeriesBuilder series;
  private final Problems problems;
  private final RowTally tally = new RowTally();
  private final TemperatureCells cells;
  private final StrayRows strays;

  TemperatureRows(
      RecognisedCsv csv,
      DateCells dates,
      TemperatureCsv.Options options,
      SeriesBuilder series,
      Problems problems) {
    this.csv = csv;
    this.dates = dates;
    this.station = options.station();
    this.zone = options.zone();
    this.series = series;
    this.problems = problems;
    this.cells = new TemperatureCells(csv, options.quality(), tally, problems);
    this.strays = new StrayRows(csv, tally, problems);
  }

  @Override
  public boolean test(CsvText.Row row) {
    if (csv.isTheHeadings(row)) {
      tally.headingsAgain();
      return true;
    }
    if (!csv.fits(row)) {
      return strays.takesUp(row, () -> tellWidth(row));
    }
    if (!csv.isOf(station, row)) {
      tally.otherStation();
      return true;
    }
    if (csv.columns().layout().shape().wide()) {
      readWide(row);
      return true;
    }
    Optional<Stamp> stamp = dates.read(row);
    if (stamp.isEmpty()) {
      return strays.takesUp(row, () -> error("IN-310.written", row, dates.role(), dates.shown()));
    }
    strays.rowGood();
    timed(row, stamp.get()).ifPresent(s -> read(row, s));
    return true;
  }

  /** Tells what was recognised and what happened to the rows. */
  void tell() {
    tally.tell(csv, dates, zone, problems);
  }

  private void tellWidth(CsvText.Row row) {
    problems.error(
        "IN-312", csv.where(row).where(), row.cells().size(), csv.columns().headings().size());
  }

  /**
   * The date with its time, where rows need one; reports an error and is empty if there is none.
   */
  private Optional<Stamp> timed(CsvText.Row row, Stamp stamp) {
    if (!csv.columns().layout().shape().timed() || stamp.secondOfDay().isPresent()) {
      return Optional.of(stamp);
    }
    Optional<String> time = csv.columns().cell(Role.TIME, row);
    if (time.isEmpty()) {
      error("IN-310.time-lacks", row, dates.role());
      return Optional.empty();
    }
    Optional<Stamp> timed = TimeOfDay.of(time.get()).map(stamp::at);
    if (timed.isEmpty()) {
      error("IN-310.time", row, Role.TIME);
    }
    return timed;
  }

  private void read(CsvText.Row row, Stamp stamp) {
    Stamp here = zone.map(stamp::in).orElse(stamp);
    tally.row(here.day(), csv.where(row));
    if (namesZone(row, stamp)) {
      tally.zone();
    }
    switch (csv.columns().layout().shape()) {
      case READING -> readReading(row, here);
      case SPELL -> readSpell(row, here);
      case ELEMENT -> readElement(row, here.day());
      default -> readDay(row, here.day(), here.secondOfDay().orElse(0));
    }
  }

  private boolean namesZone(CsvText.Row row, Stamp stamp) {
    boolean time =
        csv.columns().cell(Role.TIME, row).flatMap(TimeOfDay::of).stream()
            .anyMatch(t -> t.offsetS().isPresent());
    return time || stamp.offsetS().isPresent();
  }

  private void readDay(CsvText.Row row, LocalDate day, int secondOfDay) {
    OptionalInt days =
        csv.columns().has(Role.DAYS) ? dates.small(row, Role.DAYS) : OptionalInt.of(1);
    if (days.isPresent() && days.getAsInt() > 1) {
      tally.severalDays();
      return;
    }
    OptionalDouble minC = cells.airC(row, Role.LOWEST);
    OptionalDouble maxC = cells.airC(row, Role.HIGHEST);
    OptionalDouble snowCm = cells.snowCm(row);
    boolean both = csv.columns().has(Role.LOWEST) && csv.columns().has(Role.HIGHEST);
    if (both && (minC.isEmpty() || maxC.isEmpty())) {
      return;
    }
    if (both && minC.getAsDouble() > maxC.getAsDouble()) {
      cells.tellCrossed(row);
      return;
    }
    Origin origin = csv.where(row);
    OptionalInt hours =
        csv.columns().has(Role.HOURS) ? dates.small(row, Role.HOURS) : OptionalInt.of(24);
    if (both && hours.isPresent() && hours.getAsInt() < 24) {
      PartOfDay part = new PartOfDay(hours.getAsInt(), minC.getAsDouble(), maxC.getAsDouble());
      tally.used(day, series.addPart(day, secondOfDay, part, origin));
    } else if (minC.isPresent() || maxC.isPresent()) {
      tally.used(day, series.add(day, minC, maxC, origin));
    }
    snowCm.ifPresent(cm -> series.addSnow(day, cm, origin));
  }

  private void readElement(CsvText.Row row, LocalDate day) {
    Optional<Role> element =
        csv.told().or(() -> csv.columns().cell(Role.ELEMENT, row).flatMap(Elements::named));
    if (element.isEmpty()) {
      tally.otherElement();
      return;
    }
    if (element.get() == Role.SNOW) {
      cells
          .elementSnowCm(row, Role.VALUE, csv.columns().column(Role.VALUE).orElseThrow())
          .ifPresent(cm -> series.addSnow(day, cm, csv.where(row)));
    } else {
      add(day, element.get(), cells.airC(row, Role.VALUE), csv.where(row));
    }
  }

  private void add(LocalDate day, Role element, OptionalDouble airC, Origin origin) {
    if (airC.isPresent()) {
      boolean lowest = element == Role.LOWEST;
      OptionalDouble none = OptionalDouble.empty();
      tally.used(day, series.add(day, lowest ? airC : none, lowest ? none : airC, origin));
    }
  }

  private void readWide(CsvText.Row row) {
    Optional<Role> element =
        csv.told().or(() -> csv.columns().cell(Role.ELEMENT, row).flatMap(Elements::named));
    if (element.isEmpty()) {
      tally.otherElement();
      return;
    }
    boolean months = csv.columns().layout().shape() == Shape.DAYNUMBER;
    OptionalInt year = dates.year(row);
    OptionalInt fixed = months ? dates.small(row, Role.DAY) : dates.month(row);
    if (year.isEmpty() || fixed.isEmpty()) {
      Role faulty = year.isEmpty() ? Role.YEAR : months ? Role.DAY : Role.MONTH;
      strays.takesUp(row, () -> error("IN-310.number", row, faulty));
      return;
    }
    strays.rowGood();
    int number = 0;
    for (int column : csv.columns().all(Role.PART)) {
      number++;
      OptionalInt part = OptionalInt.of(number);
      Optional<LocalDate> day =
          months ? DateCells.day(year, part, fixed) : DateCells.day(year, fixed, part);
      if (day.isEmpty()) {
        cells.expectNothing(row, column);
        continue;
      }
      if (element.get() == Role.SNOW) {
        cells
            .elementSnowCm(row, Role.PART, column)
            .ifPresent(cm -> series.addSnow(day.get(), cm, csv.where(row)));
      } else {
        add(day.get(), element.get(), cells.airC(row, Role.PART, column), csv.where(row));
      }
    }
  }

  private void readReading(CsvText.Row row, Stamp stamp) {
    OptionalDouble airC = cells.airC(row, Role.READING);
    if (airC.isPresent()) {
      int second = stamp.secondOfDay().orElseThrow();
      boolean again = series.add(stamp.day(), second, airC.getAsDouble(), csv.where(row));
      tally.used(stamp.day(), again);
    }
  }

  private void readSpell(CsvText.Row row, Stamp stamp) {
    OptionalDouble minC = cells.airC(row, Role.LOWEST);
    OptionalDouble maxC = cells.airC(row, Role.HIGHEST);
    OptionalDouble airC = cells.airC(row, Role.READING);
    if (minC.isEmpty() || maxC.isEmpty()) {
      return;
    }
    if (minC.getAsDouble() > maxC.getAsDouble()) {
      cells.tellCrossed(row);
      return;
    }
    double middleC = airC.orElse((minC.getAsDouble() + maxC.getAsDouble()) / 2);
    int second = stamp.secondOfDay().orElseThrow();
    boolean again = series.add(stamp.day(), second, middleC, csv.where(row));
    series.widen(stamp.day(), minC.getAsDouble(), maxC.getAsDouble());
    tally.used(stamp.day(), again);
  }

  /** An error whose first argument is the cell. */
  private void error(String key, CsvText.Row row, Role role, Object... more) {
    Phrase where =
        Phrase.of("where.heading", csv.where(row).where(), csv.columns().heading(role).shown());
    Stream<Object> cell = Stream.of(csv.columns().cell(role, row).orElse(""));
    problems.error(key, where, Stream.concat(cell, Stream.of(more)).toArray());
  }
}
