package org.hibernacle.input;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
      asked.ifPresent(
          name ->
              problems.warning(
                  "IN-319",
                  where,
                  "--station " + name + " but no column of stations",
                  "a station column",
                  "all rows are used"));
      return Optional.of(asked.orElse(baseName(files.get(0))));
    }
    if (asked.isEmpty()) {
      if (stations.size() == 1) {
        return Optional.of(stations.iterator().next());
      }
      problems.error(
          "IN-317",
          where,
          stations.size() + " stations: " + listed(stations),
          "one, or --station with the name of one");
      return Optional.empty();
    }
    Optional<String> match =
        stations.stream().filter(name -> name.equalsIgnoreCase(asked.get())).findFirst();
    if (match.isEmpty()) {
      problems.error(
          "IN-318", where, "no station \"" + asked.get() + "\"", "one of " + listed(stations));
    }
    return match;
  }

  private static String listed(Set<String> stations) {
    List<String> names =
        stations.stream().sorted().limit(LISTED).map(name -> "\"" + name + "\"").toList();
    int more = stations.size() - names.size();
    return String.join(", ", names) + (more > 0 ? " and " + more + " more" : "");
  }

  private static String baseName(Path file) {
    Path name = file.getFileName();
    return name == null ? "temperatures" : name.toString().replaceFirst("\\.[^.]*$", "");
  }
}
