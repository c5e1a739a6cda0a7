package org.hibernacle.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernacle.model.Place;
import org.hibernacle.model.TemperatureSeries;

/** Reads what loggers in places measured; several files of one place make one series. */
public final class PlaceTemperatures {
  private PlaceTemperatures() {}

  /**
   * A file and where its logger hung.
   *
   * @param place its name, as the keeper wrote it
   * @param file in any layout of temperature files
   */
  public record Given(String place, Path file) {}

  /**
   * Reads all files.
   *
   * @param given files with their places
   * @param places of the inventory; names are matched without regard to case and spaces
   * @param unit of temperatures whose heading does not tell it
   * @param problems takes up everything wrong or worth knowing
   * @return by the place's name in the inventory, in its order; without what had errors
   */
  public static Map<String, TemperatureSeries> read(
      List<Given> given, List<Place> places, Optional<TemperatureUnit> unit, Problems problems) {
    Map<String, List<Path>> files = new LinkedHashMap<>();
    places.forEach(place -> files.put(place.name(), new ArrayList<>()));
    for (Given one : given) {
      List<String> matches =
          files.keySet().stream()
              .filter(name -> Words.key(name).equals(Words.key(one.place())))
              .toList();
      if (matches.isEmpty()) {
        problems.error(
            "IN-340",
            "--place-temperatures",
            one.place(),
            one.file(),
            Nearest.clause(Nearest.of(one.place(), files.keySet(), 3)));
      }
      matches.forEach(name -> files.getOrDefault(name, List.of()).add(one.file()));
    }
    Map<String, TemperatureSeries> read = new LinkedHashMap<>();
    files.forEach(
        (place, ofPlace) -> {
          if (!ofPlace.isEmpty()) {
            TemperatureCsv.read(ofPlace, TemperatureCsv.Options.ofLogger(unit), problems)
                .ifPresent(series -> read.put(place, series));
          }
        });
    return read;
  }
}
