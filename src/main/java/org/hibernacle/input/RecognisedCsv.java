package org.hibernacle.input;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hibernacle.input.CsvLayout.Role;

/**
 * A temperature file whose layout, columns and units are known.
 *
 * @param text the file
 * @param delimiter between cells
 * @param headingLine line of the headings
 * @param columns of the layout
 * @param units of the temperature columns
 * @param snow unit of the snow depth; empty if there is no such column, or none that can be used
 */
record RecognisedCsv(
    CsvText text,
    char delimiter,
    long headingLine,
    CsvColumns columns,
    Map<Role, TemperatureUnit> units,
    Optional<SnowUnit> snow) {

  /** Settles the units; reports an error where nothing tells them. */
  static RecognisedCsv of(
      CsvText text, HeadingSearch.Found found, TemperatureCsv.Options options, Problems problems) {
    Optional<TemperatureUnit> asked = options.unit();
    CsvColumns columns = found.fits().get(0);
    Map<Role, TemperatureUnit> units = new EnumMap<>(Role.class);
    for (Role role : columns.candidates().keySet()) {
      if (!role.isTemperature()) {
        continue;
      }
      CsvHeading heading = columns.heading(role);
      String where = text.path() + ", line " + found.line() + ", \"" + heading.written() + "\"";
      Optional<TemperatureUnit> unit =
          asked.or(heading::unit).or(() -> columns.layout().unit()).or(() -> options.unitElse());
      if (unit.isEmpty()) {
        problems.error(
            "IN-308",
            where,
            "a heading without a unit",
            "a unit such as (°C) or (°F) in the heading, or --unit C or --unit F");
        break;
      }
      if (asked.isPresent() && heading.unit().isPresent() && !asked.equals(heading.unit())) {
        problems.warning(
            "IN-309",
            where,
            heading.unit().get() + " in the heading but --unit " + asked.get().name(),
            "the same unit in both",
            "read as " + asked.get());
      }
      units.put(role, unit.get());
    }
    return new RecognisedCsv(
        text,
        found.delimiter(),
        found.line(),
        columns,
        units,
        snow(columns, units, text.path() + ", line " + found.line(), problems));
  }

  /** Snow is never needed, so a column without a unit is left alone. */
  private static Optional<SnowUnit> snow(
      CsvColumns columns, Map<Role, TemperatureUnit> units, String where, Problems problems) {
    if (columns.column(Role.SNOW).isEmpty() || !units.containsKey(Role.LOWEST)) {
      return Optional.empty();
    }
    CsvHeading heading = columns.heading(Role.SNOW);
    Optional<SnowUnit> unit = SnowUnit.of(heading.key(), units.get(Role.LOWEST));
    if (unit.isEmpty()) {
      problems.warning(
          "IN-334",
          where + ", \"" + heading.written() + "\"",
          "a depth of snow without a unit",
          "a unit such as (cm), (mm) or (in) in the heading",
          "the column is not used, the ground counts as bare");
    }
    return unit;
  }

  /** Hands on the rows below the headings; remarks after a {@code #} are left out. */
  void rows(Predicate<CsvText.Row> more) throws UnreadableCsv {
    text.rows(
        delimiter,
        row -> row.line() <= headingLine || row.cells().get(0).startsWith("#") || more.test(row));
  }

  /**
   * Whether the row has as many cells as there are headings; empty ones at its end do not count.
   */
  boolean fits(CsvText.Row row) {
    return HeadingSearch.fits(row, columns.headings().size());
  }

  /** Whether the row belongs to the station asked for; every row does if none was. */
  boolean isOf(Optional<String> station, CsvText.Row row) {
    return station.isEmpty()
        || columns
            .cell(Role.STATION, row)
            .map(cell -> cell.equalsIgnoreCase(station.get()))
            .orElse(true);
  }

  /** What was recognised, in words. */
  String describe() {
    StringBuilder words = new StringBuilder("layout ").append(columns.layout().name());
    for (Role role : columns.candidates().keySet()) {
      if (role == Role.SNOW && snow.isEmpty()) {
        continue;
      }
      words.append(", ").append(role).append(" \"");
      words.append(columns.heading(role).written()).append('"');
      if (units.containsKey(role)) {
        words.append(" in ").append(units.get(role));
      }
      if (role == Role.SNOW) {
        snow.ifPresent(unit -> words.append(" in ").append(unit));
      }
    }
    String between =
        switch (delimiter) {
          case '\t' -> "tab";
          case ';' -> "semicolon";
          default -> "comma";
        };
    return words + ", parted by " + between + ", encoding " + text.charset().name();
  }

  /** {@code temps.csv, line 7}. */
  String where(CsvText.Row row) {
    return text.path() + ", line " + row.line();
  }
}
