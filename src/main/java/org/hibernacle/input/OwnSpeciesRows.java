package org.hibernacle.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernacle.model.Species;

/** Reads the keeper's Species sheet: corrections of the built-in table, and rows of their own. */
final class OwnSpeciesRows {
  private OwnSpeciesRows() {}

  static List<Species> read(KnownSheet sheet, SpeciesCatalogue catalogue) {
    List<Species> own = new ArrayList<>();
    Map<String, String> seen = new HashMap<>();
    for (Row row : sheet.rows(Tally.Noun.NOTHING)) {
      Optional<String> taxon = row.required(Column.TAXON, "a scientific name");
      taxon.ifPresent(t -> UniqueNames.check(seen, SpeciesNames.key(t), row, Column.TAXON));
      taxon.flatMap(t -> read(row, t, catalogue.row(t))).ifPresent(own::add);
    }
    return own;
  }

  private static Optional<Species> read(Row row, String taxon, Optional<Species> base) {
    Optional<Species> species =
        new SpeciesRow(row, base).read(base.map(Species::taxon).orElse(taxon), false);
    species.ifPresent(s -> row.note(Code.OWN_SPECIES, found(s, base), consequence(row, base)));
    return species;
  }

  private static String found(Species species, Optional<Species> base) {
    return base.isPresent()
        ? "own figures for " + species.taxon()
        : species.taxon() + " is not in the built-in table";
  }

  private static String consequence(Row row, Optional<Species> base) {
    if (base.isEmpty()) {
      return "it is added";
    }
    String columns =
        InventorySheet.SPECIES.columns().stream()
            .filter(c -> c != Column.TAXON && !row.isBlank(c))
            .map(Column::title)
            .collect(Collectors.joining(", "));
    return columns.isEmpty()
        ? "nothing but the name is filled in, so the built-in row stays as it is"
        : "used in place of the built-in ones: " + columns;
  }
}
