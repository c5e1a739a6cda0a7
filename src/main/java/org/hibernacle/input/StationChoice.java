package org.hibernacle.input;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Phrase;

/** Settles which station of the files is read. */
final class StationChoice {
  private static final int LISTED = 12;

  private StationChoice() {}

  /**
   * The name for the series: the one station found, the one asked for, or the first file's name
   * where no file names a station. Reports an error and is empty if the choice is open.
   */
  static Optional<String> among(
      Set<String> stations, Optional<String> asked, List<Path> files, Problems problems) {
    String where = String.join(", ", files.stream().map(Path::toString).toList());
    if (stations.isEmpty()) {
      asked.ifPresent(name -> problems.warning("IN-319", where, name));
      return Optional.of(asked.orElse(baseName(files.get(0))));
    }
    if (asked.isEmpty()) {
      if (stations.size() == 1) {
        return Optional.of(stations.iterator().next());
      }
      problems.error("IN-317", where, stations.size(), listed(stations));
      return Optional.empty();
    }
    Optional<String> match =
        stations.stream().filter(name -> name.equalsIgnoreCase(asked.get())).findFirst();
    if (match.isEmpty()) {
      problems.error("IN-318", where, asked.get(), listed(stations));
    }
    return match;
  }

  private static Phrase listed(Set<String> stations) {
    return Phrase.listed(stations.stream().sorted().map(Phrase::quoted).toList(), LISTED);
  }

  private static String baseName(Path file) {
    Path name = file.getFileName();
    return name == null ? "temperatures" : name.toString().replaceFirst("\\.[^.]*$", "");
  }
}
