package org.hibernacle.input;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.Phrase;

/**
 * A temperature file whose layout and columns are known.
 *
 * @param text the file
 * @param delimiter between cells
 * @param line of the headings
 * @param lastLine on which the headings end
 * @param columns of the layout
 * @param sideBySide stations that have columns of their own; empty if columns are of one station
 * @param told the element that all values are, where no column says so
 * @param units of the temperature columns; empty until they are settled
 * @param snow unit of the snow depth; empty if there is no such column, or none that can be used
 */
record RecognisedCsv(
    CsvText text,
    char delimiter,
    long line,
    long lastLine,
    CsvColumns columns,
    List<String> sideBySide,
    Optional<Role> told,
    Map<Role, TemperatureUnit> units,
    Optional<SnowUnit> snow) {

  /** Settles what the values are; reports an error where nothing tells. */
  static Optional<RecognisedCsv> of(CsvText text, HeadingSearch.Found found, Problems problems) {
    CsvColumns columns = found.fits().get(0);
    Optional<Role> told = Optional.empty();
    boolean values = columns.has(Role.VALUE) || columns.has(Role.PART);
    if (values && !columns.has(Role.ELEMENT)) {
      told = Elements.inTitle(found.title());
      if (told.isEmpty()) {
        problems.error("IN-403", Phrase.of("where.line", text.name(), found.line()));
        return Optional.empty();
      }
    }
    return Optional.of(
        new RecognisedCsv(
            text,
            found.delimiter(),
            found.line(),
            found.lastLine(),
            columns,
            found.stations(),
            told,
            Map.of(),
            Optional.empty()));
  }

  /** The same with its units; reports an error where nothing tells them. */
  RecognisedCsv withUnits(TemperatureCsv.Options options, List<Object> range, Problems problems) {
    Map<Role, TemperatureUnit> units = new EnumMap<>(Role.class);
    for (Role role : columns.candidates().keySet()) {
      if (!role.isTemperature()) {
        continue;
      }
      Optional<TemperatureUnit> unit = unit(role, options, problems);
      if (unit.isEmpty()) {
        problems.error(
            "IN-308",
            headingOf(role),
            TemperatureUnit.options(),
            range.isEmpty() ? "" : new Phrase("and-values", range));
        break;
      }
      units.put(role, unit.get());
    }
    return new RecognisedCsv(
        text,
        delimiter,
        line,
        lastLine,
        columns,
        sideBySide,
        told,
        units,
        snowUnit(units, problems));
  }

  private Optional<TemperatureUnit> unit(
      Role role, TemperatureCsv.Options options, Problems problems) {
    Optional<TemperatureUnit> inHeading = columns.heading(role).unit();
    Optional<TemperatureUnit> asked = options.unit();
    if (asked.isPresent() && inHeading.isPresent() && !asked.equals(inHeading)) {
      problems.warning(
          "IN-309", headingOf(role), inHeading.get(), asked.get().option(), asked.get());
    }
    return asked
        .or(() -> inHeading)
        .or(() -> columns.layout().unitOf(role, columns.heading(role)))
        .or(options::unitElse);
  }

  /** Snow is never needed, so a column without a unit is left alone. */
  private Optional<SnowUnit> snowUnit(Map<Role, TemperatureUnit> units, Problems problems) {
    if (!columns.has(Role.SNOW) || !units.containsKey(Role.LOWEST)) {
      return Optional.empty();
    }
    Optional<SnowUnit> unit = SnowUnit.of(columns.heading(Role.SNOW).key(), units.get(Role.LOWEST));
    if (unit.isEmpty()) {
      problems.warning("IN-334", headingOf(Role.SNOW));
    }
    return unit;
  }

  private Phrase headingOf(Role role) {
    return Phrase.of(
        "where.heading", Phrase.of("where.line", name(), line), columns.heading(role).shown());
  }

  String name() {
    return text.name();
  }

  /** Hands on the rows below the headings; remarks after a {@code #} are left out. */
  void rows(Predicate<CsvText.Row> more) throws UnreadableCsv {
    Predicate<CsvText.Row> below =
        row -> row.line() <= lastLine || row.cells().get(0).startsWith("#") || more.test(row);
    List<Cut> cuts = columns.layout().cuts();
    if (cuts.isEmpty()) {
      text.rows(delimiter, below);
    } else {
      text.rows(cuts, below);
    }
  }

  /**
   * Whether the row has as many cells as there are headings; empty ones at its end do not count.
   */
  boolean fits(CsvText.Row row) {
    int needed = columns.layout().shortRows() ? columns.lastUsed() + 1 : columns.headings().size();
    return columns.layout().shortRows()
        ? row.cells().size() >= needed
        : HeadingSearch.fits(row, needed);
  }

  /** Whether the row says the headings again, as where files were put behind each other. */
  boolean isTheHeadings(CsvText.Row row) {
    List<String> cells = row.cells();
    if (!cells.get(0).isEmpty() && Character.isDigit(cells.get(0).charAt(0))) {
      return false;
    }
    return cells.size() == columns.headings().size()
        && columns.candidates().values().stream()
            .flatMap(List::stream)
            .allMatch(i -> columns.headings().get(i).written().startsWith(cells.get(i)))
        && columns.candidates().values().stream()
            .flatMap(List::stream)
            .noneMatch(i -> cells.get(i).isEmpty());
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
  List<Phrase> describe() {
    List<Phrase> words = new ArrayList<>();
    words.add(Phrase.of("csv.layout", columns.layout().name()));
    for (Role role : Role.values()) {
      boolean shown = columns.has(role) && role != Role.BESIDE && role != Role.PART;
      if (shown && (role != Role.SNOW || snow.isPresent())) {
        Object heading = columns.heading(role).shown();
        words.add(
            unit(role)
                .map(unit -> Phrase.of("csv.column-in", role, heading, unit))
                .orElse(Phrase.of("csv.column", role, heading)));
      }
    }
    if (columns.has(Role.PART)) {
      int parts = columns.all(Role.PART).size();
      unit(Role.PART).ifPresent(unit -> words.add(Phrase.of("csv.parts", parts, unit)));
    }
    told.ifPresent(role -> words.add(Phrase.of("csv.told", role)));
    String between =
        switch (delimiter) {
          case '\t' -> "csv.tab";
          case ';' -> "csv.semicolon";
          case '|' -> "csv.stroke";
          case CsvText.BLANKS -> "csv.blanks";
          case CsvText.POSITIONS -> "csv.position";
          default -> "csv.comma";
        };
    words.add(Phrase.of("csv.parted", Phrase.of(between)));
    words.add(Phrase.of("csv.encoding", text.encoding().charset().name()));
    return words;
  }

  private Optional<Object> unit(Role role) {
    return role == Role.SNOW ? snow.map(s -> s) : Optional.ofNullable(units.get(role));
  }

  /** {@code temps.csv, line 7}. */
  Origin where(CsvText.Row row) {
    return new Origin(name(), row.line());
  }
}
