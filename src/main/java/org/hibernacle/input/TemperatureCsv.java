package org.hibernacle.input;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hibernacle.model.TemperatureSeries;

/**
 * Reads temperature files into one series. Each file is streamed a few times (encoding, headings,
 * dates and stations, values), so that its size does not matter and nothing is guessed from its
 * first rows alone.
 */
public final class TemperatureCsv {
  private final Options options;
  private final Problems problems;
  private final Optional<DateRule> givenDates;
  private final List<CsvLayout> layouts;

  private TemperatureCsv(Options options, Problems problems) {
    this.options = options;
    this.problems = problems;
    this.givenDates = givenDates();
    this.layouts = layouts();
  }

  /**
   * What temperature files may not say themselves.
   *
   * @param station whose rows are read
   * @param unit of all temperatures, over what the headings say
   * @param dateFormat in the letters of {@link java.time.format.DateTimeFormatter}
   * @param layout name of the only layout to be tried
   * @param unitElse of temperatures whose unit neither {@code unit} nor a heading says
   * @param columns what the columns hold, in their order, for files without headings
   * @param encoding of the text
   * @param zone to whose standard time moments are shifted, and whose rules tell when clocks go
   *     back
   * @param quality what is done about days that are missing or hard to believe
   */
  public record Options(
      Optional<String> station,
      Optional<TemperatureUnit> unit,
      Optional<String> dateFormat,
      Optional<String> layout,
      Optional<TemperatureUnit> unitElse,
      Optional<String> columns,
      Optional<Charset> encoding,
      Optional<ZoneId> zone,
      QualityPolicy quality) {
    /** Leaves everything to the files. */
    public static final Options NONE =
        new Options(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The first four, and strict. */
    public Options(
        Optional<String> station,
        Optional<TemperatureUnit> unit,
        Optional<String> dateFormat,
        Optional<String> layout) {
      this(
          station,
          unit,
          dateFormat,
          layout,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          QualityPolicy.STRICT);
    }

    /**
     * For a logger in a place: leaves everything to its file, and the unit only where its headings
     * do not say it. Air under a roof may stand still or leap, so nothing is refused for that.
     */
    public static Options ofLogger(Optional<TemperatureUnit> unitElse) {
      return new Options(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          unitElse,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          QualityPolicy.LENIENT);
    }
  }

  /** The layouts by name, in the order in which they are tried. */
  public static List<String> layoutNames() {
    return CsvLayouts.ALL.stream().map(CsvLayout::name).toList();
  }

  /**
   * Reads all files as one series.
   *
   * @param files at least one, each a text, a packed text or an archive of them; they may overlap
   *     if they agree
   * @param problems takes up everything wrong or worth knowing
   * @return empty if there was any error
   */
  public static Optional<TemperatureSeries> read(
      List<Path> files, Options options, Problems problems) {
    int before = problems.errorCount();
    TemperatureCsv reader = new TemperatureCsv(options, problems);
    List<RecognisedCsv> recognised = new ArrayList<>();
    if (problems.errorCount() == before) {
      files.forEach(file -> recognised.addAll(reader.recognise(file)));
    }
    return reader.series(recognised, files, before);
  }

  /** Reads one source, for tests that need no disk. */
  static Optional<TemperatureSeries> read(CsvSource source, Options options, Problems problems) {
    TemperatureCsv reader = new TemperatureCsv(options, problems);
    List<RecognisedCsv> recognised = reader.recognise(source, problems).stream().toList();
    return reader.series(recognised, List.of(Path.of(source.name())), 0);
  }

  private Optional<TemperatureSeries> series(
      List<RecognisedCsv> recognised, List<Path> files, int before) {
    if (recognised.isEmpty()) {
      return Optional.empty();
    }
    String where = String.join(", ", files.stream().map(Path::toString).toList());
    Set<String> stations = new TreeSet<>();
    Map<RecognisedCsv, DateCells> dates = new LinkedHashMap<>();
    for (RecognisedCsv csv : recognised) {
      CsvSurvey survey = new CsvSurvey(csv);
      if (pass(csv, survey)) {
        stations.addAll(survey.stations());
        stations.addAll(csv.sideBySide());
        RecognisedCsv whole = csv.withUnits(options, survey.range(), problems);
        survey.decide(givenDates, problems).ifPresent(cells -> dates.put(whole, cells));
      }
    }
    Optional<String> station = StationChoice.among(stations, options.station(), files, problems);
    if (problems.errorCount() > before || station.isEmpty()) {
      return Optional.empty();
    }
    SeriesBuilder builder = new SeriesBuilder(options, problems);
    dates.forEach(
        (csv, cells) -> {
          TemperatureRows rows = new TemperatureRows(csv, cells, options, builder, problems);
          pass(csv, rows);
          builder.close();
          rows.tell();
        });
    if (problems.errorCount() > before) {
      return Optional.empty();
    }
    Optional<ReadSeries> built = builder.build(station.get(), where);
    built.ifPresent(read -> Quality.settle(read, options.quality(), problems));
    if (problems.errorCount() > before) {
      return Optional.empty();
    }
    return built.flatMap(read -> whole(read, where));
  }

  private Optional<TemperatureSeries> whole(ReadSeries read, String where) {
    if (read.days().isEmpty()) {
      problems.error("IN-324", where);
      return Optional.empty();
    }
    if (Plausibility.isMonthly(read.days().navigableKeySet())) {
      problems.error("IN-402.monthly", where);
      return Optional.empty();
    }
    TemperatureSeries series = read.series();
    Plausibility.look(series, where, problems);
    return Optional.of(series);
  }

  /** Whether all rows could be read. */
  private boolean pass(RecognisedCsv csv, Predicate<CsvText.Row> rows) {
    try {
      csv.rows(rows);
      return true;
    } catch (UnreadableCsv e) {
      e.tell(problems);
      return false;
    }
  }

  /** The tables of a file; of an archive those that are temperatures, unless there is none. */
  private List<RecognisedCsv> recognise(Path file) {
    List<CsvSource> sources;
    try {
      sources = CsvSource.of(file);
    } catch (UnreadableCsv e) {
      e.tell(problems);
      return List.of();
    }
    if (sources.size() == 1) {
      return recognise(sources.get(0), problems).stream().toList();
    }
    List<RecognisedCsv> tables = new ArrayList<>();
    List<CsvSource> others = new ArrayList<>();
    for (CsvSource source : sources) {
      Problems ofThis = new Problems();
      Optional<RecognisedCsv> table = recognise(source, ofThis);
      table.ifPresent(tables::add);
      if (ofThis.hasOnly("IN-305")) {
        others.add(source);
      } else {
        problems.addAll(ofThis);
      }
    }
    if (tables.isEmpty()) {
      others.forEach(source -> recognise(source, problems));
    } else {
      others.forEach(source -> problems.note("IN-411", source.name()));
    }
    return tables;
  }

  private Optional<RecognisedCsv> recognise(CsvSource source, Problems into) {
    try {
      CsvText text = new CsvText(source, CsvEncoding.of(source, options.encoding()));
      return headings(text, into).flatMap(found -> RecognisedCsv.of(text, found, into));
    } catch (UnreadableCsv e) {
      e.tell(into);
      return Optional.empty();
    }
  }

  /** By their words; by their place where that is asked for, or where a layout has no headings. */
  private Optional<HeadingSearch.Found> headings(CsvText text, Problems into) throws UnreadableCsv {
    CsvLayout first = layouts.get(0);
    if (options.columns().isPresent()) {
      return ColumnOrder.in(text, first, givenDates, into);
    }
    if (layouts.size() == 1 && !first.order().isEmpty()) {
      Problems byWords = new Problems();
      Optional<HeadingSearch.Found> found =
          HeadingSearch.in(text, layouts, options.station(), byWords);
      return byWords.hasOnly("IN-305") ? ColumnOrder.in(text, first, givenDates, into) : found;
    }
    Problems byWords = new Problems();
    Optional<HeadingSearch.Found> cut = Optional.empty();
    try {
      Optional<HeadingSearch.Found> found =
          HeadingSearch.in(text, layouts, options.station(), byWords);
      if (!byWords.hasOnly("IN-305")) {
        into.addAll(byWords);
        return found;
      }
      cut = ColumnOrder.cut(text, layouts);
    } catch (UnreadableCsv e) {
      // Remarks in a text without delimiters may look like cells that do not end.
      cut = ColumnOrder.cut(text, layouts);
      if (cut.isEmpty()) {
        throw e;
      }
    }
    if (cut.isEmpty()) {
      into.addAll(byWords);
    }
    return cut;
  }

  private List<CsvLayout> layouts() {
    List<CsvLayout> usual =
        CsvLayouts.ALL.stream().filter(l -> l.rank() != CsvLayout.Rank.ASKED).toList();
    if (options.columns().isPresent()) {
      Optional<CsvLayout> columns = ColumnOrder.layout(options.columns().get());
      if (columns.isEmpty()) {
        problems.error("IN-412", "--columns", options.columns().get());
      }
      return columns.map(List::of).orElse(usual);
    }
    if (options.layout().isEmpty()) {
      return usual;
    }
    Optional<CsvLayout> named = CsvLayouts.named(options.layout().get());
    if (named.isEmpty()) {
      problems.error("IN-326", "--layout", options.layout().get(), layoutNames());
    }
    return named.map(List::of).orElse(usual);
  }

  private Optional<DateRule> givenDates() {
    if (options.dateFormat().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(GivenDateFormat.rule(options.dateFormat().get()));
    } catch (IllegalArgumentException e) {
      problems.error("IN-327", "--date-format", options.dateFormat().get(), DayNumber.OPTION);
      return Optional.empty();
    }
  }
}
