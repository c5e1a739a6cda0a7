package org.hibernacle.input;

import java.util.List;
import java.util.Optional;
import org.hibernacle.model.Phrase;
import org.hibernacle.model.Plant.Trust;
import org.hibernacle.model.Species;

/** Reads a species' name from a plant's row and says how well it was recognised. */
final class SpeciesOfPlant {
  /**
   * A name that was recognised.
   *
   * @param species its row
   * @param cultivar that stood behind the name; empty if none
   * @param trust low for a genus or group
   */
  record Recognised(Species species, String cultivar, Trust trust) {}

  private final SpeciesCatalogue catalogue;

  SpeciesOfPlant(SpeciesCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The species, or empty: with an error if the name is unknown, without if there is none.
   *
   * @param cultivar from its own column, for which the table may have a row; may be empty
   */
  Optional<Recognised> read(Row row, Column column, String cultivar) {
    String name = row.text(column);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    SpeciesMatch match = catalogue.match(name);
    if (match instanceof SpeciesMatch.Named plain && !cultivar.isBlank()) {
      match =
          catalogue.match(name + " '" + cultivar + "'") instanceof SpeciesMatch.Named own
                  && !own.species().equals(plain.species())
              ? new SpeciesMatch.Named(own.species(), cultivar, true)
              : plain;
    }
    if (match instanceof SpeciesMatch.Named named) {
      if (named.byCultivar()) {
        row.note(Code.ROW_BY_CULTIVAR, named.species().taxon());
      }
      return Optional.of(new Recognised(named.species(), named.cultivar(), Trust.NAMED));
    }
    if (match instanceof SpeciesMatch.GenusOnly genus) {
      row.warning(
          Code.GENUS_ONLY, column, standingFor(genus.standingFor()), genus.cautious().rootLimitC());
      return Optional.of(new Recognised(genus.cautious(), "", Trust.GENUS_ONLY));
    }
    List<String> nearest = ((SpeciesMatch.Unknown) match).nearest();
    row.error(Code.UNKNOWN_SPECIES, column, Nearest.clause(nearest));
    return Optional.empty();
  }

  private static Object standingFor(List<String> taxa) {
    return taxa.size() <= 3 ? taxa : Phrase.of("species-of-table", taxa.size());
  }
}
