package org.hibernacle.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One container-grown tree or shrub, or a row of identical ones.
 *
 * @param id unique in the inventory
 * @param label what the keeper calls it; empty if nothing
 * @param species the matched row of the species table
 * @param speciesAsWritten the name as the keeper wrote it
 * @param cultivar empty if none
 * @param home name of the place where it stands in summer
 * @param container its pot
 * @param lastRootWork when roots were last disturbed
 * @param vigour how strong it is
 * @param priority 1 (least) to 5 (most dear)
 * @param value worth to the keeper in money, for all of the row together
 * @param ownRootLimitC the keeper's own midwinter root limit, °C
 * @param stayIn name of a place the keeper insists on for the winter
 * @param notBefore no move before this date
 * @param notAfter every move that takes it away from home has happened by this date
 * @param count identical plants in the row, never split
 * @param heightCm above the floor with its pot, cm
 * @param spreadCm of the crown, cm
 * @param frostProofPot false for a pot that cracks at a wet freeze
 * @param plannedRootWork date of root work to come
 * @param rootstock species of the roots where grafted
 * @param rootLimitTrust low where the species matched only by genus or group
 * @param notes the keeper's remark
 */
public record Plant(
    String id,
    String label,
    Species species,
    String speciesAsWritten,
    String cultivar,
    String home,
    Container container,
    Optional<LocalDate> lastRootWork,
    Vigour vigour,
    int priority,
    OptionalDouble value,
    OptionalDouble ownRootLimitC,
    Optional<String> stayIn,
    Optional<LocalDate> notBefore,
    Optional<LocalDate> notAfter,
    int count,
    OptionalDouble heightCm,
    OptionalDouble spreadCm,
    boolean frostProofPot,
    Optional<LocalDate> plannedRootWork,
    Optional<Species> rootstock,
    Trust rootLimitTrust,
    String notes) {

  /**
   * The plant without what tells it from others that live through the same: Id, label, value, how
   * many stand in its row, how wide they are, and remarks.
   */
  public Plant nameless() {
    return new Plant(
        "-",
        "",
        species,
        "",
        "",
        home,
        container,
        lastRootWork,
        vigour,
        priority,
        OptionalDouble.empty(),
        ownRootLimitC,
        stayIn,
        notBefore,
        notAfter,
        1,
        heightCm,
        OptionalDouble.empty(),
        frostProofPot,
        plannedRootWork,
        rootstock,
        rootLimitTrust,
        "");
  }

  /** How strong the plant is; a weak one is given a shallower root limit. */
  public enum Vigour {
    WEAK,
    NORMAL,
    STRONG
  }

  /** How well the species was recognised. */
  public enum Trust {
    NAMED,
    GENUS_ONLY
  }

  public Plant {
    if (id.isBlank()) {
      throw new IllegalArgumentException("id must not be blank");
    }
    if (priority < 1 || priority > 5) {
      throw new IllegalArgumentException("priority must be 1..5 but is " + priority);
    }
    if (count < 1) {
      throw new IllegalArgumentException("count must be at least 1 but is " + count);
    }
  }

  /** The species whose roots are in the pot: the rootstock's where grafted. */
  public Species rootSpecies() {
    return rootstock.orElse(species);
  }

  /**
   * Floor taken by all plants of the row, m2: the larger of pot and crown, as a square for each,
   * since neighbours can not grow into the corners.
   */
  public double floorM2() {
    double potM2 = container.lengthCm() * container.widthCm() / 1e4;
    double crownM2 = spreadCm.isPresent() ? Math.pow(spreadCm.getAsDouble() / 100, 2) : 0;
    return count * Math.max(potM2, crownM2);
  }

  /** Name for people: label, or species and cultivar. */
  public String name() {
    if (!label.isBlank()) {
      return label;
    }
    return cultivar.isBlank() ? species.taxon() : species.taxon() + " '" + cultivar + "'";
  }
}
