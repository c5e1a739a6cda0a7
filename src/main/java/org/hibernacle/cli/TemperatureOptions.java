package org.hibernacle.cli;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernacle.input.QualityPolicy;
import org.hibernacle.input.TemperatureCsv;
import org.hibernacle.input.TemperatureUnit;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What temperature files may not say themselves; shared by the commands that read them. */
final class TemperatureOptions {
  @Option(
      names = "--station",
      paramLabel = "NAME",
      description = "Station to read, where the files hold several.")
  private Optional<String> station = Optional.empty();

  @Option(
      names = "--unit",
      paramLabel = "C|F|K|tenths",
      converter = UnitConverter.class,
      description =
          "Unit of all temperatures, where the headings do not say it; tenths are those of °C.")
  private Optional<TemperatureUnit> unit = Optional.empty();

  @Option(
      names = "--date-format",
      paramLabel = "LETTERS",
      description =
          "How dates are written, such as d.M.yyyy, MM/dd/yyyy or dd-MMM-yy; day-number where a"
              + " spreadsheet counted the days.")
  private Optional<String> dateFormat = Optional.empty();

  @Option(
      names = "--layout",
      paramLabel = "NAME",
      description = "Layout of the files, where two fit: see docs/csv-layouts.md.")
  private Optional<String> layout = Optional.empty();

  @Option(
      names = "--columns",
      paramLabel = "NAMES",
      description =
          "What the columns hold, in their order, where headings are missing or mislead:"
              + " date,-,lowest,highest. A - leaves a column out. In a text without delimiters"
              + " where they stand: date 1-8,lowest 9-14,highest 15-20.")
  private Optional<String> columns = Optional.empty();

  @Option(
      names = "--encoding",
      paramLabel = "NAME",
      converter = EncodingConverter.class,
      description = "Encoding of the files, such as UTF-16LE, where they do not show it.")
  private Optional<Charset> encoding = Optional.empty();

  @Option(
      names = "--zone",
      paramLabel = "ZONE",
      converter = ZoneConverter.class,
      description =
          "Time zone of the station, such as Europe/Oslo: times that name another zone are shifted"
              + " to its standard time, and its rules tell when clocks go back.")
  private Optional<ZoneId> zone = Optional.empty();

  @Option(
      names = "--suspect",
      paramLabel = "refuse|keep|drop",
      description =
          "What to do with days that are hard to believe: refuse the file (the default), keep them,"
              + " or drop them. All are told.")
  private QualityPolicy.Suspect suspect = QualityPolicy.Suspect.REFUSE;

  @Option(
      names = "--gaps",
      paramLabel = "leave|refuse|join[=DAYS]",
      converter = GapsConverter.class,
      description =
          "What to do with missing days: leave them to the choice of winters, which bridges up to 3"
              + " (the default), refuse the file, or join gaps of up to DAYS days, 1 to 7, by a"
              + " straight line (join alone: 3).")
  private GapChoice gaps = new GapChoice(QualityPolicy.Gaps.LEAVE, 0);

  /**
   * One of the ways with gaps.
   *
   * @param gaps which
   * @param joinDays longest gap that is joined, days
   */
  record GapChoice(QualityPolicy.Gaps gaps, int joinDays) {}

  TemperatureCsv.Options forReading() {
    return new TemperatureCsv.Options(
        station,
        unit,
        dateFormat,
        layout,
        Optional.empty(),
        columns,
        encoding,
        zone,
        new QualityPolicy(suspect, gaps.gaps(), gaps.joinDays()));
  }

  /** One text an option given. */
  List<String> texts() {
    List<String> texts = new ArrayList<>();
    station.ifPresent(s -> texts.add("station=" + s));
    unit.ifPresent(u -> texts.add("unit=" + u.option()));
    dateFormat.ifPresent(d -> texts.add("date-format=" + d));
    layout.ifPresent(l -> texts.add("layout=" + l));
    columns.ifPresent(c -> texts.add("columns=" + c));
    encoding.ifPresent(e -> texts.add("encoding=" + e.name()));
    zone.ifPresent(z -> texts.add("zone=" + z));
    if (suspect != QualityPolicy.Suspect.REFUSE) {
      texts.add("suspect=" + suspect.name().toLowerCase(Locale.ROOT));
    }
    switch (gaps.gaps()) {
      case LEAVE -> {}
      case REFUSE -> texts.add("gaps=refuse");
      case JOIN -> texts.add("gaps=join=" + gaps.joinDays());
    }
    return texts;
  }

  /** Takes the name in either case. */
  static final class UnitConverter implements ITypeConverter<TemperatureUnit> {
    @Override
    public TemperatureUnit convert(String text) {
      try {
        return TemperatureUnit.named(text);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(
            "\"" + text + "\" is not a unit; give " + String.join(", ", TemperatureUnit.options()));
      }
    }
  }

  /** Takes any name that is registered for an encoding. */
  static final class EncodingConverter implements ITypeConverter<Charset> {
    @Override
    public Charset convert(String text) {
      try {
        return Charset.forName(text);
      } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
        throw new TypeConversionException(
            "\"" + text + "\" is not an encoding; give one such as UTF-16LE or ISO-8859-2");
      }
    }
  }

  /** Takes a region of the time zone data base, or an offset. */
  static final class ZoneConverter implements ITypeConverter<ZoneId> {
    @Override
    public ZoneId convert(String text) {
      try {
        return ZoneId.of(text);
      } catch (DateTimeException e) {
        throw new TypeConversionException(
            "\"" + text + "\" is not a time zone; give one such as Europe/Oslo or +01:00");
      }
    }
  }

  /** Takes {@code leave}, {@code refuse}, {@code join} or {@code join=5}. */
  static final class GapsConverter implements ITypeConverter<GapChoice> {
    private static final int USUAL_DAYS = 3;

    @Override
    public GapChoice convert(String text) {
      String plain = text.toLowerCase(Locale.ROOT);
      if (plain.matches("join=[1-" + QualityPolicy.MOST_JOIN_DAYS + "]")) {
        return new GapChoice(QualityPolicy.Gaps.JOIN, plain.charAt(5) - '0');
      }
      return switch (plain) {
        case "leave" -> new GapChoice(QualityPolicy.Gaps.LEAVE, 0);
        case "refuse" -> new GapChoice(QualityPolicy.Gaps.REFUSE, 0);
        case "join" -> new GapChoice(QualityPolicy.Gaps.JOIN, USUAL_DAYS);
        default ->
            throw new TypeConversionException(
                "\"" + text + "\" is not a way with gaps; give leave, refuse, join or join=1 to 7");
      };
    }
  }
}
