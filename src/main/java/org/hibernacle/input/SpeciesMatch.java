package org.hibernacle.input;

import java.util.List;
import org.hibernacle.model.Species;

/** What a name on a plant's row stands for. */
public sealed interface SpeciesMatch {
  /**
   * One row of the table.
   *
   * @param species that row
   * @param cultivar what stood behind the species' name, as written; empty if nothing
   * @param byCultivar whether the cultivar's own row was taken instead of its species'
   */
  record Named(Species species, String cultivar, boolean byCultivar) implements SpeciesMatch {}

  /**
   * Only a genus or a grower's group.
   *
   * @param cautious a made-up row with the most cautious figure of each kind
   * @param standingFor taxa it was made from
   */
  record GenusOnly(Species cautious, List<String> standingFor) implements SpeciesMatch {
    public GenusOnly {
      standingFor = List.copyOf(standingFor);
    }
  }

  /**
   * No row, or more than one.
   *
   * @param nearest names that may have been meant, at most three, best first
   */
  record Unknown(List<String> nearest) implements SpeciesMatch {
    public Unknown {
      nearest = List.copyOf(nearest);
    }
  }
}
