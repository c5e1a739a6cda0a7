package org.hibernacle.input;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hibernacle.model.Group;
import org.hibernacle.model.Species;

/**
 * Finds the row a name stands for. Names are compared word by word without case, accents, quotes,
 * hyphens, the hybrid sign and words of rank ({@code subsp.}, {@code var.}, {@code Group}).
 */
final class SpeciesNames {
  private static final Set<String> LEFT_OUT =
      Set.of("x", "subsp", "ssp", "var", "f", "forma", "cv", "group", "grp");
  private static final Set<String> ANY_SPECIES = Set.of("sp", "spp", "species");
  private static final String QUOTES = "'\"‘’‚“”„`´«»";
  private static final int NEAREST = 3;

  private final Map<String, Species> taxa = new LinkedHashMap<>();
  private final Map<String, List<Species>> synonyms = new HashMap<>();
  private final Map<String, List<Species>> commonNames = new HashMap<>();
  private final Map<String, List<Species>> genera = new HashMap<>();
  private final Map<String, List<Species>> oldGenera = new HashMap<>();
  private final Map<String, List<Species>> groups = new HashMap<>();
  private final Map<String, List<Species>> allNames = new LinkedHashMap<>();

  SpeciesNames(Collection<Species> rows) {
    for (Species row : rows) {
      taxa.put(key(row.taxon()), row);
      add(genera, words(row.taxon()).word(0), row);
      add(groups, key(groupName(row.group())), row);
      add(groups, key(groupName(row.group()) + "s"), row);
      add(allNames, row.taxon(), row);
      for (String synonym : row.synonyms()) {
        add(synonyms, key(synonym), row);
        add(synonyms, key(synonym.replaceFirst("\\s+hort\\.?$", "")), row);
        add(oldGenera, words(synonym).word(0), row);
        add(allNames, synonym, row);
      }
      for (String name : row.commonNames()) {
        add(commonNames, key(name), row);
        add(allNames, name, row);
      }
    }
  }

  private static void add(Map<String, List<Species>> map, String key, Species row) {
    List<Species> rows = map.computeIfAbsent(key, k -> new ArrayList<>());
    if (!rows.contains(row)) {
      rows.add(row);
    }
  }

  private static String groupName(Group group) {
    return Choice.GROUP.word(group).replace('-', ' ');
  }

  /** The key under which a taxon is told from others. */
  static String key(String name) {
    return words(name).key();
  }

  private static Words words(String name) {
    Words all = Words.of(name);
    List<Words.Word> kept = all.words().stream().filter(w -> !LEFT_OUT.contains(w.key())).toList();
    return kept.isEmpty() ? all : new Words(name, kept);
  }

  SpeciesMatch match(String name) {
    Words words = words(name);
    if (words.size() == 0) {
      return new SpeciesMatch.Unknown(List.of());
    }
    List<Species> whole = called(words.key());
    if (whole.size() == 1) {
      return new SpeciesMatch.Named(whole.get(0), "", false);
    }
    if (whole.size() > 1) {
      return new SpeciesMatch.Unknown(whole.stream().map(Species::taxon).limit(NEAREST).toList());
    }
    return genusOnly(words)
        .or(() -> withCultivar(words))
        .orElseGet(() -> new SpeciesMatch.Unknown(nearest(name)));
  }

  /** Rows of that whole name; scientific names count before common ones. */
  private List<Species> called(String key) {
    List<Species> scientific = scientific(key);
    return scientific.isEmpty() ? commonNames.getOrDefault(key, List.of()) : scientific;
  }

  private List<Species> scientific(String key) {
    Species taxon = taxa.get(key);
    return taxon == null ? synonyms.getOrDefault(key, List.of()) : List.of(taxon);
  }

  private List<Species> ofGenus(String word) {
    return genera.getOrDefault(word, oldGenera.getOrDefault(word, List.of()));
  }

  private Optional<SpeciesMatch> genusOnly(Words words) {
    boolean genus = words.size() == 1 || (words.size() == 2 && ANY_SPECIES.contains(words.word(1)));
    List<Species> rows = genus ? ofGenus(words.word(0)) : List.of();
    if (!rows.isEmpty()) {
      return Optional.of(cautious(firstCapital(words.word(0)) + " sp.", rows));
    }
    List<Species> group = groups.getOrDefault(words.key(), List.of());
    return group.isEmpty()
        ? Optional.empty()
        : Optional.of(cautious("any " + groupName(group.get(0).group()), group));
  }

  private static SpeciesMatch cautious(String title, List<Species> rows) {
    return new SpeciesMatch.GenusOnly(
        CautiousSpecies.of(title, rows), rows.stream().map(Species::taxon).toList());
  }

  private static String firstCapital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  /** The longest scientific name at the start, or a common name before a quoted cultivar. */
  private Optional<SpeciesMatch> withCultivar(Words words) {
    for (int split = words.size() - 1; split >= 1; split--) {
      Optional<Species> own = cultivarsOwnRow(words, split);
      if (own.isPresent()) {
        return Optional.of(new SpeciesMatch.Named(own.get(), rest(words, split), true));
      }
    }
    for (int split = words.size() - 1; split >= 1; split--) {
      String start = words.key(0, split);
      List<Species> rows = split >= 2 ? scientific(start) : List.of();
      if (rows.isEmpty() && quoted(words, split)) {
        rows = commonNames.getOrDefault(start, List.of());
      }
      if (rows.size() == 1) {
        return Optional.of(new SpeciesMatch.Named(rows.get(0), rest(words, split), false));
      }
    }
    return Optional.empty();
  }

  /** A row of the genus that has the cultivar among its common names. */
  private Optional<Species> cultivarsOwnRow(Words words, int split) {
    if (split > 1 && scientific(words.key(0, split)).isEmpty()) {
      return Optional.empty();
    }
    List<Species> rows =
        commonNames.getOrDefault(words.key(split, words.size()), List.of()).stream()
            .filter(ofGenus(words.word(0))::contains)
            .toList();
    return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
  }

  private static boolean quoted(Words words, int index) {
    int before = words.words().get(index).start() - 1;
    return before >= 0 && QUOTES.indexOf(words.text().charAt(before)) >= 0;
  }

  private static String rest(Words words, int split) {
    String rest = words.text().substring(words.words().get(split).start()).strip();
    int end = rest.length();
    while (end > 0 && QUOTES.indexOf(rest.charAt(end - 1)) >= 0) {
      end--;
    }
    return rest.substring(0, end).strip();
  }

  private List<String> nearest(String name) {
    return Nearest.of(name, allNames.keySet(), 3 * NEAREST).stream()
        .flatMap(near -> allNames.getOrDefault(near, List.of()).stream())
        .map(Species::taxon)
        .distinct()
        .limit(NEAREST)
        .toList();
  }
}
