package org.hibernacle.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.input.PlaceTemperatures;
import org.hibernacle.input.Problems;
import org.hibernacle.input.TemperatureUnit;
import org.hibernacle.model.Inventory;
import org.hibernacle.model.TemperatureSeries;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Loggers that hung in places; shared by the commands that simulate them. */
final class PlaceTemperatureOptions {
  @Option(
      names = "--place-temperatures",
      paramLabel = "PLACE=FILE",
      converter = GivenConverter.class,
      description =
          "Air that a logger measured in a place, such as \"Shed=shed.csv\": used there instead of"
              + " the modelled air on the days it has. May be given several times.")
  private List<PlaceTemperatures.Given> given = List.of();

  /** The readings by place; without what had errors. */
  Map<String, TemperatureSeries> read(
      Inventory inventory, Optional<TemperatureUnit> unit, Problems problems) {
    return PlaceTemperatures.read(given, inventory.places(), unit, problems);
  }

  /** In the order of the command line. */
  List<Path> files() {
    return given.stream().map(PlaceTemperatures.Given::file).toList();
  }

  /** One text a file, in the order of the command line. */
  List<String> texts() {
    return given.stream().map(one -> "place-temperatures=" + one.place()).toList();
  }

  /** Parts the name from the file at the first equals sign. */
  static final class GivenConverter implements ITypeConverter<PlaceTemperatures.Given> {
    @Override
    public PlaceTemperatures.Given convert(String text) {
      int equals = text.indexOf('=');
      String place = equals < 0 ? "" : text.substring(0, equals).strip();
      String file = text.substring(equals + 1).strip();
      if (place.isEmpty() || file.isEmpty()) {
        throw new TypeConversionException(
            "\"" + text + "\" is not a place and a file, such as \"Shed=shed.csv\"");
      }
      try {
        return new PlaceTemperatures.Given(place, Path.of(file));
      } catch (InvalidPathException e) {
        throw new TypeConversionException("\"" + file + "\" is not the name of a file");
      }
    }
  }
}
