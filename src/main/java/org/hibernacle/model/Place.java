package org.hibernacle.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Somewhere a plant can stand.
 *
 * @param name unique in the inventory
 * @param kind what sort of place
 * @param floorM2 room, m2; empty where unlimited or unknown
 * @param sun how much sun reaches it
 * @param wind how open it is to wind
 * @param cover what lies over soil and pot sides in winter
 * @param coverDepthCm depth of the cover, cm (0 where none)
 * @param light for plants in leaf
 * @param lowestHeldC thermostat of a heater, °C
 * @param highestHeldC temperature at which it is vented or cooled, °C
 * @param warmerByK over the outside air at night, K; negative for a frost pocket
 * @param lagHours time constant with which it follows outside air, h (0..2000)
 * @param holdsDownToC outside temperature at which its heater still copes, °C
 * @param clearHeightCm under the roof, cm
 * @param vents whether it can be vented
 * @param notes the keeper's remark
 * @param coverFrom day of any season on which the cover goes on; empty for the usual day
 * @param wrapOf place in which the pots themselves are wrapped with the cover as long as they stand
 *     in this one; empty for a place of its own
 */
public record Place(
    String name,
    PlaceKind kind,
    OptionalDouble floorM2,
    Sun sun,
    Wind wind,
    Cover cover,
    double coverDepthCm,
    Light light,
    OptionalDouble lowestHeldC,
    OptionalDouble highestHeldC,
    double warmerByK,
    double lagHours,
    OptionalDouble holdsDownToC,
    OptionalDouble clearHeightCm,
    boolean vents,
    String notes,
    Optional<LocalDate> coverFrom,
    Optional<String> wrapOf) {

  /** What the name of a place in which pots are wrapped ends with. */
  public static final String WRAPPED = ", wrapped";

  /** How much sun reaches the place. */
  public enum Sun {
    NONE,
    PART,
    FULL
  }

  /** How open the place is to wind. */
  public enum Wind {
    SHELTERED,
    OPEN
  }

  /** What lies over soil and pot sides in winter. */
  public enum Cover {
    NONE,
    FLEECE,
    MULCH
  }

  public Place {
    if (name.isBlank()) {
      throw new IllegalArgumentException("name must not be blank");
    }
    if (!(lagHours >= 0 && lagHours <= 2000)) {
      throw new IllegalArgumentException("lagHours must be 0..2000 but is " + lagHours);
    }
    if (!(coverDepthCm >= 0 && coverDepthCm <= 100)) {
      throw new IllegalArgumentException("coverDepthCm must be 0..100 but is " + coverDepthCm);
    }
  }

  /** A place as the keeper tells it. */
  public Place(
      String name,
      PlaceKind kind,
      OptionalDouble floorM2,
      Sun sun,
      Wind wind,
      Cover cover,
      double coverDepthCm,
      Light light,
      OptionalDouble lowestHeldC,
      OptionalDouble highestHeldC,
      double warmerByK,
      double lagHours,
      OptionalDouble holdsDownToC,
      OptionalDouble clearHeightCm,
      boolean vents,
      String notes) {
    this(
        name,
        kind,
        floorM2,
        sun,
        wind,
        cover,
        coverDepthCm,
        light,
        lowestHeldC,
        highestHeldC,
        warmerByK,
        lagHours,
        holdsDownToC,
        clearHeightCm,
        vents,
        notes,
        Optional.empty(),
        Optional.empty());
  }

  /**
   * Name of the place whose floor the pots stand on: this one, or the one in which they are
   * wrapped.
   */
  public String floorOf() {
    return wrapOf.orElse(name);
  }

  /** Whether it has a roof, so that going there is a move-in. */
  public boolean roofed() {
    return kind.roofed();
  }

  /** The same place with another floor, m2; empty for room without end. */
  public Place withFloor(OptionalDouble newFloorM2) {
    return new Place(
        name,
        kind,
        newFloorM2,
        sun,
        wind,
        cover,
        coverDepthCm,
        light,
        lowestHeldC,
        highestHeldC,
        warmerByK,
        lagHours,
        holdsDownToC,
        clearHeightCm,
        vents,
        notes,
        coverFrom,
        wrapOf);
  }

  /** The same place under mulch of that depth, cm. */
  public Place withMulch(double depthCm) {
    return covered(name, Cover.MULCH, depthCm, Optional.empty(), wrapOf);
  }

  /** The same place with its heater out of order. */
  public Place withoutHeat() {
    OptionalDouble none = OptionalDouble.empty();
    return new Place(
        name,
        kind,
        floorM2,
        sun,
        wind,
        cover,
        coverDepthCm,
        light,
        none,
        highestHeldC,
        warmerByK,
        lagHours,
        none,
        clearHeightCm,
        vents,
        notes,
        coverFrom,
        wrapOf);
  }

  /** The same place without its cover. */
  public Place uncovered() {
    return covered(name, Cover.NONE, 0, Optional.empty(), wrapOf);
  }

  /** The same place with its cover put on that day. */
  public Place coveredFrom(LocalDate day) {
    return covered(name, cover, coverDepthCm, Optional.of(day), wrapOf);
  }

  /**
   * The same place with the pots in it wrapped, as a place of its own.
   *
   * @param newName of the new place
   * @param wrap what they are wrapped in
   * @param depthCm how thick, cm; 0 for fleece
   */
  public Place wrapped(String newName, Cover wrap, double depthCm) {
    return covered(newName, wrap, depthCm, Optional.empty(), Optional.of(name));
  }

  private Place covered(
      String newName,
      Cover newCover,
      double depthCm,
      Optional<LocalDate> from,
      Optional<String> wrappedPlace) {
    return new Place(
        newName,
        kind,
        floorM2,
        sun,
        wind,
        newCover,
        depthCm,
        light,
        lowestHeldC,
        highestHeldC,
        warmerByK,
        lagHours,
        holdsDownToC,
        clearHeightCm,
        vents,
        notes,
        from,
        wrappedPlace);
  }
}
