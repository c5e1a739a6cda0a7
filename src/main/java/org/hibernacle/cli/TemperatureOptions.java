package org.hibernacle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
      paramLabel = "C|F",
      converter = UnitConverter.class,
      description = "Unit of all temperatures, where the headings do not say it.")
  private Optional<TemperatureUnit> unit = Optional.empty();

  @Option(
      names = "--date-format",
      paramLabel = "LETTERS",
      description = "How dates are written, such as d.M.yyyy, MM/dd/yyyy or dd-MMM-yy.")
  private Optional<String> dateFormat = Optional.empty();

  @Option(
      names = "--layout",
      paramLabel = "NAME",
      description = "Layout of the files, where two fit: see docs/csv-layouts.md.")
  private Optional<String> layout = Optional.empty();

  TemperatureCsv.Options forReading() {
    return new TemperatureCsv.Options(station, unit, dateFormat, layout);
  }

  /** One text an option given. */
  List<String> texts() {
    List<String> texts = new ArrayList<>();
    station.ifPresent(s -> texts.add("station=" + s));
    unit.ifPresent(u -> texts.add("unit=" + u));
    dateFormat.ifPresent(d -> texts.add("date-format=" + d));
    layout.ifPresent(l -> texts.add("layout=" + l));
    return texts;
  }

  /** Takes the letter in either case. */
  static final class UnitConverter implements ITypeConverter<TemperatureUnit> {
    @Override
    public TemperatureUnit convert(String text) {
      return switch (text.toUpperCase(Locale.ROOT)) {
        case "C" -> TemperatureUnit.C;
        case "F" -> TemperatureUnit.F;
        default -> throw new TypeConversionException("\"" + text + "\" is not a unit; give C or F");
      };
    }
  }
}
