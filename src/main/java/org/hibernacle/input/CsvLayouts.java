package org.hibernacle.input;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.input.CsvLayout.Role;

/** The layouts that are recognised, from {@code temperature-layouts.txt}. */
final class CsvLayouts {
  private static final String TABLE = "/temperature-layouts.txt";
  private static final String COMMON = "*";

  /** In the order in which messages name them. */
  static final List<CsvLayout> ALL = read();

  private CsvLayouts() {}

  /** The layout of that name, in any case. */
  static Optional<CsvLayout> named(String name) {
    return ALL.stream().filter(layout -> layout.name().equalsIgnoreCase(name)).findFirst();
  }

  /** What every layout may call a column of that role. */
  static KnownHeadings common(Role role) {
    return Objects.requireNonNull(named("daily").orElseThrow().columns().get(role));
  }

  /** What headings may say for that role in a layout without words of its own. */
  static KnownHeadings words(Role role) {
    return role == Role.READING
        ? Objects.requireNonNull(named("readings").orElseThrow().columns().get(role))
        : common(role);
  }

  private static List<CsvLayout> read() {
    Map<String, Map<String, String>> blocks = new LinkedHashMap<>();
    Map<String, String> block = new LinkedHashMap<>();
    for (String line : lines()) {
      if (line.startsWith("[")) {
        block = new LinkedHashMap<>();
        blocks.put(line.substring(1, line.length() - 1), block);
      } else if (!line.isBlank() && !line.startsWith("#")) {
        String[] parts = line.split("\\s+=\\s+", 2);
        block.merge(parts[0], parts[1], (before, more) -> before + " | " + more);
      }
    }
    Map<String, String> common = Objects.requireNonNull(blocks.remove(COMMON));
    List<CsvLayout> layouts = new ArrayList<>();
    blocks.forEach((name, entries) -> layouts.add(layout(name, entries, common)));
    return List.copyOf(layouts);
  }

  private static List<String> lines() {
    try (InputStream in =
            Objects.requireNonNull(CsvLayouts.class.getResourceAsStream(TABLE), TABLE);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return reader.lines().map(String::strip).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CsvLayout layout(
      String name, Map<String, String> entries, Map<String, String> common) {
    Map<Role, KnownHeadings> columns = new EnumMap<>(Role.class);
    List<Role> optional = new ArrayList<>();
    entries.forEach(
        (key, value) ->
            role(key.replace("?", ""))
                .ifPresent(
                    role -> {
                      columns.put(role, new KnownHeadings(headings(role, value, common)));
                      if (key.endsWith("?")) {
                        optional.add(role);
                      }
                    }));
    List<Cut> cuts =
        Arrays.stream(entries.getOrDefault("positions", "").split("\\s+\\|\\s+", -1))
            .flatMap(cut -> Cut.of(cut).stream())
            .toList();
    List<Role> order =
        words(entries, "order").stream().map(word -> role(word).orElse(Role.BESIDE)).toList();
    return new CsvLayout(
        name,
        CsvLayout.Rank.valueOf(upper(entries, "is")),
        CsvLayout.Shape.valueOf(upper(entries, "row")),
        CsvLayout.Proof.valueOf(upper(entries, "proof")),
        columns,
        optional,
        cuts.isEmpty() ? order : cuts.stream().map(Cut::role).toList(),
        cuts,
        dates(words(entries, "dates")),
        Optional.ofNullable(entries.get("unit")).map(TemperatureUnit::named),
        entries.getOrDefault("clock", "").equals("UTC"),
        new MarkRule(
            switch (entries.getOrDefault("cells", "")) {
              case "mark" -> MarkRule.Carrier.COMMA;
              case "letter" -> MarkRule.Carrier.LETTER;
              default -> MarkRule.Carrier.NONE;
            },
            Integer.parseInt(entries.getOrDefault("mark part", "0")),
            Set.copyOf(words(entries, "drop"))),
        entries.containsKey("short rows"));
  }

  /** The role that a word of the table, or of {@code --columns}, names. */
  static Optional<Role> role(String word) {
    return switch (word) {
      case "temperature" -> Optional.of(Role.READING);
      case "lowest" -> Optional.of(Role.LOWEST);
      case "highest" -> Optional.of(Role.HIGHEST);
      case "time" -> Optional.of(Role.TIME);
      case "snow" -> Optional.of(Role.SNOW);
      default ->
          Arrays.stream(Role.values()).filter(role -> role.toString().equals(word)).findFirst();
    };
  }

  private static List<CsvHeading> headings(Role role, String value, Map<String, String> common) {
    if (value.equals(COMMON) && role == Role.SNOW) {
      return SnowUnit.headings().stream().map(CsvHeading::of).toList();
    }
    String all = value.equals(COMMON) ? common.getOrDefault(word(role), "") : value;
    return Arrays.stream(all.split("\\s+\\|\\s+", -1)).map(CsvHeading::of).toList();
  }

  private static String word(Role role) {
    return switch (role) {
      case READING -> "temperature";
      case LOWEST -> "lowest";
      case HIGHEST -> "highest";
      case TIME -> "time";
      default -> role.toString();
    };
  }

  private static List<DateRule> dates(List<String> shown) {
    return shown.isEmpty()
        ? DatePattern.USUAL
        : shown.stream()
            .map(
                name ->
                    DatePattern.ALL.stream()
                        .filter(pattern -> pattern.shown().equals(name))
                        .findFirst()
                        .orElseThrow())
            .toList();
  }

  private static String upper(Map<String, String> entries, String key) {
    return Objects.requireNonNull(entries.get(key), key).toUpperCase(Locale.ROOT);
  }

  private static List<String> words(Map<String, String> entries, String key) {
    String value = entries.getOrDefault(key, "");
    return value.isEmpty() ? List.of() : List.of(value.split("\\s+", -1));
  }
}
