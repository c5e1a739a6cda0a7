package org.hibernacle.input;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hibernacle.model.Species;

/** Reads the keeper's Species sheet: corrections of the built-in table, and rows of their own. */
final class OwnSpeciesRows {
  /** What a plan is made from. */
  private static final Map<Column, Function<Species, Object>> FIGURES = figures();

  private OwnSpeciesRows() {}

  private static Map<Column, Function<Species, Object>> figures() {
    Map<Column, Function<Species, Object>> figures = new EnumMap<>(Column.class);
    figures.put(Column.SYNONYMS, Species::synonyms);
    figures.put(Column.COMMON_NAMES, Species::commonNames);
    figures.put(Column.GROUP, Species::group);
    figures.put(Column.EVERGREEN, Species::foliage);
    figures.put(Column.ZONE, Species::zone);
    figures.put(Column.ROOT_KILL, Species::rootKill);
    figures.put(Column.ROOT_LIMIT, Species::rootLimitC);
    figures.put(Column.UNHARDENED_LIMIT, Species::unhardenedLimitC);
    figures.put(Column.NEW_GROWTH_LIMIT, Species::newGrowthLimitC);
    figures.put(Column.CHILL_NEED, Species::chillNeed);
    figures.put(Column.CHILL_PORTIONS, s -> List.of(s.chillPortionsLow(), s.chillPortionsHigh()));
    figures.put(Column.MIN_STORE, Species::minStoreC);
    figures.put(Column.MAX_STORE, Species::maxStoreC);
    figures.put(Column.LIGHT_IN_STORE, Species::lightInStore);
    figures.put(Column.KEEP_DRY, Species::keepDry);
    figures.put(Column.DRYING_RISK, Species::dryingRisk);
    figures.put(Column.TOXIC, Species::toxic);
    return figures;
  }

  static List<Species> read(KnownSheet sheet, SpeciesCatalogue catalogue) {
    List<Species> own = new ArrayList<>();
    Map<String, Object> seen = new HashMap<>();
    for (Row row : sheet.rows(Tally.Noun.NOTHING)) {
      Optional<String> taxon = row.required(Column.TAXON, "IN-129.taxon");
      taxon.ifPresent(t -> UniqueNames.check(seen, SpeciesNames.key(t), row, Column.TAXON));
      taxon.flatMap(t -> read(row, t, catalogue.row(t))).ifPresent(own::add);
    }
    return own;
  }

  private static Optional<Species> read(Row row, String taxon, Optional<Species> base) {
    ExampleRow.warn(row, Column.SPECIES_NOTES);
    Optional<Species> species =
        new SpeciesRow(row, base).read(base.map(Species::taxon).orElse(taxon), false);
    species.ifPresent(s -> tell(row, s, base));
    return species;
  }

  private static void tell(Row row, Species species, Optional<Species> base) {
    if (base.isEmpty()) {
      row.note("IN-204.added", species.taxon());
      return;
    }
    List<String> changed =
        FIGURES.entrySet().stream()
            .filter(f -> !f.getValue().apply(species).equals(f.getValue().apply(base.get())))
            .map(f -> f.getKey().title())
            .toList();
    if (changed.isEmpty()) {
      row.note("IN-204.same", species.taxon());
    } else {
      row.note("IN-204.changed", species.taxon(), changed);
    }
  }
}
