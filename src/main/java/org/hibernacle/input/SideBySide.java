package org.hibernacle.input;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hibernacle.input.CsvLayout.Role;
import org.hibernacle.model.Phrase;

/**
 * A table with columns for several stations side by side.
 *
 * @param byStation the headings as they are for each station: those of the others are left blank
 */
record SideBySide(Map<String, List<CsvHeading>> byStation) {
  private static final int LISTED = 6;

  private static final List<Role> AIR = List.of(Role.LOWEST, Role.HIGHEST, Role.READING);
  private static final List<Role> WHEN =
      List.of(Role.DATE, Role.TIME, Role.YEAR, Role.MONTH, Role.DAY, Role.DAY_OF_YEAR);

  private static final Pattern SEPARATOR = Pattern.compile("[\\s_./:,-]+");

  /** What may stand before or behind "minimum" and is no station. */
  private static final Pattern NO_STATION =
      Pattern.compile(
          ".*(?:soil|ground|grass|surface|concrete|road|water|dew|wet|bulb|wind|chill|heat|index|feels"
              + "|apparent|indoor|inside|record|normal|mean|average|avg|flag|quality|source|hour|time"
              + "|hum|press).*");

  /** Names in the row above, each over its columns or at the left of them. */
  static Optional<SideBySide> below(List<String> names, List<CsvHeading> headings) {
    Map<String, List<CsvHeading>> byStation = new LinkedHashMap<>();
    List<String> over = new ArrayList<>();
    String name = "";
    for (int i = 0; i < headings.size(); i++) {
      name = i < names.size() && !names.get(i).isEmpty() ? names.get(i) : name;
      over.add(isWhen(headings.get(i)) ? "" : name);
    }
    for (String station : over) {
      byStation.computeIfAbsent(station, s -> only(s, over, headings));
    }
    return several(byStation);
  }

  private static List<CsvHeading> only(
      String station, List<String> over, List<CsvHeading> headings) {
    List<CsvHeading> only = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      boolean shown = over.get(i).isEmpty() || over.get(i).equals(station);
      only.add(shown ? headings.get(i) : blank(headings.get(i)));
    }
    return only;
  }

  /** Names within the headings, before or behind what is measured: {@code Oslo Tmin}. */
  static Optional<SideBySide> within(List<CsvHeading> headings) {
    List<Optional<Part>> parts = headings.stream().map(Part::of).toList();
    Map<String, List<CsvHeading>> byStation = new LinkedHashMap<>();
    Map<String, Set<Role>> measured = new LinkedHashMap<>();
    for (Part part : parts.stream().flatMap(Optional::stream).toList()) {
      measured.computeIfAbsent(part.station(), s -> EnumSet.noneOf(Role.class)).add(part.role());
      byStation.computeIfAbsent(
          part.station(),
          station -> {
            List<CsvHeading> only = new ArrayList<>();
            for (int i = 0; i < headings.size(); i++) {
              CsvHeading heading = headings.get(i);
              only.add(
                  parts
                      .get(i)
                      .map(p -> p.station().equals(station) ? p.heading(heading) : blank(heading))
                      .orElse(heading));
            }
            return only;
          });
    }
    // Columns of different things are more likely one station with words of its own.
    boolean alike = measured.values().stream().distinct().count() == 1;
    return alike ? several(byStation) : Optional.empty();
  }

  /**
   * A heading that is nothing but the name asked for. What stands below it is what the lines above
   * the table say, else what the only layout that is tried needs, else single temperatures.
   */
  static Optional<SideBySide> named(
      String station, List<CsvHeading> headings, List<CsvLayout> layouts, String title) {
    CsvLayout first = layouts.get(0);
    Role asked =
        AIR.stream()
            .filter(r -> layouts.size() == 1 && first.columns().containsKey(r))
            .findFirst()
            .orElse(Role.READING);
    Role role = Elements.inTitle(title).orElse(asked);
    List<CsvHeading> only = new ArrayList<>();
    for (CsvHeading heading : headings) {
      boolean named = heading.written().strip().equalsIgnoreCase(station.strip());
      only.add(
          named
              ? new Part(station, role).heading(heading)
              : isWhen(heading) ? heading : blank(heading));
    }
    return headings.stream().anyMatch(h -> h.written().strip().equalsIgnoreCase(station.strip()))
        ? Optional.of(new SideBySide(Map.of(station, only)))
        : Optional.empty();
  }

  /** For a message: which headings could be stations; empty if that is not likely. */
  static Phrase hint(List<CsvHeading> headings) {
    List<Phrase> names =
        headings.stream()
            .filter(h -> !h.key().isEmpty() && !isWhen(h))
            .map(h -> Phrase.quoted(h.written()))
            .toList();
    if (headings.isEmpty() || !isWhen(headings.get(0)) || names.size() < 2) {
      return Phrase.verbatim("");
    }
    List<Phrase> first = names.stream().limit(LISTED).toList();
    return names.size() > LISTED
        ? Phrase.of("station-columns-some", first)
        : Phrase.of("station-columns", first);
  }

  List<String> stations() {
    return List.copyOf(byStation.keySet());
  }

  /** The headings of that station; of the first one if there is none, or none of that name. */
  List<CsvHeading> headings(Optional<String> station) {
    return Stream.concat(
            byStation.entrySet().stream()
                .filter(e -> station.filter(e.getKey()::equalsIgnoreCase).isPresent()),
            byStation.entrySet().stream())
        .findFirst()
        .orElseThrow()
        .getValue();
  }

  private static Optional<SideBySide> several(Map<String, List<CsvHeading>> byStation) {
    byStation.remove("");
    return byStation.size() > 1 ? Optional.of(new SideBySide(byStation)) : Optional.empty();
  }

  private static boolean isWhen(CsvHeading heading) {
    return WHEN.stream().anyMatch(role -> CsvLayouts.words(role).knows(heading));
  }

  private static CsvHeading blank(CsvHeading heading) {
    return new CsvHeading(heading.written(), "", "", Optional.empty());
  }

  /**
   * What a heading says.
   *
   * @param station the name in it
   * @param role what is measured
   */
  private record Part(String station, Role role) {
    static Optional<Part> of(CsvHeading heading) {
      String written = heading.written().strip();
      List<int[]> gaps = new ArrayList<>();
      Matcher gap = SEPARATOR.matcher(written);
      while (gap.find()) {
        gaps.add(new int[] {gap.start(), gap.end()});
      }
      for (int[] g : gaps) {
        Optional<Part> part = of(written.substring(0, g[0]), written.substring(g[1]));
        if (part.isPresent()) {
          return part;
        }
      }
      for (int i = gaps.size() - 1; i >= 0; i--) {
        int[] g = gaps.get(i);
        String name = CsvHeading.withoutUnit(written.substring(g[1]));
        Optional<Part> part = of(name, written.substring(0, g[0]));
        if (part.isPresent()) {
          return part;
        }
      }
      return Optional.empty();
    }

    private static Optional<Part> of(String name, String what) {
      CsvHeading heading = CsvHeading.of(what);
      return NO_STATION.matcher(CsvHeading.plain(name)).matches() || name.isBlank()
          ? Optional.empty()
          : AIR.stream()
              .filter(role -> CsvLayouts.words(role).knows(heading))
              .findFirst()
              .map(role -> new Part(name.strip(), role));
    }

    /** The heading as one of a single station would have it. */
    CsvHeading heading(CsvHeading written) {
      String key =
          switch (role) {
            case LOWEST -> "tmin";
            case HIGHEST -> "tmax";
            default -> "temp";
          };
      return new CsvHeading(written.written(), key, key, written.unit());
    }
  }
}
