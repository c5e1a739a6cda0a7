package org.hibernacle.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hibernacle.model.TemperatureSeries;

/**
 * Reads temperature files into one series. Each file is streamed a few times (encoding, headings,
 * dates and stations, values), so that its size does not matter and nothing is guessed from its
 * first rows alone.
 */
public final class TemperatureCsv {
  private TemperatureCsv() {}

  /**
   * What the files themselves may not say.
   *
   * @param station whose rows are read
   * @param unit of all temperatures, over what the headings say
   * @param dateFormat in the letters of {@link java.time.format.DateTimeFormatter}
   * @param layout name of the only layout to be tried
   * @param unitElse of temperatures whose unit neither {@code unit} nor a heading says
   */
  public record Options(
      Optional<String> station,
      Optional<TemperatureUnit> unit,
      Optional<String> dateFormat,
      Optional<String> layout,
      Optional<TemperatureUnit> unitElse) {
    /** Leaves everything to the files. */
    public static final Options NONE = unitElse(Optional.empty());

    public Options(
        Optional<String> station,
        Optional<TemperatureUnit> unit,
        Optional<String> dateFormat,
        Optional<String> layout) {
      this(station, unit, dateFormat, layout, Optional.empty());
    }

    /** Leaves everything to the files, and the unit only where their headings do not say it. */
    public static Options unitElse(Optional<TemperatureUnit> unit) {
      return new Options(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), unit);
    }
  }

  /** The layouts by name, in the order in which they are tried. */
  public static List<String> layoutNames() {
    return CsvLayouts.ALL.stream().map(CsvLayout::name).toList();
  }

  /**
   * Reads all files as one series.
   *
   * @param files at least one; they may overlap if they agree
   * @param problems takes up everything wrong or worth knowing
   * @return empty if there was any error
   */
  public static Optional<TemperatureSeries> read(
      List<Path> files, Options options, Problems problems) {
    int before = problems.errorCount();
    Optional<DateRule> givenDates = givenDates(options, problems);
    List<CsvLayout> layouts = layouts(options, problems);
    List<RecognisedCsv> recognised = new ArrayList<>();
    for (Path file : files) {
      recognise(file, layouts, options, problems).ifPresent(recognised::add);
    }
    if (recognised.isEmpty()) {
      return Optional.empty();
    }
    Set<String> stations = new LinkedHashSet<>();
    Map<RecognisedCsv, DateRule> dates = new LinkedHashMap<>();
    for (RecognisedCsv csv : recognised) {
      CsvSurvey survey = new CsvSurvey(csv, stations);
      if (pass(csv, survey, problems)) {
        givenDates.or(() -> survey.decide(problems)).ifPresent(rule -> dates.put(csv, rule));
      }
    }
    String where = String.join(", ", files.stream().map(Path::toString).toList());
    Optional<String> station = StationChoice.among(stations, options.station(), files, problems);
    if (problems.errorCount() > before || station.isEmpty()) {
      return Optional.empty();
    }
    SeriesBuilder series = new SeriesBuilder(problems);
    dates.forEach(
        (csv, rule) -> {
          TemperatureRows rows =
              new TemperatureRows(csv, rule, options.station(), series, problems);
          pass(csv, rows, problems);
          rows.tell();
        });
    if (problems.errorCount() > before) {
      return Optional.empty();
    }
    Optional<TemperatureSeries> built = series.build(station.get(), where);
    built.ifPresent(s -> Plausibility.look(s, where, problems));
    return built.filter(s -> problems.errorCount() == before);
  }

  /** Whether all rows could be read. */
  private static boolean pass(RecognisedCsv csv, Predicate<CsvText.Row> rows, Problems problems) {
    try {
      csv.rows(rows);
      return true;
    } catch (UnreadableCsv e) {
      e.tell(problems);
      return false;
    }
  }

  private static Optional<RecognisedCsv> recognise(
      Path file, List<CsvLayout> layouts, Options options, Problems problems) {
    try {
      CsvText text = CsvText.open(file);
      return HeadingSearch.in(text, layouts, problems)
          .map(found -> RecognisedCsv.of(text, found, options, problems));
    } catch (UnreadableCsv e) {
      e.tell(problems);
      return Optional.empty();
    }
  }

  private static List<CsvLayout> layouts(Options options, Problems problems) {
    if (options.layout().isEmpty()) {
      return CsvLayouts.ALL;
    }
    String name = options.layout().get();
    List<CsvLayout> named =
        CsvLayouts.ALL.stream().filter(layout -> layout.name().equalsIgnoreCase(name)).toList();
    if (named.isEmpty()) {
      problems.error(
          "IN-326", "--layout", "\"" + name + "\"", "one of " + String.join(", ", layoutNames()));
    }
    return named.isEmpty() ? CsvLayouts.ALL : named;
  }

  private static Optional<DateRule> givenDates(Options options, Problems problems) {
    if (options.dateFormat().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(GivenDateFormat.of(options.dateFormat().get()));
    } catch (IllegalArgumentException e) {
      problems.error(
          "IN-327",
          "--date-format",
          "\"" + options.dateFormat().get() + "\"",
          "letters such as d.M.yyyy, MM/dd/yyyy HH:mm or dd-MMM-yy");
      return Optional.empty();
    }
  }
}
