package org.hibernacle.model;

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
    String notes) {

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
        notes);
  }

  /** The same place under mulch of that depth, cm. */
  public Place withMulch(double depthCm) {
    return new Place(
        name,
        kind,
        floorM2,
        sun,
        wind,
        Cover.MULCH,
        depthCm,
        light,
        lowestHeldC,
        highestHeldC,
        warmerByK,
        lagHours,
        holdsDownToC,
        clearHeightCm,
        vents,
        notes);
  }

  /** The same place with its heater out of order. */
  public Place withoutHeat() {
    return new Place(
        name,
        kind,
        floorM2,
        sun,
        wind,
        cover,
        coverDepthCm,
        light,
        OptionalDouble.empty(),
        highestHeldC,
        warmerByK,
        lagHours,
        OptionalDouble.empty(),
        clearHeightCm,
        vents,
        notes);
  }
}
