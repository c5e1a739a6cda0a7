package org.hibernacle;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hibernacle.input.SpeciesCatalogue;
import org.hibernacle.model.Container;
import org.hibernacle.model.Container.Material;
import org.hibernacle.model.Container.Shape;
import org.hibernacle.model.Plant;
import org.hibernacle.model.Plant.Trust;
import org.hibernacle.model.Plant.Vigour;
import org.hibernacle.model.Species;

/** An invented plant of a species in the built-in table, in a 5 L pot, at home on a bench. */
public final class SomePlant {
  public static final SpeciesCatalogue CATALOGUE = SpeciesCatalogue.builtIn();

  private final Species species;
  private Container pot = new Container(Shape.ROUND, 22, 22, 13, 5, Material.CERAMIC);
  private Optional<LocalDate> lastRootWork = Optional.empty();
  private Optional<LocalDate> plannedRootWork = Optional.empty();
  private Vigour vigour = Vigour.NORMAL;
  private OptionalDouble ownRootLimitC = OptionalDouble.empty();
  private boolean frostProofPot = true;
  private Optional<Species> rootstock = Optional.empty();

  private SomePlant(Species species) {
    this.species = species;
  }

  public static SomePlant of(String taxon) {
    return of(species(taxon));
  }

  public static SomePlant of(Species species) {
    return new SomePlant(species);
  }

  /** The row of that taxon. */
  public static Species species(String taxon) {
    return CATALOGUE.row(taxon).orElseThrow();
  }

  public SomePlant lastRootWork(LocalDate day) {
    lastRootWork = Optional.of(day);
    return this;
  }

  public SomePlant plannedRootWork(LocalDate day) {
    plannedRootWork = Optional.of(day);
    return this;
  }

  public SomePlant weak() {
    vigour = Vigour.WEAK;
    return this;
  }

  public SomePlant ownRootLimit(double limitC) {
    ownRootLimitC = OptionalDouble.of(limitC);
    return this;
  }

  /** In a pot that a wet freeze cracks. */
  public SomePlant frostTenderPot() {
    frostProofPot = false;
    return this;
  }

  public SomePlant on(String rootstockTaxon) {
    rootstock = Optional.of(species(rootstockTaxon));
    return this;
  }

  public SomePlant pot(Container newPot) {
    pot = newPot;
    return this;
  }

  /** The plant. */
  public Plant plant() {
    return new Plant(
        "P-01",
        "",
        species,
        species.taxon(),
        "",
        "BENCH",
        pot,
        lastRootWork,
        vigour,
        3,
        OptionalDouble.empty(),
        ownRootLimitC,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        1,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        frostProofPot,
        plannedRootWork,
        rootstock,
        Trust.NAMED,
        "");
  }
}
